using System.Text.Json;
using Leverage.Assessments;
using Leverage.Page.Asking;
using Leverage.Requests;
using Leverage.Wording;

namespace Leverage.Page.Answering;

/// <summary>What to set or whether a figure is believable: the command line's answer as JSON text, and figures in words.</summary>
internal sealed record SetReply(JsonElement Answer, string Title, IReadOnlyList<FigureLine> Figures, IReadOnlyList<string> Assumed);

/// <summary>Answers of tightening and checking.</summary>
internal static class SetReplies
{
    /// <summary>What to set.</summary>
    internal static string Set(string query)
    {
        Query asked = Query.Of(query, TighteningFields.All);
        TighteningAssessment a = Tightening.Assess(asked.Read(TighteningFields.All, new TighteningRequest()));
        var answer = TighteningAnswer.Of(a);
        return Whole(
            JsonSerializer.SerializeToElement(answer, AnswerJson.Shared.TighteningAnswer), TighteningTitle.Of(a), Figures(a, asked.Units), answer.Unconfirmed);
    }

    /// <summary>Whether a quoted torque is believable.</summary>
    internal static string Check(string query)
    {
        Query asked = Query.Of(query, TighteningFields.Check);
        CheckingAssessment a = Checking.Assess(asked.Read(TighteningFields.Check, new TighteningRequest()));
        var answer = CheckingAnswer.Of(a);
        string better = answer.ReadsBetterAs is { } unit ? $" The same number in {unit} would fit." : "";
        FigureLine[] figures =
        [
            new(asked.Units.Torque(a.Setup.Quoted), JointLines.Headline(a.Result), JointLines.Why(a.Result, asked.Units) + better),
            .. JointLines.UsualFor(a, asked.Units) is { } usual ? (FigureLine[])[new("Such a torque", "", usual)] : [],
        ];
        return Whole(JsonSerializer.SerializeToElement(answer, AnswerJson.Shared.CheckingAnswer), a.Setup.Thread.Printed, figures, answer.Unconfirmed);
    }

    private static string Whole(JsonElement answer, string title, IReadOnlyList<FigureLine> figures, IReadOnlyList<string> assumed) =>
        JsonSerializer.Serialize(new SetReply(answer, title, figures, assumed), PageJson.Shared.SetReply);

    private static FigureLine[] Figures(TighteningAssessment a, UnitStyle units)
    {
        List<FigureLine> lines = [];
        if (a.AdapterSetting is { } setting)
        {
            lines.Add(new("Set on the wrench", units.Torque(setting), $"for {units.Torque(a.Target)} at the nut"));
        }

        if (a is { HangAt: { } at, Setup.HungMass: { } mass })
        {
            lines.Add(new("Hang it", units.Any(at), $"from the middle of the nut, {units.Mass(mass)} at rest on a level bar"));
        }

        PreloadFigures end = a.Result.End;
        lines.Add(new("Torque", units.Torque(a.Target), JointLines.Why(a.Result, units)));
        lines.Add(a.Result.Holds ? new("Preload", units.Preload(end.Likely), $"likely; {UnitStyle.Figures(units.PreloadValue(end.Low))} to {units.Preload(end.High)} over the friction")
            : new("Preload", "none", "at the likely friction"));
        return [.. lines];
    }
}
