using Leverage.Requests;
using Leverage.Assessments;
using Leverage.Levers;
using UnitsNet;

namespace Leverage.Workshop.Picking;

/// <summary>A set of tools in its best use.</summary>
/// <param name="Tools">The set.</param>
/// <param name="Stance">The stance.</param>
/// <param name="OverlapMm">How far its tube is on, mm.</param>
/// <param name="Effort">Likely force needed, as a share of the likely force there is.</param>
/// <param name="Standing">How it stands.</param>
/// <param name="Likeliest">The most likely it is to loosen the nut in any use, whatever the verdict.</param>
internal readonly record struct Entrant(
    SetOnNut Tools, Stance Stance, double OverlapMm, double Effort, Standing Standing, double Likeliest);

/// <summary>Judges sets of tools at every overlap in every stance on one nut and keeps each set's best use.</summary>
internal sealed class Contest
{
    private readonly PickRequest _request;
    private readonly NutFigures _nut;
    private readonly StanceHands[] _stances;
    private readonly int[] _verdicts = new int[(int)Verdict.Stop + 1];
    private readonly List<Entrant> _entrants = [];
    private int _sets;

    internal Contest(PickRequest request, NutFigures nut, StanceHands[] stances) =>
        (_request, _nut, _stances) = (request, nut, stances);

    /// <summary>What was tried.</summary>
    internal PickTally Tally => new(
        _sets, _verdicts[(int)Verdict.Go], _verdicts[(int)Verdict.Care], _verdicts[(int)Verdict.Short],
        _verdicts[(int)Verdict.NotJudged], _verdicts[(int)Verdict.Stop]);

    /// <summary>The best use of the best set, with its full assessment; null where nothing fits.</summary>
    internal Place? Best => _entrants.Count > 0 ? Seat(Ranked(1)[0], null) : null;

    /// <summary>The stances in which sets are at their best, the likeliest sets first.</summary>
    internal IEnumerable<string> Stances => Likeliest().Select(entrant => entrant.Stance.Key).Distinct(StringComparer.Ordinal);

    /// <summary>Judges all sets.</summary>
    internal Contest Judge(IEnumerable<SetOnNut> sets)
    {
        foreach (SetOnNut set in sets)
        {
            _sets++;
            if (BestUse(set) is { } entrant)
            {
                _entrants.Add(entrant);
            }
        }

        return this;
    }

    /// <summary>The first of the sets; equal ones in the order of the chest.</summary>
    internal List<Entrant> Ranked(int most) => [.. _entrants.OrderBy(entrant => entrant.Standing).Take(most)];

    /// <summary>Sets that a change may make the best: those that stand highest, and those likeliest to loosen it whatever the verdict.</summary>
    internal List<SetOnNut> Promising(int each) =>
        [.. Ranked(each).Concat(Likeliest().Take(each)).Select(entrant => entrant.Tools).Distinct()];

    /// <summary>A place with its full assessment.</summary>
    internal Place Seat(Entrant entrant, Entrant? above)
    {
        Length? overlap = entrant.Tools.Set.Tube is null ? null : Length.FromMillimeters(entrant.OverlapMm);
        LooseningRequest request = _request.Standing(entrant.Stance.Key) with { Overlap = overlap };
        LooseningSetup setup = LooseningDefaults.Complete(entrant.Tools.Set.Into(request));
        return new Place(
            entrant.Tools.Set,
            entrant.Stance,
            entrant.Standing,
            entrant.Effort,
            LooseningAssessor.WithoutAdvice(setup),
            above?.Standing.Over(entrant.Standing));
    }

    private IOrderedEnumerable<Entrant> Likeliest() => _entrants.OrderByDescending(entrant => entrant.Likeliest);

    private Entrant? BestUse(SetOnNut set)
    {
        var judge = new SetJudge(set.Setup, _nut, _request.Room);
        Entrant? best = null;
        double likeliest = 0;
        foreach (StanceHands hands in _stances)
        {
            foreach (double overlap in judge.OverlapsMm(hands.Stance))
            {
                JudgedUse use = judge.Judge(hands, overlap);
                _verdicts[(int)use.Judgement.Verdict]++;
                likeliest = Math.Max(likeliest, use.Judgement.ComesLoose);
                var standing = Standing.Of(use.Judgement, use.Effort, set.Set.Pieces);
                if (best is not { } known || standing < known.Standing)
                {
                    best = new Entrant(set, hands.Stance, overlap, use.Effort, standing, likeliest);
                }
            }
        }

        return best is { } found ? found with { Likeliest = likeliest } : null;
    }
}
