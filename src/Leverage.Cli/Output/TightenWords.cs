using Leverage.Answers;
using Leverage.Assessments;
using Leverage.Tightening;
using UnitsNet;

namespace Leverage.Cli.Output;

/// <summary>The answer of <c>leverage tighten</c> in words.</summary>
internal sealed class TightenWords
{
    private readonly TighteningAssessment _a;
    private readonly UnitStyle _units;

    /// <summary>Words for an assessment.</summary>
    internal TightenWords(TighteningAssessment assessment, UnitStyle units) => (_a, _units) = (assessment, units);

    private string LikelyFriction => UnitStyle.Trim(_a.Friction.Likely, 3);

    private string Range => $"{UnitStyle.Trim(_a.Friction.Low, 3)} to {UnitStyle.Trim(_a.Friction.High, 3)}";

    /// <summary>Lays the answer out.</summary>
    internal void Write(Page page)
    {
        page.Title($"Tighten {_a.Setup.Thread.Printed}, {_a.Grade.Name}, to {UnitStyle.Percent(_a.Setup.YieldShare)} "
            + $"of yield at friction {LikelyFriction}");
        page.Figure("Torque", _units.Torque(_a.Torque), $"{_units.TorqueNumber(_a.TorqueLow)} to "
            + $"{_units.Torque(_a.TorqueHigh)} buys the same preload at friction {Range}");
        page.Figure("Preload", _units.Preload(_a.Preload), "");
        page.Figure("To undo", _units.Torque(_a.Loosening), "same preload and friction; rust comes on top");
        page.Space();
        Split(page);
        page.Space();
        Asked(page);
        page.Figure("Nut factor", UnitStyle.Fixed(_a.NutFactor, 3), $"stress area {UnitStyle.Figures(_a.StressArea.SquareMillimeters)} mm², "
            + $"pitch diameter {UnitStyle.Fixed(_a.PitchDiameter.Millimeters, 3)} mm");
        page.Note("Mind", Slippery());
        page.Note("Assumed", Assumed());
        page.Note("Before you pull", "the maker's manual comes first; clean threads, the lubricant you named, new bolts "
            + "where the maker wants them.");
    }

    private void Split(Page page)
    {
        var split = new Columns("lrr").Row("where it goes", _units.TorqueUnit, "share");
        foreach (var (words, part) in ((string, Torque)[])
            [
                ("stretches the bolt", _a.Split.Pitch),
                ("thread friction", _a.Split.Thread),
                ("face friction", _a.Split.Face),
            ])
        {
            split.Row(words, _units.TorqueNumber(part), UnitStyle.Percent(part / _a.Torque));
        }

        page.Table(split);
    }

    private void Asked(Page page)
    {
        if (_a.Inverse is { } inverse)
        {
            page.Figure(_units.Torque(inverse.Torque), _units.Preload(inverse.PreloadLikely),
                $"{UnitStyle.Percent(inverse.YieldShare.Likely)} of yield; {UnitStyle.Percent(inverse.YieldShare.Low)} to "
                + $"{UnitStyle.Percent(inverse.YieldShare.High)} over friction {Range}");
            if (_a.Verdict != Verdict.Go)
            {
                page.Verdict(_a.Verdict, _a.Verdict == Verdict.Stop
                    ? "This torque yields the bolt at the likely friction."
                    : $"This torque yields the bolt if friction is as low as {UnitStyle.Trim(_a.Friction.Low, 3)}.");
            }
        }

        if (_a is { HangAt: { } at, Setup.HungMass: { } mass })
        {
            page.Figure("Hang it", _units.Reach(at), $"from the nut's axis along a level bar: {_units.Mass(mass)} at rest there "
                + $"is {_units.Torque(_a.Target)}; the bar's own weight comes on top");
        }

        if (_a is { AdapterSetting: { } setting, Setup.Adapter: { } fitting })
        {
            page.Figure("Set", _units.Torque(setting), $"on the wrench for {_units.Torque(_a.Target)} at the nut: adapter "
                + $"{_units.Length(fitting.Adapter)} at {UnitStyle.Angle(fitting.Angle)}, grip at {_units.Length(fitting.Wrench)}");
        }
    }

    private string Slippery() => $"at friction {UnitStyle.Trim(_a.Friction.Low, 3)} the same {_units.Torque(_a.Torque)} takes the bolt to "
        + $"{UnitStyle.Percent(_a.YieldShareAtLowFriction)} of yield"
        + (_a.YieldShareAtLowFriction > 1 ? ": past it. Know your lubricant, or aim lower." : ".");

    private string Assumed()
    {
        var assumed = new List<string>();
        if (_a.Setup.Grade is null)
        {
            assumed.Add($"grade {_a.Grade.Name}");
        }

        if (_a.Setup.Friction is null)
        {
            assumed.Add($"friction {LikelyFriction}, {Range}");
        }

        string db = _units.Length(_a.Bearing.Diameter);
        assumed.Add(_a.Bearing.Source switch
        {
            BearingSource.Given => $"bearing face {db} mean as given",
            BearingSource.Tables => $"bearing face {db} mean (ISO 4014 head, ISO 273 hole)",
            _ => $"bearing face {db} mean, 1.25 of the diameter: the tables have none for this size",
        });
        assumed.Add(_a.Setup.TorsionFactor == TensionAndTorsion.Plastic
            ? "torsion plastic (VDI 2230 since 2001)"
            : "torsion elastic (older tables)");
        return string.Join("; ", assumed);
    }
}
