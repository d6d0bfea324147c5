using Leverage.Assessments;
using Leverage.Tables;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Cli.Output;

/// <summary>The answer of <c>leverage slip</c> in words: on one screen, or with every state, overlap and assumption.</summary>
internal sealed class SlipPage
{
    /// <summary>Overlaps shown of the table; all of them are in the JSON.</summary>
    private const int RowsShown = 7;

    private readonly SlipAssessment _a;
    private readonly UnitStyle _units;
    private readonly bool _more;

    /// <summary>A page for an assessment.</summary>
    internal SlipPage(SlipAssessment assessment, UnitStyle units, bool more) => (_a, _units, _more) = (assessment, units, more);

    /// <summary>Lays the answer out: whole with more, else what one screen holds.</summary>
    internal void Write(TextPage page)
    {
        page.Headline(_a.Verdict, SlipWords.Title(_a, _units));
        page.Note("Stays on?", $"{VerdictWords.Capitals(_a.Ruling.Safe)}: {SlipWords.Verdict(_a)}");
        page.Note($"Safe angle{Mark}", SlipWords.Safe(_a));
        page.Note("Least overlap", SlipWords.Least(_a, _units));
        page.Note("Comes first", SlipWords.First(_a, _units));
        page.Note("Why it slides", SlipWords.Cause(_a.Setup.Hands.Stance.Push));
        page.Note("Best overlap", SlipWords.Best(_a, _units));
        page.Note("Your swing", VerdictWords.Sentence(SlipWords.Swing(_a)));
        if (_more)
        {
            Rest(page);
        }
        else
        {
            page.Line(UnconfirmedWords.Listed);
        }

        page.Note("Before you pull", $"{Cautions.Braced(_a.Setup.Hands.Stance)}; nobody in line with the tube; the maker's manual first");
    }

    private void Rest(TextPage page)
    {
        page.Space();
        Listed(page, "Reasons", SlipWords.Reasons(_a, _units));
        foreach (var (state, angle, what) in SlipWords.States(_a))
        {
            page.Figure(state, angle, what);
        }

        string low = UnitStyle.Trim(_a.Setup.Surface.Friction.Low, 2);
        string usual = UnitStyle.Trim(_a.Setup.Surface.Friction.Likely, 2);
        page.Note($"Friction{Mark}", low == usual ? $"{low}, as given"
            : $"{low}, the slippery end; the usual {usual} holds to {VerdictWords.Angle(_a.Typical.HeldRad, _a.Setup.Hands.Stance.Push)}");
        page.Space();
        Listed(page, "Makes it worse", SlipWords.Worse(_a, _units));
        Listed(page, "Helps", SlipWords.Helps(_a, _units));
        page.Space();
        Table(page);
        page.Space();
        page.Note("Assumed", UnconfirmedWords.Explained(AssumedWords.Brief(_a.Setup.Assumed, _units)));
    }

    /// <summary>The mark where the friction is the table's, not the person's own.</summary>
    private string Mark => _a.Setup.Surface.Status.IsUnconfirmed() ? UnconfirmedWords.Mark : "";

    private static void Listed(TextPage page, string label, IReadOnlyList<string> lines)
    {
        foreach (string line in lines)
        {
            page.Note(label, $"{line.TrimEnd('.')}.");
            label = "";
        }
    }

    private void Table(TextPage page)
    {
        var table = new Columns("rrrrr").Row("overlap", "tilt", "jam", "safe to", "tube gives at");
        foreach (SlipRow row in Shown())
        {
            string mark = row.OverlapMm == _a.Best.OverlapMm ? " best" : "";
            table.Row(
                _units.Length(Length.FromMillimeters(row.OverlapMm)),
                $"{UnitStyle.Fixed(double.RadiansToDegrees(row.TiltRad), 1)}°",
                $"{UnitStyle.Fixed(row.JamRatio, 1)}×",
                (row.Checked.HeldRad > 0 ? $"{UnitStyle.Fixed(double.RadiansToDegrees(row.Checked.HeldRad), 0)}°" : "none") + mark,
                _units.Force(Force.FromNewtons(row.GivesAtN)));
        }

        page.Table(table);
    }

    private IEnumerable<SlipRow> Shown()
    {
        int step = Math.Max(1, (_a.Rows.Count - 1) / (RowsShown - 1));
        return _a.Rows
            .Where((row, i) => i % step == 0 || i == _a.Rows.Count - 1)
            .Append(_a.Best).Append(_a.Here)
            .DistinctBy(row => row.OverlapMm)
            .OrderBy(row => row.OverlapMm);
    }
}
