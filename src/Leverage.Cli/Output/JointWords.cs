using Leverage.Assessments;
using Leverage.Friction;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Cli.Output;

/// <summary>The parts that every answer about a tightened joint has.</summary>
internal static class JointWords
{
    /// <summary>What changes the way of working, each on its own line.</summary>
    internal static void First(Page page, JointAssessment result, UnitStyle units)
    {
        foreach (LabelledWords line in JointLines.First(result, units))
        {
            page.Note(line.Label, line.Words);
        }
    }

    /// <summary>Friction, preload and share of yield; one column where friction is one stated figure.</summary>
    internal static void Table(Page page, JointAssessment result, UnitStyle units)
    {
        FrictionRange friction = result.Friction;
        PreloadFigures end = result.End;
        string Number(Force preload) => UnitStyle.Fixed(units.PreloadValue(preload), units.IsUs ? 0 : 1);
        if (friction.Low == friction.High && !result.Setup.SnugByHand)
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

    /// <summary>Turn, thread, way of tightening and settling.</summary>
    internal static void Rest(Page page, JointAssessment result, UnitStyle units)
    {
        if (result.Angle is { } angle)
        {
            page.Note($"The {UnitStyle.Angle(angle.Turn)} turn", JointLines.Turn(angle, result, units));
        }

        if (result is { Strip: { } strip, Setup.Tapped: { } hole })
        {
            page.Figure("Strips at", units.Preload(strip.StripLoad), JointLines.Strip(strip, hole, result, units));
            page.Figure("Bolt breaks at", units.Preload(strip.BreakLoad), $"first, from {units.Length(strip.EngagementToBreak)} of thread on");
        }

        page.Note("Scatter", JointLines.Scatter(result.Method));
        page.Note("After days", JointLines.Settled(result, units));
    }

    /// <summary>The assumptions as one phrase.</summary>
    internal static string Assumed(JointAssessment result, UnitStyle units)
    {
        var assumed = new List<string>();
        if (result.Setup.Grade is null)
        {
            assumed.Add($"grade {result.Grade.Name}");
        }

        if (result.Setup.Friction is null)
        {
            assumed.Add($"friction {Friction(result.Friction.Likely)}, {Range(result.Friction)}");
        }

        if (result is { Angle: { } angle, Setup.Grip: null })
        {
            assumed.Add($"grip {units.Length(angle.Grip)}{UnconfirmedWords.Mark}, three diameters");
        }

        if (result.Angle is not null && result.Setup.Clamped is null)
        {
            assumed.Add("clamping steel");
        }

        string db = units.Length(result.Bearing.Diameter);
        assumed.Add(result.Bearing.Source switch
        {
            BearingSource.Given => $"bearing face {db} mean, as given",
            BearingSource.Tables => $"bearing face {db} mean (ISO 4014 head, ISO 273 hole)",
            _ => $"bearing face {db} mean, 1.25 of the diameter: the tables have none for this size",
        });
        return string.Join("; ", assumed);
    }

    /// <summary>The ends of a range of friction, marked: they are never measured on this joint: "0.1 to 0.196*".</summary>
    internal static string Range(FrictionRange range) =>
        $"{Friction(range.Low)} to {Friction(range.High)}{UnconfirmedWords.Mark}";

    /// <summary>A coefficient of friction: two decimals, a third where it says something.</summary>
    internal static string Friction(double friction)
    {
        string text = UnitStyle.Fixed(friction, 3);
        return text.EndsWith('0') ? text[..^1] : text;
    }

    private static string Share(double share) => UnitStyle.Percent(share);
}
