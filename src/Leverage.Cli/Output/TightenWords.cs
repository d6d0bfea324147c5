using Leverage.Wording;
using Leverage.Assessments;
using Leverage.Preload;
using UnitsNet;

namespace Leverage.Cli.Output;

/// <summary>The answer of <c>leverage tighten</c> in words.</summary>
internal sealed class TightenWords
{
    private readonly TighteningAssessment _a;
    private readonly UnitStyle _units;

    /// <summary>Words for an assessment.</summary>
    internal TightenWords(TighteningAssessment assessment, UnitStyle units) => (_a, _units) = (assessment, units);

    private string LikelyFriction => JointWords.Friction(_a.Friction.Likely);

    private string Range => JointWords.Range(_a.Friction);

    /// <summary>Lays the answer out.</summary>
    internal void Write(Page page)
    {
        page.Title($"{TighteningTitle.Of(_a)} at friction {LikelyFriction}");
        page.Figure("Torque", _units.Torque(_a.Torque), $"{_units.TorqueNumber(_a.TorqueLow)} to "
            + $"{_units.Torque(_a.TorqueHigh)} buys the same preload at friction {Range}");
        page.Figure("Preload", _units.Preload(_a.Preload), "");
        page.Figure("To undo", _units.Torque(_a.Loosening), "same preload and friction; rust comes on top");
        page.Figure("Nut factor", UnitStyle.Fixed(_a.NutFactor, 3), $"stress area {_units.Area(_a.StressArea)}, "
            + $"pitch diameter {_units.Fine(_a.PitchDiameter)}");
        page.Space();
        Split(page);
        page.Space();
        Asked(page);
        Verdict(page);
        if (_a.Inverse is null)
        {
            page.Note("Mind", Slippery());
        }

        page.Note("Assumed", UnconfirmedWords.Explained(
            Assumed(), UnconfirmedWords.Of(_a.Setup.Thread, _a.Grade, _a.Friction)));
        page.Note("Before you pull", "the maker's manual comes first; clean threads, the lubricant you named, new bolts "
            + "where the maker wants them.");
    }

    private void Split(Page page)
    {
        double total = _units.TorqueValue(_a.Torque);
        int decimals = total >= 100 ? 0 : total >= 10 ? 1 : 2;
        var split = new Columns("lrr").Row("where the torque goes", _units.TorqueUnit, "share");
        Part("stretches the bolt", _a.Split.Pitch);
        Part("friction in the thread", _a.Split.Thread);
        Part("friction under the head or nut", _a.Split.Face);
        page.Table(split);

        void Part(string words, Torque part) => split.Row(
            words, UnitStyle.Fixed(_units.TorqueValue(part), decimals), UnitStyle.Percent(part / _a.Torque));
    }

    private void Asked(Page page)
    {
        if (_a.Inverse is { } inverse)
        {
            page.Figure(_units.Torque(inverse.Torque), _units.Preload(inverse.PreloadLikely),
                $"{UnitStyle.Percent(inverse.YieldShare.Likely)} of yield; {UnitStyle.Percent(inverse.YieldShare.Low)} to "
                + $"{UnitStyle.Percent(inverse.YieldShare.High)} over friction {Range}");
        }

        Strip(page);
        if (_a is { HangAt: { } at, Setup.HungMass: { } mass })
        {
            page.Figure("Hang it", _units.Any(at), $"from the nut's axis along a level bar: {_units.Mass(mass)} at rest there "
                + $"is {_units.Torque(_a.Target)}; the bar's own weight comes on top");
        }

        if (_a is { AdapterSetting: { } setting, Setup.Adapter: { } fitting })
        {
            page.Figure("Set", _units.Torque(setting), $"on the wrench for {_units.Torque(_a.Target)} at the nut: adapter "
                + $"{_units.Length(fitting.Adapter)} at {UnitStyle.Angle(fitting.Angle)}, grip at {_units.Length(fitting.Wrench)}");
        }
    }

    private void Strip(Page page)
    {
        if (_a is { Strip: { } strip, Setup.Tapped: { } hole })
        {
            page.Figure("Strips at", _units.Preload(strip.StripLoad), $"the {(strip.HoleStrips ? "hole's" : "bolt's")} thread, "
                + $"{_units.Length(hole.Engagement)} engaged in {hole.Material.Words}; preload {_units.Preload(_a.Aim)}: "
                + $"safety {UnitStyle.Fixed(strip.Safety, 1)}");
            page.Figure("Bolt breaks at", _units.Preload(strip.BreakLoad), $"before the thread strips from "
                + $"{_units.Length(strip.EngagementToBreak)} engaged");
        }
    }

    private void Verdict(Page page)
    {
        var why = new List<string>();
        if (_a.Inverse is { YieldShare: { High: > 1 } share })
        {
            why.Add(share.Likely > 1
                ? "This torque yields the bolt at the likely friction."
                : $"This torque yields the bolt if friction is as low as {JointWords.Friction(_a.Friction.Low)}.");
        }

        if (_a.Strip is { } strip && strip.StripLoad < strip.BreakLoad)
        {
            why.Add(strip.Safety < 1
                ? "The thread strips before the preload is reached."
                : "The thread strips before the bolt breaks: too much torque ruins the hole, not the bolt.");
        }

        if (why.Count > 0)
        {
            page.Verdict(_a.Verdict, string.Join(' ', why));
        }
    }

    private string Slippery() => $"at friction {JointWords.Friction(_a.Friction.Low)} the same {_units.Torque(_a.Torque)} takes the bolt to "
        + $"{UnitStyle.Percent(_a.YieldShareAtLowFriction)} of yield"
        + (_a.YieldShareAtLowFriction > 1 ? ": past it. Know your lubricant, or aim lower." : ".");

    private string Assumed()
    {
        string joint = JointWords.Assumed(
            _a.Setup.Grade is null ? _a.Grade : null, _a.Setup.Friction is null ? _a.Friction : null, _a.Bearing, _units);
        return joint + (_a.Setup.TorsionFactor == TensionAndTorsion.Plastic
            ? "; torsion plastic (VDI 2230 since 2001)"
            : "; torsion elastic (older tables)");
    }
}
