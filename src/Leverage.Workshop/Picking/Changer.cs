using Leverage.Requests;
using Leverage.Assessments;
using Leverage.Holding;
using Leverage.BreakLoose;
using Leverage.Reading;
using Leverage.Workshop.Chest;
using UnitsNet;

namespace Leverage.Workshop.Picking;

/// <summary>Tries what can be changed without other tools: what holds the wheel, soaking, heat.</summary>
internal sealed class Changer
{
    /// <summary>Sets of tools tried with each change, by standing and by chance.</summary>
    private const int Each = 12;

    /// <summary>How much hotter than the rest a stud is made, K (judgement).</summary>
    private const double HeatK = 100;

    private readonly PickRequest _request;
    private readonly List<SetOnNut> _sets;
    private readonly Standing? _now;

    internal Changer(PickRequest request, Contest contest)
    {
        (_request, _sets) = (request, contest.Promising(Each));
        _now = contest.Ranked(1) is [var first] ? first.Standing : null;
    }

    /// <summary>The changes that make a go, else the one that helps most; none where nothing fits or nothing helps.</summary>
    internal List<PickChange> Search()
    {
        if (_now is not { } now)
        {
            return [];
        }

        List<PickChange> helping = [.. Changes()
            .Select(change => Tried(change.Kind, change.Hold, change.Nut))
            .OfType<PickChange>()
            .Where(change => change.Then.Standing.IsWorthMoreThan(now))];
        List<PickChange> going = [.. helping.Where(change => change.Then.Standing.Verdict == Verdict.Go)];
        return going.Count > 0 ? going : [.. helping.OrderBy(change => change.Then.Standing).Take(1)];
    }

    private IEnumerable<(AdviceKind Kind, ChestHold? Hold, LooseningRequest Nut)> Changes()
    {
        LooseningRequest nut = _request.Nut;
        foreach (var change in Holds(nut))
        {
            yield return change;
        }

        if (!nut.Soaked && Condition.Named(nut.Condition ?? "used").LockerNm == 0)
        {
            yield return (AdviceKind.Soak, null, nut with { Soaked = true });
        }

        if (nut is { Heat: null, Thread: not null })
        {
            yield return (AdviceKind.HeatStud, null, nut with { Heat = HeatedPart.Stud, HeatedBy = TemperatureDelta.FromKelvins(HeatK) });
        }
    }

    private IEnumerable<(AdviceKind Kind, ChestHold? Hold, LooseningRequest Nut)> Holds(LooseningRequest nut)
    {
        if (!nut.IsHoldSaid)
        {
            yield break;
        }

        if (nut.OnStands)
        {
            yield return (AdviceKind.OnTheGround, null, nut with { OnStands = false });
            yield break;
        }

        IReadOnlyList<Restraint> by = nut.HeldBy ?? [];
        foreach (ChestHold piece in _request.Chest.Holds.Where(piece => !by.Contains(piece.Kind)))
        {
            LooseningRequest more = nut with { HeldBy = [.. by, piece.Kind] };
            yield return (AdviceKind.Chock, piece, (piece.Kind switch
            {
                Restraint.Chock => more with { ChockHeight = null },
                Restraint.Bar => more with { StudBarDiameter = null },
                _ => more,
            }).With([piece]));
        }

        if (!by.Contains(Restraint.Helper))
        {
            yield return (AdviceKind.Helper, null, nut with { HeldBy = [.. by, Restraint.Helper] });
        }
    }

    private PickChange? Tried(AdviceKind kind, ChestHold? piece, LooseningRequest nut)
    {
        PickRequest request = _request with { Nut = nut };
        if (Completed(request) is not { } bare)
        {
            return null;
        }

        NutFigures figures = NutFigures.Of(bare.Fastener);
        var contest = new Contest(request, figures, StanceHands.Of(request, figures, bare.Hold));
        contest.Judge(_sets.Select(set => set with { Setup = set.Setup with { Fastener = bare.Fastener, Hold = bare.Hold } }));
        return contest.Best is { } best ? new PickChange(kind, piece, best) : null;
    }

    private static LooseningSetup? Completed(PickRequest request)
    {
        try
        {
            return LooseningDefaults.Complete(request.Standing(request.Ways()[0].Key));
        }
        catch (InputException)
        {
            // The change does not go with what was said: a chock higher than the wheel, a brake and no mass.
            return null;
        }
    }
}
