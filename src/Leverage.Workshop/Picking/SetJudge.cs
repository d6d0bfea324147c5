using System.Runtime.InteropServices;
using Leverage.Assessments;
using Leverage.Holding;
using Leverage.Levers;
using Leverage.LoadPath;

namespace Leverage.Workshop.Picking;

/// <summary>One way to use a set of tools, judged.</summary>
/// <param name="OverlapMm">How far the tube is on, mm; 0 with none.</param>
/// <param name="Effort">Likely force needed, as a share of the likely force there is.</param>
/// <param name="Judgement">What it means.</param>
internal readonly record struct JudgedUse(double OverlapMm, double Effort, Judgement Judgement);

/// <summary>
/// Judges one set of tools at any overlap in any stance. What does not change with those is worked out once; the judging
/// itself is the core's, and allocates nothing.
/// </summary>
internal sealed class SetJudge
{
    private readonly LooseningSetup _setup;
    private readonly NutFigures _nut;
    private readonly List<LinkLimit> _links;
    private readonly int _fixed;
    private readonly TubeLimits _limits;
    private readonly double _barMm;
    private readonly double _tubeMm;
    private readonly double[] _gives;

    internal SetJudge(LooseningSetup setup, NutFigures nut)
    {
        (_setup, _nut) = (setup, nut);
        _links = SetupLinks.Of(setup with { Tube = null }, null);
        _fixed = _links.Count;
        _barMm = setup.Bar!.Length.Millimeters;
        _tubeMm = setup.Tube?.Length.Millimeters ?? 0;
        _limits = setup.Tube is { } tube ? TubeLimits.Of(tube) : default;
        _gives = new double[_fixed + 3];
    }

    /// <summary>Overlaps to try in a stance; one of 0 for a bare bar, none where hands or tube have no room.</summary>
    internal double[] OverlapsMm(Stance stance, bool asked)
    {
        double room = LeverDefaults.RoomMm(_setup.Room, stance);
        return _setup.Tube is not null ? stance.IsCramped ? [] : [.. Fit.OverlapsMm(_setup, stance).Where(overlap => _barMm + _tubeMm - overlap <= room)]
            : (asked || Fit.HasRoom(_barMm, stance)) && _barMm <= room ? [0] : [];
    }

    /// <summary>What an overlap in a stance is judged to be.</summary>
    internal JudgedUse Judge(StanceHands hands, double overlapMm)
    {
        LeverGeometry lever = Lever(hands.Stance, overlapMm);
        HoldCapacity? hold = hands.Hold ?? Circumstances.HoldOf(_setup, hands.Stance.Push, _nut, hands.Figures, lever);
        var around = Circumstances.Of(_setup, _nut, hands.Figures, lever, hold);
        var judgement = Judgement.Of(
            _nut, hands.Figures, lever.ReachMm, CollectionsMarshal.AsSpan(_links), around, _gives.AsSpan(0, _links.Count));
        return new JudgedUse(overlapMm, hands.Figures.Effort(_nut.LikelyNmm, lever.ReachMm), judgement);
    }

    private LeverGeometry Lever(Stance stance, double overlapMm)
    {
        if (_setup.Tube is null)
        {
            return LeverGeometry.Bare(_barMm, stance.GripOffsetMm);
        }

        var lever = LeverGeometry.WithTube(_barMm, _tubeMm, overlapMm, stance.GripOffsetMm);
        _links.RemoveRange(_fixed, _links.Count - _fixed);
        LinkList.AddTube(_limits, lever, _links);
        return lever;
    }
}
