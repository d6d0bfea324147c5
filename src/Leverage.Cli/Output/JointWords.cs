using Leverage.Assessments;
using Leverage.Friction;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Cli.Output;

/// <summary>The parts that every answer about a tightened joint has.</summary>
internal static class JointWords
{
    /// <summary>What changes the way of working, each on its own line.</summary>
    internal static void First(TextPage page, JointAssessment result, UnitStyle units)
    {
        foreach (LabelledWords line in JointLines.First(result, units))
        {
            page.Note(line.Label, line.Words);
        }
    }

    /// <summary>Friction, preload and share of yield; one column where friction is one stated figure.</summary>
    internal static void Table(TextPage page, JointAssessment result, UnitStyle units)
    {
        FrictionRange friction = result.Friction;
        PreloadFigures end = result.End;
        string Number(Force preload) => UnitStyle.Fixed(units.PreloadValue(preload), units.IsUs ? 0 : 1);
        if (friction.Low == friction.High && !result.Setup.Request.SnugByHand)
        {
            page.Table(new Columns("lr")
                .Row("friction, as stated", Friction(friction.Likely))
                .Row($"preload, {units.PreloadUnit}", Number(end.Likely))
                .Row("share of yield", Share(end.YieldShare.Likely)));
            return;
        }

        page.Table(new Columns("lrrr")
            .Row("", "low", "likely", "high")
            .Row($"friction{UnconfirmedWords.Mark}", Friction(friction.High), Friction(friction.Likely), Friction(friction.Low))
            .Row($"preload, {units.PreloadUnit}", Number(end.Low), Number(end.Likely), Number(end.High))
            .Row("share of yield", Share(end.YieldShare.Low), Share(end.YieldShare.Likely), Share(end.YieldShare.High)));
    }

    /// <summary>Turn and thread; where there is room, way of tightening and settling too.</summary>
    internal static void Rest(TextPage page, JointAssessment result, UnitStyle units, bool brief)
    {
        if (result.Angle is { } angle)
        {
            page.Note($"The {UnitStyle.Angle(angle.Turn)} turn", JointLines.Turn(angle, result, units));
        }

        if (result is { Strip: { } strip, Setup.Tapped: { } hole })
        {
            page.Figure("Strips at", units.Preload(strip.StripLoad), JointLines.Strip(strip, hole, result, units));
            page.Figure("Bolt breaks at", units.Preload(strip.BreakLoad), $"first if at least {units.Length(strip.EngagementToBreak)} of thread engages");
        }

        if (brief || !result.Holds)
        {
            return;
        }

        page.Note("Scatter", JointLines.Scatter(result.Method));
        page.Note("After days", JointLines.Settled(result, units));
    }

    /// <summary>What was taken for granted.</summary>
    internal static void Assumed(TextPage page, IReadOnlyList<Assumption> assumed, UnitStyle units) =>
        page.Note("Assumed", UnconfirmedWords.Explained(string.Join("; ", AssumedWords.Of(assumed, units))));

    private static string Friction(double friction) => UnitStyle.Friction(friction);

    private static string Share(double share) => JointLines.Share(share);
}
