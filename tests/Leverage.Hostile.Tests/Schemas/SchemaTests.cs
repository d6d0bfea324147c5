using System.Text.Json.Nodes;
using Leverage.Cli;
using Leverage.Cli.About;
using Leverage.Cli.Output;

namespace Leverage.Hostile.Tests.Schemas;

/// <summary>What the program says its answers look like, and whether they do.</summary>
public sealed class SchemaTests
{
    public static TheoryData<string> Commands => [.. AnswerSchema.Commands];

    [Theory]
    [MemberData(nameof(Commands))]
    public void The_schema_of_a_command_is_the_approved_one(string command)
    {
        var (code, answer) = Run("--schema", command);
        Assert.Equal(0, code);
        Assert.True(
            File.ReadAllText(Published.PathOf(command)) == answer,
            $"Look at what changed for those who read the answers, then: leverage --schema {command} > shared/schemas/{command}.schema.json");
    }

    [Theory]
    [InlineData("loosen", "460Nm --thread M24x1.5 --condition rusted --hex 36mm --drive 1/2 --bar 600mm --what-matters --draws 100")]
    [InlineData("loosen", "460Nm --bar 600mm --bar-diameter 20mm --tube 33.7x3.2x1000mm --held-by brake,chock --mass 1400kg --chock 100mm")]
    [InlineData("loosen", "460Nm")]
    [InlineData("tighten", "--thread M12 --torque 60Nm --by-weight 82kg --adapter 60mm --wrench 450mm --engagement 12mm --tapped cast-aluminium")]
    [InlineData("check", "130Nm --thread M12x1.25 --grade 10.9")]
    [InlineData("check", "96Nm --thread M12x1.25 --grade 12.9")]
    [InlineData("slip", "--bar 600mm --bar-diameter 20mm --tube 33.7x3.2x1000mm --overlap 250mm")]
    [InlineData("pick", "460Nm --thread M24x1.5 --condition rusted --hex 36mm --chest shared/pickup/chest.toml")]
    [InlineData("pick", "2000Nm --hex 36mm --chest shared/pickup/chest.toml")]
    [InlineData("job", "shared/pickup/job.toml")]
    [InlineData("table", "")]
    [InlineData("table", "threads M24")]
    [InlineData("prove", "--all")]
    public void An_answer_is_what_its_schema_says(string command, string rest)
    {
        string shared = Path.Combine(AppContext.BaseDirectory, "shared");
        string[] words = [.. rest.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(word => word.Replace("shared", shared, StringComparison.Ordinal))];
        var (code, answer) = Run([command, .. words, "--json"]);
        Assert.Equal(0, code);
        Assert.Null(Published.Broken(command, answer));
    }

    [Fact]
    public void A_schema_refuses_a_field_too_few_a_field_too_many_and_a_text_for_a_number()
    {
        string answer = Run("check", "130Nm", "--thread", "M12", "--json").Answer;
        Assert.Null(Published.Broken("check", answer));
        Assert.NotNull(Published.Broken("check", Changed(answer, node => node.Remove("verdict"))));
        Assert.NotNull(Published.Broken("check", Changed(answer, node => node["more"] = 1)));
        Assert.NotNull(Published.Broken("check", Changed(answer, node => node["quotedNm"] = "130")));
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void Every_reference_in_a_schema_leads_somewhere(string command)
    {
        JsonNode schema = JsonNode.Parse(AnswerSchema.Of(command))!;
        Assert.All(References(schema), reference => Assert.NotNull(reference.TrimStart('#').Split('/', StringSplitOptions.RemoveEmptyEntries)
            .Aggregate<string, JsonNode?>(schema, (at, step) => at is JsonArray list ? list[int.Parse(step, null)] : at?[step])));
    }

    [Fact]
    public void A_command_without_a_schema_is_refused_with_those_that_have_one()
    {
        using var errors = new StringWriter();
        using var terminal = new Terminal(TextWriter.Null, errors, false);
        Assert.Equal(2, CommandLine.Run(["--schema", "loosn"], terminal));
        Assert.StartsWith("leverage: --schema: 'loosn' is not accepted here. Write: loosen or tighten", errors.ToString(), StringComparison.Ordinal);
    }

    private static IEnumerable<string> References(JsonNode? node) => node switch
    {
        JsonObject fields => fields.SelectMany(field => field.Key == "$ref" ? [field.Value!.GetValue<string>()] : References(field.Value)),
        JsonArray list => list.SelectMany(References),
        _ => [],
    };

    private static string Changed(string answer, Action<JsonObject> change)
    {
        JsonObject node = JsonNode.Parse(answer)!.AsObject();
        change(node);
        return node.ToJsonString();
    }

    private static (int Code, string Answer) Run(params string[] words)
    {
        using var answers = new StringWriter();
        using var terminal = new Terminal(answers, TextWriter.Null, false);
        return (CommandLine.Run(words, terminal), answers.ToString());
    }
}
