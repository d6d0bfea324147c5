using System.Globalization;
using System.Text.Json;
using Leverage.Assessments;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Wording;

namespace Leverage.Proof;

/// <summary>A situation asked of the program.</summary>
/// <param name="Situation">The situation.</param>
/// <param name="Verdict">The verdict found; <c>refused</c> where it was refused.</param>
/// <param name="Faults">What a mechanic would not sign; none where all is well.</param>
public sealed record SituationProof(Situation Situation, string Verdict, IReadOnlyList<string> Faults)
{
    /// <summary>Relative room of an equality: figures are told to three digits.</summary>
    private const double Room = 0.005;

    /// <summary>Whether a careful mechanic would agree.</summary>
    public bool Agrees => Faults.Count == 0;

    /// <summary>Asks a situation.</summary>
    /// <param name="situation">The situation.</param>
    /// <returns>What was found.</returns>
    public static SituationProof Of(Situation situation)
    {
        ArgumentNullException.ThrowIfNull(situation);
        try
        {
            return situation.Arguments.StartsWith("slip ", StringComparison.Ordinal) ? Slipping(situation) : Loosened(situation);
        }
        catch (InputException e)
        {
            return Judged(situation, "refused", default, new SituationText([], [], e.Line));
        }
    }

    private static SituationProof Loosened(Situation situation)
    {
        LooseningAssessment assessment = Loosening.Assess(ArgumentLine.Read(LooseningFields.All, new LooseningRequest(), situation.Arguments));
        LooseningAnswer answer = LooseningAnswers.Of(assessment, UnitStyle.Metric);
        using JsonDocument json = JsonDocument.Parse(LooseningAnswers.ToJson(answer));
        string text = string.Join('\n', [
            LooseningTitle.Of(assessment.Setup, UnitStyle.Metric), .. answer.Reasons, .. answer.Watch, .. answer.Assumed,
            $"Not judged: {string.Join(", ", answer.NotJudged)}", .. answer.Moves.Select(move => move.Words),
            Reasons.AllWhy(assessment, UnitStyle.Metric), Cautions.Of(assessment),
        ]);
        return Judged(
            situation, answer.Verdict, json.RootElement,
            new SituationText([.. answer.Moves.Where(move => move.Key != "now").Select(move => move.Words)], answer.Watch, text));
    }

    private static SituationProof Slipping(Situation situation)
    {
        SlipAssessment assessment = Slip.Assess(ArgumentLine.Read(LooseningFields.Slip, new LooseningRequest(), situation.Arguments["slip ".Length..]));
        SlipAnswer answer = SlipAnswer.Of(assessment, UnitStyle.Metric);
        using JsonDocument json = JsonDocument.Parse(answer.ToJson());
        return Judged(situation, answer.Verdict, json.RootElement, new SituationText([], [], string.Join('\n', answer.Reasons)));
    }

    private static SituationProof Judged(Situation situation, string verdict, JsonElement json, SituationText text)
    {
        var faults = new List<string>();
        if (situation.Verdicts.Count > 0 && !situation.Verdicts.Contains(verdict, StringComparer.Ordinal))
        {
            faults.Add($"verdict {verdict}, not {string.Join(" or ", situation.Verdicts)}");
        }

        faults.AddRange(situation.Must.Where(must => !Holds(must, json, text)).Select(must => $"missing: {must}"));
        faults.AddRange(situation.Never.Where(never => text.Moves.Any(move => Says(move, never))).Select(never => $"a move is about: {never}"));
        faults.AddRange(situation.NoWords.Where(words => Says(text.All, words)).Select(words => $"it says: {words}"));
        return new SituationProof(situation, verdict, faults);
    }

    private static bool Holds(string must, JsonElement json, SituationText text)
    {
        int colon = must.IndexOf(':', StringComparison.Ordinal);
        if (colon > 0)
        {
            string[] wanted = must[(colon + 1)..].Split('|', StringSplitOptions.TrimEntries);
            string place = must[..colon] switch
            {
                "first" => text.Moves.Count > 0 ? text.Moves[0] : "",
                "last" => text.Moves.Count > 0 ? text.Moves[^1] : "",
                "watch" => string.Join('\n', text.Watch),
                _ => text.All,
            };
            return wanted.Any(words => Says(place, words));
        }

        string[] parts = must.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return Find(json, parts[0]) is { } found && (found.ValueKind == JsonValueKind.Number
            ? Compares(found.GetDouble(), parts[1], double.Parse(parts[2], CultureInfo.InvariantCulture))
            : parts[2].Split('|').Contains(found.GetString(), StringComparer.Ordinal));
    }

    private static bool Compares(double found, string sign, double wanted) => sign switch
    {
        "<" => found < wanted,
        ">" => found > wanted,
        _ => Math.Abs(found - wanted) <= Room * Math.Abs(wanted),
    };

    /// <summary>A value by its path; a chance also by its own name.</summary>
    private static JsonElement? Find(JsonElement json, string path)
    {
        JsonElement at = json;
        foreach (string name in path.Split('.'))
        {
            if (at.ValueKind != JsonValueKind.Object || !at.TryGetProperty(name, out at))
            {
                return path.StartsWith("outcomes.", StringComparison.Ordinal) ? null : Find(json, $"outcomes.{path}");
            }
        }

        return at;
    }

    private static bool Says(string text, string words) => text.Contains(words, StringComparison.OrdinalIgnoreCase);

    /// <summary>The words of an answer.</summary>
    /// <param name="Moves">Its moves besides the pull as asked.</param>
    /// <param name="Watch">Its warnings.</param>
    /// <param name="All">All of it.</param>
    private sealed record SituationText(IReadOnlyList<string> Moves, IReadOnlyList<string> Watch, string All);
}
