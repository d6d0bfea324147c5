using System.Globalization;
using Leverage.Assessments;
using Leverage.Wording;
using Leverage.Workshop.Picking;

namespace Leverage.Cli.Output;

/// <summary>The answer of <c>leverage pick</c> in words: on one screen the first set-up and what if it stays tight, or with all that was found.</summary>
internal sealed class PickPage
{
    private readonly PickAssessment _pick;
    private readonly UnitStyle _units;
    private readonly bool _more;

    /// <summary>Words for a picking.</summary>
    internal PickPage(PickAssessment pick, UnitStyle units, bool more) => (_pick, _units, _more) = (pick, units, more);

    private LooseningAssessment First => _pick.SetUps.Count > 0 ? _pick.SetUps[0].Assessment : _pick.Nut;

    /// <summary>Lays the answer out: whole with more, else with as many set-ups as fit on one screen.</summary>
    internal void Write(TextPage page)
    {
        int most = _pick.SetUps.Count;
        while (!_more && most > 1 && TextPage.Overflows(trial => Write(trial, most)))
        {
            most--;
        }

        Write(page, most);
    }

    private void Write(TextPage page, int most)
    {
        page.Title(LooseningTitle.Of(_pick.Nut.Setup, _units));
        FigureLine takes = LooseningFigures.Takes(_pick.Nut, _units)[0];
        page.Figure(takes.Label, takes.Value, takes.Note);
        PickTally tally = _pick.Tally;
        page.Note("Tried", string.Create(
            CultureInfo.InvariantCulture,
            $"{tally.Sets} sets of tools in {tally.Setups} ways, pulled by {Who()}: {tally.Go} go, {tally.Care} care, {tally.Short} short, {tally.Stop} stop"));
        SetUps(page, most);
        MoveTable.Write(page, _pick.Moves, _units);
        foreach (string watch in WatchWords.Of(First, _units).Take(_more ? int.MaxValue : 1))
        {
            page.Note("Watch", watch);
        }

        if (_more)
        {
            page.Note("Assumed", UnconfirmedWords.Explained(AssumedWords.Brief(First.Setup.Assumed, _units)));
        }
        else
        {
            page.Line(UnconfirmedWords.Listed);
        }

        page.Note("Before you pull", Cautions.Of(First));
    }

    private string Who()
    {
        Hands hands = First.Setup.Hands;
        return $"{_pick.Request.Person?.Name ?? (hands.Person == Levers.Person.Man ? "a man" : "a woman")}, {_units.Mass(hands.Body)}";
    }

    private void SetUps(TextPage page, int most)
    {
        if (_pick.SetUps.Count == 0)
        {
            page.Verdict(Verdict.NotJudged, "Nothing in the chest fits this nut and a bar.");
        }

        for (int i = 0; i < most; i++)
        {
            PickedSetUp setUp = _pick.SetUps[i];
            page.Ranked(i + 1, setUp.Assessment.Verdict, PickWords.Tools(setUp, _units));
            if (_more || i == 0)
            {
                page.Beneath(PickWords.Figures(setUp));
                if (i == 0 && Reasons.Of(setUp.Assessment, _units) is [var why, ..])
                {
                    page.Beneath(why);
                }
            }
        }
    }
}
