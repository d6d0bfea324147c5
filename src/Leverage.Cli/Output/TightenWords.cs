using Leverage.Assessments;
using Leverage.Wording;

namespace Leverage.Cli.Output;

/// <summary>The answer of <c>leverage tighten</c> in words: what was asked comes first.</summary>
internal sealed class TightenWords
{
    private readonly TighteningAssessment _a;
    private readonly UnitStyle _units;
    private readonly bool _more;

    /// <summary>Words for an assessment.</summary>
    internal TightenWords(TighteningAssessment assessment, UnitStyle units, bool more) => (_a, _units, _more) = (assessment, units, more);

    /// <summary>Lays the answer out: whole with more, else what one screen holds.</summary>
    internal void Write(TextPage page) => Write(page, !_more && TextPage.Overflows(trial => Write(trial, brief: false)));

    private void Write(TextPage page, bool brief)
    {
        JointAssessment result = _a.Result;
        page.Title(TighteningTitle.Of(_a));
        JointWords.First(page, result, _units);
        Answer(page);
        page.Space();
        JointWords.Table(page, result, _units);
        page.Space();
        page.Verdict(_a.Verdict, JointLines.Why(result, _units));
        JointWords.Rest(page, result, _units, brief);
        if (!brief)
        {
            if (result.Holds)
            {
                page.Figure("To loosen", _units.Torque(result.Loosening), "at the same friction; rust adds to it");
            }

            page.Note("Torque goes to", Split());
        }

        if (_more)
        {
            JointWords.Assumed(page, _a.Assumed, _units);
        }
        else
        {
            page.Line(UnconfirmedWords.Listed);
        }

        page.Note("Before you pull", "the maker's manual comes first; clean threads, the lubricant you named"
            + (_a.Setup.Request.NewBolt ? "." : ", new bolts where the maker wants them."));
    }

    /// <summary>What was asked: the setting with an adapter, the place of a weight, the preload of a torque, else the torque.</summary>
    private void Answer(TextPage page)
    {
        string target = _units.Torque(_a.Target);
        if (_a is { AdapterSetting: { } setting, Setup.Adapter: { } fitting })
        {
            page.Figure("Set", _units.Torque(setting), $"on the wrench: {target} at the nut; adapter "
                + $"{_units.Length(fitting.Adapter)} at {UnitStyle.Angle(fitting.Angle)}, your grip {_units.Length(fitting.Wrench)} out");
        }

        if (_a is { HangAt: { } at, Setup.HungMass: { } mass })
        {
            page.Figure("Hang it", _units.Any(at), $"out from the middle of the nut on a level bar: {_units.Mass(mass)} at rest there "
                + $"makes {target}; the bar's own weight adds to it");
        }

        if (_a.Setup.Request.Torque is not null)
        {
            PreloadFigures end = _a.Result.End;
            string then = _a.Result.Angle is { } angle ? $" and then {UnitStyle.Angle(angle.Turn)}" : "";
            if (_a.Result.Holds)
            {
                page.Figure("Preload", _units.Preload(end.Likely), $"likely from {target}{then}; "
                    + $"{UnitStyle.Figures(_units.PreloadValue(end.Low))} to {_units.Preload(end.High)} possible");
            }
            else
            {
                page.Figure("Preload", "none", $"is left after {target}{then}, at the likely friction");
            }
        }
        else if (_a.AdapterSetting is null && _a.HangAt is null)
        {
            page.Figure("Torque", target, How());
        }
    }

    private string How() => _a.SetBy switch
    {
        TorqueLimit.Thread => $"{UnitStyle.Percent(TighteningRule.MostOfStrip)} of what strips the thread{UnconfirmedWords.Mark}, at friction {UnitStyle.Friction(_a.Friction.Low)}",
        TorqueLimit.LowFriction => $"the most a slippery thread allows, at friction {UnitStyle.Friction(_a.Friction.Low)}",
        _ => $"{UnitStyle.Percent(_a.Setup.YieldShare)} of yield at friction {UnitStyle.Friction(_a.Friction.Likely)}",
    };

    private string Split() => $"stretching the bolt {UnitStyle.Percent(_a.Split.Pitch / _a.Target)}, thread friction "
        + $"{UnitStyle.Percent(_a.Split.Thread / _a.Target)}, friction under the nut or head {UnitStyle.Percent(_a.Split.Face / _a.Target)}; "
        + $"nut factor {UnitStyle.Fixed(_a.NutFactor, 3)}";
}
