using System.Globalization;
using System.Text.Json.Nodes;
using FsCheck;
using FsCheck.Fluent;
using Leverage.Hostile.Tests.Generated;
using Leverage.Hostile.Tests.Running;
using Leverage.Hostile.Tests.Schemas;
using Leverage.Reading;
using Leverage.Wording;
using Leverage.Workshop.Jobs;
using Leverage.Workshop.Sheets;

namespace Leverage.Hostile.Tests.Laws;

/// <summary>A job is a set of fasteners and a set of tasks: the order they are written in says nothing but who comes first of equals.</summary>
public sealed class JobLaws
{
    [Fact]
    public void Permuting_the_fasteners_of_a_job_changes_nothing_but_the_order_among_equals()
    {
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;
        Amount amount = Amount.Of("JOBS", 60);
        int planned = 0;
        Gen<(string Job, int Seed)> jobs = from job in FileTexts.SmallJob from seed in Gen.Choose(0, int.MaxValue) select (job, seed);
        Check.One(amount.Config, Prop.ForAll(Arb.From(jobs), drawn =>
        {
            if (Plan(drawn.Job) is not { } before)
            {
                return;
            }

            planned++;
            Assert.Null(Published.Broken("job", before.ToJsonString()));
            JsonObject after = Plan(Permuted(drawn.Job, drawn.Seed, "[[fasteners]]", "[[chest.bars]]", "[[chest.sockets]]"))!;
            Assert.Equal(Sorted(Kept(before, "number")), Sorted(Kept(after, "number")));
        }));
        Assert.True(planned > amount.Count / 4, "Most of the jobs drawn are refused: the law is hardly tried.");
        TestContext.Current.SendDiagnosticMessage(string.Create(
            CultureInfo.InvariantCulture, $"seed {amount.Seed}, {amount.Count} jobs drawn, {planned} planned twice"));
    }

    /// <summary>
    /// Tasks that no rule puts in order stay in the order of the file, and what holds a wheel depends on when its nut's turn
    /// comes: that is the order among equals. All else is the same.
    /// </summary>
    [Fact]
    public void Permuting_a_whole_job_changes_nothing_but_the_order_among_equals_and_what_holds_when_their_turn_comes()
    {
        Amount amount = Amount.Of("WHOLE_JOBS", 3);
        string job = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "shared", "pickup", "job.toml"));
        string chest = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "shared", "pickup", "chest.toml"));
        string same = Sorted(Kept(Plan(job, chest)!, "number", "movedBecause", "step"));
        string any = Sorted(Kept(Plan(job, chest)!, Timed));
        Check.One(amount.Config, Prop.ForAll(Arb.From(Gen.Choose(0, int.MaxValue)), seed =>
        {
            Assert.Equal(same, Sorted(Kept(Plan(Permuted(job, seed, "[[fasteners]]"), chest)!, "number", "movedBecause", "step")));
            Assert.Equal(any, Sorted(Kept(Plan(Permuted(job, seed, "[[fasteners]]", "[[tasks]]"), chest)!, Timed)));
        }));
    }

    /// <summary>What depends on when a task's turn comes.</summary>
    private static readonly string[] Timed =
    [
        "number", "movedBecause", "step", "hold", "holdsNothing", "setUp", "person", "stance", "reachMm", "overlapMm", "outcomes", "verdict",
        "reasons", "moves", "refitOrder", "before",
    ];

    /// <summary>A plan without some of the fields of its tasks and loosenings.</summary>
    private static JsonObject Kept(JsonObject plan, params string[] without)
    {
        foreach (JsonNode? item in plan["order"]!.AsArray().Concat(plan["loosening"]!.AsArray()).Concat(plan["refitOrder"]!.AsArray()).Append(plan))
        {
            foreach (string field in without)
            {
                item!.AsObject().Remove(field);
            }
        }

        return plan;
    }

    private static JsonObject? Plan(string job, string chest = "")
    {
        try
        {
            var beside = new Dictionary<string, string>(StringComparer.Ordinal) { ["chest.toml"] = chest };
            return JsonNode.Parse(JobAnswers.Of(JobPlanner.Plan(JobReader.Parse("job.toml", job, beside)), UnitStyle.Metric).ToJson())!.AsObject();
        }
        catch (InputException)
        {
            return null;
        }
    }

    /// <summary>The blocks of some kinds in another order, each kind in its own places.</summary>
    private static string Permuted(string job, int seed, params string[] kinds)
    {
        string[] blocks = job.Split("\n\n");
        var random = new Random(seed);
        foreach (string kind in kinds)
        {
            int[] places = [.. Enumerable.Range(0, blocks.Length).Where(i => blocks[i].StartsWith(kind, StringComparison.Ordinal))];
            string[] shuffled = [.. places.Select(i => blocks[i])];
            random.Shuffle(shuffled);
            foreach (var (place, block) in places.Zip(shuffled))
            {
                blocks[place] = block;
            }
        }

        return string.Join("\n\n", blocks);
    }

    /// <summary>The answer with its lists in the order of their own text.</summary>
    private static string Sorted(JsonNode node) => node switch
    {
        JsonArray list => $"[{string.Join(",\n", list.Select(item => item is null ? "null" : Sorted(item)).Order(StringComparer.Ordinal))}]",
        JsonObject fields => $"{{{string.Join(",", fields.Select(field => $"{field.Key}:{(field.Value is null ? "null" : Sorted(field.Value))}"))}}}",
        _ => node.ToJsonString(),
    };
}
