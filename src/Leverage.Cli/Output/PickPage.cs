using System.Globalization;
using Leverage.Assessments;
using Leverage.Wording;
using Leverage.Workshop.Picking;
using UnitsNet;

namespace Leverage.Cli.Output;

/// <summary>The answer of <c>leverage pick</c> in words, on one screen.</summary>
internal sealed class PickPage
{
    private readonly PickAssessment _pick;
    private readonly UnitStyle _units;

    /// <summary>Words for a picking.</summary>
    internal PickPage(PickAssessment pick, UnitStyle units) => (_pick, _units) = (pick, units);

    private LooseningAssessment First => _pick.SetUps.Count > 0 ? _pick.SetUps[0].Assessment : _pick.Nut;

    /// <summary>Lays the answer out.</summary>
    internal void Write(Page page)
    {
        page.Title(LooseningTitle.Of(_pick.Nut.Setup, _units));
        NutFigures nut = _pick.Nut.Nut;
        page.Figure("It takes", $"{Number(nut.LowNmm)} · {Number(nut.LikelyNmm)} · {_units.Torque(Nm(nut.HighNmm))}", $"easy · likely · hard{UnconfirmedWords.Mark}");
        PickTally tally = _pick.Tally;
        page.Note("Tried", string.Create(
            CultureInfo.InvariantCulture,
            $"{tally.Sets} sets of tools in {tally.Setups} ways: {tally.Go} go, {tally.Care} care, {tally.Short} short, {tally.Stop} stop; {Who()}"));
        page.Space();
        SetUps(page);
        page.Space();
        MoveTable.Write(page, _pick.Moves, _units);
        page.Space();
        page.Note("Assumed", UnconfirmedWords.Explained(AssumedWords.Brief(First.Setup.Assumed, _units)));
        page.Note("Before you pull", Cautions.Of(First));
    }

    private string Who()
    {
        Hands hands = First.Setup.Hands;
        return $"{_pick.Request.Person?.Name ?? (hands.Person == Levers.Person.Man ? "a man" : "a woman")}, {_units.Mass(hands.Body)}";
    }

    private void SetUps(Page page)
    {
        if (_pick.SetUps.Count == 0)
        {
            page.Verdict(Verdict.NotJudged, "Nothing in the chest fits this nut and a bar.");
        }

        for (int i = 0; i < _pick.SetUps.Count; i++)
        {
            PickedSetUp setUp = _pick.SetUps[i];
            page.Ranked(i + 1, setUp.Assessment.Verdict, PickWords.Tools(setUp, _units));
            page.Beneath(PickWords.Figures(setUp));
            if (i == 0 && Reasons.Of(setUp.Assessment, _units) is [var why, ..])
            {
                page.Beneath(why);
            }
        }
    }

    private string Number(double torqueNmm) => _units.TorqueNumber(Nm(torqueNmm));

    private static Torque Nm(double torqueNmm) => Torque.FromNewtonMillimeters(torqueNmm);
}
