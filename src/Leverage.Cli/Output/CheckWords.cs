using Leverage.Assessments;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Cli.Output;

/// <summary>The answer of <c>leverage check</c> in words.</summary>
internal sealed class CheckWords
{
    private const int MostNames = 8;
    private readonly CheckingAssessment _a;
    private readonly UnitStyle _units;
    private readonly bool _more;

    /// <summary>Words for an assessment.</summary>
    internal CheckWords(CheckingAssessment assessment, UnitStyle units, bool more) => (_a, _units, _more) = (assessment, units, more);

    /// <summary>Lays the answer out: whole with more, else what one screen holds.</summary>
    internal void Write(TextPage page) => Write(page, !_more && TextPage.Overflows(trial => Write(trial, brief: false)));

    private void Write(TextPage page, bool brief)
    {
        JointAssessment result = _a.Result;
        string then = result.Angle is { } angle ? $" and then {UnitStyle.Angle(angle.Turn)}" : "";
        page.Title($"{_units.Torque(_a.Setup.Quoted)}{then} on {_a.Setup.Thread.Printed}, grade {_a.Grade.Name}: "
            + JointLines.Headline(result));
        JointWords.First(page, result, _units);
        JointWords.Table(page, result, _units);
        if (!brief)
        {
            page.Space();
        }

        page.Verdict(_a.Verdict, JointLines.Why(result, _units));
        page.Figure("Usual here", _units.Torque(_a.Usual), "what leverage tighten sets for this joint");
        JointWords.Rest(page, result, _units, brief);
        if (result.Angle is null && !(brief && result.Quote == TorqueVerdict.Low))
        {
            page.Note("Yields", Yields());
        }

        if (_a.ReadsBetterAs is { } unit)
        {
            double value = _a.Setup.Quoted.Value;
            page.Note("Other unit", $"{UnitStyle.Figures(value)} {CheckingAnswer.UnitWord(unit)} would fit"
                + (unit == _units.TorqueUnitKind ? "" : $", which is {_units.Torque(Torque.From(value, unit))}")
                + ": was the unit misread?");
        }

        if (JointLines.UsualFor(_a, _units) is { } usual)
        {
            page.Note("Such a torque", usual);
        }

        if (result.Angle is null && !brief)
        {
            page.Note("Torque suits", Suits());
        }

        if (_more)
        {
            JointWords.Assumed(page, result.Assumed, _units);
        }
        else
        {
            page.Line(UnconfirmedWords.Listed);
        }

        page.Note("Before you pull", "a believable torque can still be the wrong one: the maker's manual comes first.");
    }

    private string Yields()
    {
        if (_a.YieldsBelowFriction is { } friction)
        {
            return $"if friction is below {UnitStyle.Fixed(friction, 3)}";
        }

        return _a.End.YieldShare.Likely > 1
            ? "however rough the thread"
            : $"not even with the slipperiest thread, friction {UnitStyle.Friction(TighteningRule.LeastFriction)}";
    }

    private string Suits()
    {
        string grades = Names(_a.SuitsGrades.Select(grade => grade.Name));
        string threads = Names(_a.SuitsThreads.Select(thread => thread.Printed));
        return $"{(grades.Length > 0 ? $"grade {grades}" : "no grade")} on {_a.Setup.Thread.Printed}; "
            + $"{(threads.Length > 0 ? threads : "no thread")} in grade {_a.Grade.Name}";
    }

    private static string Names(IEnumerable<string> names)
    {
        string[] all = [.. names.Distinct(StringComparer.Ordinal)];
        return string.Join(", ", all.Take(MostNames)) + (all.Length > MostNames ? " and others" : "");
    }
}
