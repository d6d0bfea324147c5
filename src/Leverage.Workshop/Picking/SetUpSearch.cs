using Leverage.Assessments;
using Leverage.Levers;
using Leverage.Requests;
using UnitsNet;

namespace Leverage.Workshop.Picking;

/// <summary>A set of tools in its best use.</summary>
/// <param name="Tools">The set.</param>
/// <param name="Stance">The stance.</param>
/// <param name="OverlapMm">How far its tube is on, mm.</param>
/// <param name="Judgement">What that is judged to be.</param>
/// <param name="Effort">Likely force needed, as a share of the likely force there is.</param>
internal sealed record SetUpUse(SetOnNut Tools, Stance Stance, double OverlapMm, Judgement Judgement, double Effort)
{
    /// <summary>A pull under this share of the likely force is easy, and less is no better (judgement).</summary>
    private const double Easy = 0.5;

    /// <summary>How it ranks among other uses of the same set: safe and likely, not unsafe, chance by five points, verdict, ease, a short overlap.</summary>
    internal (Verdict, int, Verdict, double, double) Rank => (
        Class,
        -(int)Math.Round(Judgement.ComesLoose / LadderRank.LeastGain),
        Judgement.Verdict,
        Math.Round(Math.Max(Easy, Effort), 1),
        OverlapMm);

    /// <summary>What no chance outranks: safe and likely before care, care before unsafe. A pull that leaves it tight can be followed by another; what broke stays broken.</summary>
    internal Verdict Class => Judgement.Verdict is Verdict.Short or Verdict.NotJudged ? Verdict.Care : Judgement.Verdict;
}

/// <summary>Judges sets of tools at every overlap in every stance on one nut and keeps each set's best use.</summary>
internal sealed class SetUpSearch(PickRequest request, NutFigures nut)
{
    private readonly StanceHands[] _stances = StanceHands.Of(request, nut);
    private readonly int[] _verdicts = new int[(int)Verdict.Stop + 1];
    private readonly List<SetUpUse> _uses = [];
    private int _sets;

    /// <summary>What was tried.</summary>
    internal PickTally Tally => new(
        _sets, _verdicts[(int)Verdict.Go], _verdicts[(int)Verdict.Care], _verdicts[(int)Verdict.Short],
        _verdicts[(int)Verdict.NotJudged], _verdicts[(int)Verdict.Stop]);

    /// <summary>Judges all sets.</summary>
    internal SetUpSearch Judge(IEnumerable<SetOnNut> sets)
    {
        foreach (SetOnNut set in sets)
        {
            _sets++;
            if (BestUse(set) is { } use)
            {
                _uses.Add(use);
            }
        }

        return this;
    }

    /// <summary>The first of the sets: by what no chance outranks, then by chance, then the fewer pieces.</summary>
    internal List<SetUpUse> Ranked(int most)
    {
        var ranked = new List<SetUpUse>();
        List<SetUpUse> left = [.. _uses];
        while (ranked.Count < most && left.Count > 0)
        {
            Verdict best = left.Min(use => use.Class);
            SetUpUse first = LadderRank.First([.. left.Where(use => use.Class == best)], use => use.Judgement.ComesLoose, use => Option(use).Size);
            ranked.Add(first);
            left.Remove(first);
        }

        return ranked;
    }

    /// <summary>Every set in its best use, as tools of a ladder.</summary>
    internal IEnumerable<ToolOption> Options() => _uses.Select(Option);

    /// <summary>Whether something safe likely comes, or it is neither a free wheel nor stands that forbid it.</summary>
    internal bool IsHeld => _uses.Exists(use => use.Judgement.Verdict != Verdict.Stop && use.Judgement.ComesLoose >= VerdictOf.LikelyShare)
        || !_uses.Exists(Turns);

    /// <summary>The first that a free wheel or stands forbid; there must be one.</summary>
    internal SetUpUse Turning => _uses.Find(Turns)!;

    /// <summary>A use with its full assessment.</summary>
    internal PickedSetUp Describe(SetUpUse use) => Describe(use, request.Nut);

    /// <summary>A use with its full assessment, held as another request says.</summary>
    internal PickedSetUp Describe(SetUpUse use, LooseningRequest held)
    {
        LooseningRequest chosen = LadderCures.Carried(held, Option(use).Request);
        return new PickedSetUp(use.Tools.Set, use.Stance, chosen, use.Effort, LooseningAssessor.WithoutAdvice(LooseningDefaults.Complete(chosen)));
    }

    private static bool Turns(SetUpUse use) =>
        (use.Judgement.Ruling.Stops & (VerdictRules.WheelTurns | VerdictRules.OnStands)) != VerdictRules.None;

    private ToolOption Option(SetUpUse use)
    {
        Length? overlap = use.Tools.Set.Tube is null ? null : Length.FromMillimeters(use.OverlapMm);
        LooseningRequest chosen = use.Tools.Set.Into(request.InStance(use.Stance.Key) with { Overlap = overlap });
        return new ToolOption(chosen, use.Tools.Set.Pieces, use.Tools.Set.Name);
    }

    private SetUpUse? BestUse(SetOnNut set)
    {
        var judge = new SetJudge(set.Setup, nut);
        SetUpUse? best = null;
        foreach (StanceHands hands in _stances)
        {
            foreach (double overlap in judge.OverlapsMm(hands.Stance, asked: request.Stances.Count > 0))
            {
                JudgedUse judged = judge.Judge(hands, overlap);
                _verdicts[(int)judged.Judgement.Verdict]++;
                var use = new SetUpUse(set, hands.Stance, overlap, judged.Judgement, judged.Effort);
                best = best is null || use.Rank.CompareTo(best.Rank) < 0 ? use : best;
            }
        }

        return best;
    }
}
