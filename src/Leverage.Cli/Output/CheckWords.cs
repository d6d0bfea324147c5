using Leverage.Wording;
using Leverage.Assessments;
using Leverage.Grades;
using UnitsNet;

namespace Leverage.Cli.Output;

/// <summary>The answer of <c>leverage check</c> in words.</summary>
internal sealed class CheckWords
{
    private const int MostNames = 8;
    private readonly CheckingAssessment _a;
    private readonly UnitStyle _units;

    /// <summary>Words for an assessment.</summary>
    internal CheckWords(CheckingAssessment assessment, UnitStyle units) => (_a, _units) = (assessment, units);

    private string Quoted => _units.Torque(_a.Setup.Quoted);

    /// <summary>Lays the answer out.</summary>
    internal void Write(Page page)
    {
        page.Title($"{Quoted} on {_a.Setup.Thread.Printed}, grade {_a.Grade.Name}: {Headline()}");
        Table(page);
        page.Space();
        page.Verdict(_a.Verdict, Why());
        page.Figure("Usual here", _units.Torque(_a.Usual), $"90 % of yield at friction {Number(_a.Friction.Likely)}");
        page.Note("Yields", Yields());
        if (_a.ReadsBetterAs is { } unit)
        {
            double value = _a.Setup.Quoted.Value;
            page.Note("Other unit", $"{UnitStyle.Figures(value)} {CheckingAnswer.UnitWord(unit)} would fit"
                + (unit == _units.TorqueUnitKind ? "" : $", which is {_units.Torque(Torque.From(value, unit))}")
                + ": was the unit misread?");
        }

        page.Note("It would suit", Suits());
        page.Note("Assumed", UnconfirmedWords.Explained(JointWords.Assumed(
            _a.Setup.Grade is null ? _a.Grade : null, _a.Setup.Friction is null ? _a.Friction : null, _a.Bearing, _units),
            UnconfirmedWords.Of(_a.Setup.Thread, _a.Grade, _a.Friction)));
        page.Note("Before you pull", "a believable torque is not the right one: the maker's manual comes first.");
    }

    private void Table(Page page)
    {
        InverseTightening buys = _a.Buys;
        page.Table(new Columns("lrrr")
            .Row("", "low", "likely", "high")
            .Row($"friction{UnconfirmedWords.Mark}", Number(_a.Friction.High), Number(_a.Friction.Likely), Number(_a.Friction.Low))
            .Row("share of yield", Share(buys.YieldShare.Low), Share(buys.YieldShare.Likely), Share(buys.YieldShare.High))
            .Row($"preload, {_units.PreloadUnit}", Preload(buys.PreloadLow), Preload(buys.PreloadLikely), Preload(buys.PreloadHigh)));
    }

    private string Preload(Force preload) => UnitStyle.Fixed(_units.PreloadValue(preload), _units.IsUs ? 0 : 1);

    private string Headline() => _a.Quote switch
    {
        QuoteVerdict.Fits => "fits",
        QuoteVerdict.Low => "low",
        _ => "high",
    };

    private string Why() => _a.Quote switch
    {
        QuoteVerdict.Fits => "It tightens the bolt well and does not yield it over this range of friction.",
        QuoteVerdict.Low => $"It uses only {Share(_a.Buys.YieldShare.Likely)} of yield where 45 to 90 % is usual: the joint may "
            + "work loose.",
        _ when _a.Buys.YieldShare.Likely > QuoteRule.MostShare =>
            $"It takes the bolt to {Share(_a.Buys.YieldShare.Likely)} of yield at the likely friction; 90 % is the usual most.",
        _ => $"It is believable at the likely friction, but yields the bolt where friction is as low as {Number(_a.Friction.Low)}.",
    };

    private string Yields()
    {
        if (_a.YieldsBelowFriction is { } friction)
        {
            return $"if friction is below {UnitStyle.Fixed(friction, 3)}";
        }

        return _a.Buys.YieldShare.Likely > 1
            ? "at any friction a bolt has"
            : $"at no friction a bolt has, down to {Number(QuoteRule.LeastFriction)}";
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

    private static string Share(double share) => UnitStyle.Percent(share);

    private static string Number(double friction) => JointWords.Friction(friction);
}
