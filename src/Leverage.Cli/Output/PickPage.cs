using System.Globalization;
using Leverage.Wording;
using Leverage.Assessments;
using Leverage.Workshop.Picking;
using UnitsNet;

namespace Leverage.Cli.Output;

/// <summary>The answer of <c>leverage pick</c> in words, on one screen.</summary>
internal sealed class PickPage
{
    /// <summary>Most changes worth a line on one screen.</summary>
    private const int MostChanges = 2;

    private readonly PickAssessment _pick;
    private readonly UnitStyle _units;

    /// <summary>Words for a picking.</summary>
    internal PickPage(PickAssessment pick, UnitStyle units) => (_pick, _units) = (pick, units);

    private LooseningAssessment First => _pick.Places.Count > 0 ? _pick.Places[0].Assessment : _pick.Nut;

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
        Places(page);
        Better(page);
        page.Space();
        page.Note("Assumed", UnconfirmedWords.Explained(AssumedWords.Brief(First.Setup.Assumed, _units)));
        page.Note("Before you pull", Cautions.Of(First));
    }

    private string Who()
    {
        Hands hands = First.Setup.Hands;
        return $"{_pick.Request.Person?.Name ?? (hands.Person == Levers.Person.Man ? "a man" : "a woman")}, {_units.Mass(hands.Body)}";
    }

    private void Places(Page page)
    {
        if (_pick.Places.Count == 0)
        {
            page.Verdict(Verdict.Stop, "Nothing in the chest fits this nut and a bar.");
            return;
        }

        for (int i = 0; i < _pick.Places.Count; i++)
        {
            Place place = _pick.Places[i];
            page.Ranked(i + 1, place.Standing.Verdict, PickWords.Tools(place, _units));
            page.Beneath(PickWords.Figures(place));
            if (place.LosesBy == Lead.Verdict)
            {
                page.Beneath(PickWords.WorseVerdict(place, _units));
            }
        }

        if (_pick.Places.Any(place => place.LosesBy is not (null or Lead.Verdict or Lead.Order)))
        {
            page.Beneath($"{PickWords.LossMark.Trim()} what it loses by to the one above");
        }
    }

    private void Better(Page page)
    {
        if (_pick.Verdict == Verdict.Go)
        {
            return;
        }

        page.Space();
        if (_pick.Places.Count > 0)
        {
            page.Note("Why not go", string.Join(' ', Reasons.Of(First, _units)));
        }

        List(page, "Change", _pick.Changes.Take(MostChanges).Select(change => PickWords.Change(change, _units)));
        List(page, "Borrow or buy", _pick.ToGet.Take(MostChanges).Select(get => PickWords.Get(get, _units)));
        if (!_pick.CanGo)
        {
            page.Note(
                "Still no go",
                "No tool of the tables makes it one: soak and heat it more than once, split the nut, or leave it to a workshop.");
        }
    }

    private static void List(Page page, string label, IEnumerable<string> lines)
    {
        foreach (string line in lines)
        {
            page.Note(label, line);
            label = "or";
        }
    }

    private string Number(double torqueNmm) => _units.TorqueNumber(Nm(torqueNmm));

    private static Torque Nm(double torqueNmm) => Torque.FromNewtonMillimeters(torqueNmm);
}
