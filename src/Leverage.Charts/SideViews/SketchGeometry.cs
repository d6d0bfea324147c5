using Leverage.Assessments;
using Leverage.LoadPath;
using SkiaSharp;

namespace Leverage.Charts.SideViews;

/// <summary>Where everything of a side view lies, in pixels, at one scale.</summary>
internal sealed class SketchGeometry
{
    private const double UsualBarMm = 16;
    private const double UsualWallMm = 2.5;
    private const double OneHandMm = 70;
    private const double SeenTiltRad = 0.09;
    private static readonly double[] Factors = [20, 10, 5, 3, 2];

    private readonly float _scale;
    private readonly SKPoint _nut;
    private readonly SKPoint _mouth;

    /// <summary>The geometry of a sketch.</summary>
    /// <param name="sketch">The lever.</param>
    /// <param name="scale">Pixels a millimetre.</param>
    /// <param name="nut">The nut's axis, pixels.</param>
    internal SketchGeometry(LeverSketch sketch, float scale, SKPoint nut)
    {
        (Sketch, _scale, _nut) = (sketch, scale, nut);
        BarHalf = (float)(sketch.BarDiameterMm ?? UsualBarMm) / 2;
        Along = Direction(sketch.PastSquareRad);
        if (sketch.Tube is not { } tube)
        {
            TubeAlong = Along;
            return;
        }

        double play = tube.BoreMm - 2 * BarHalf;
        PlayFactor = Factors.FirstOrDefault(factor => factor * play <= SeenTiltRad * tube.OverlapMm, 1);
        BoreHalf = BarHalf + (float)(PlayFactor * play) / 2;
        TubeHalf = BoreHalf + (float)(tube.WallMm ?? UsualWallMm);
        TubeAlong = Direction(sketch.PastSquareRad + Math.Atan(PlayFactor * play / tube.OverlapMm));
        _mouth = OnBar(sketch.BarMm - tube.OverlapMm, PlayFactor * play / 2);
    }

    /// <summary>The lever.</summary>
    internal LeverSketch Sketch { get; }

    /// <summary>Sense of the turn as seen, facing the nut: −1 anticlockwise, which loosens a right-hand thread; 1 for a left-hand one.</summary>
    internal int Turn => Sketch.LeftHand ? 1 : -1;

    /// <summary>Way the hands push: down, up, or across on an upright lever; length 1.</summary>
    internal SKPoint Push => Sketch.Push switch
    {
        Levers.Push.Down => new SKPoint(0, 1),
        Levers.Push.Up => new SKPoint(0, -1),
        _ => new SKPoint(Turn, 0),
    };

    /// <summary>Direction of the lever square to the push: a quarter turn before it in the sense of the turn.</summary>
    internal SKPoint Square => new(Turn * Push.Y, -Turn * Push.X);

    /// <summary>Direction of a lever so far past square; length 1.</summary>
    internal SKPoint Direction(double pastRad)
    {
        var (along, push) = ((float)Math.Cos(pastRad), (float)Math.Sin(pastRad));
        return new SKPoint(along * Square.X + push * Push.X, along * Square.Y + push * Push.Y);
    }

    /// <summary>How many times too large the tube's play is drawn.</summary>
    internal double PlayFactor { get; } = 1;

    /// <summary>Direction of the bar from the nut, pixels, length 1.</summary>
    internal SKPoint Along { get; }

    /// <summary>Direction of the tube outward, length 1.</summary>
    internal SKPoint TubeAlong { get; }

    /// <summary>Half the bar's diameter, mm.</summary>
    internal float BarHalf { get; }

    /// <summary>Half the tube's bore as drawn, mm.</summary>
    internal float BoreHalf { get; }

    /// <summary>Half the tube's outside as drawn, mm.</summary>
    internal float TubeHalf { get; }

    /// <summary>The nut's axis.</summary>
    internal SKPoint Nut => _nut;

    /// <summary>Half the nut's width across flats, pixels.</summary>
    internal float NutHalf => Math.Max(9, (float)(Sketch.AcrossFlatsMm ?? 30) / 2 * _scale);

    /// <summary>Middle of the hands.</summary>
    internal SKPoint Hands => Sketch.Tube is { } tube
        ? OnTube(tube.OverlapMm + tube.HandToTipMm, 0)
        : OnBar(Sketch.ReachMm, 0);

    /// <summary>Half the thickness at the hands, pixels.</summary>
    internal float HandsHalf => _scale * (Sketch.Tube is null ? BarHalf : TubeHalf);

    /// <summary>From the middle of the hands to the end they hold, pixels: the hands reach as far the other way.</summary>
    internal float Grip => Math.Max(8, SKPoint.Distance(Hands, End));

    /// <summary>From the middle of the hands towards the nut as far as they reach, pixels.</summary>
    internal float InnerGrip => Math.Min(Grip, Math.Max(0, SKPoint.Distance(Nut, Hands) - 1.6f * NutHalf));

    /// <summary>Whether both hands find room between nut and end.</summary>
    internal bool HandsFit => InnerGrip > 0.95f * Grip;

    /// <summary>Whether two hands are on it: more than a hand's breadth from their middle to the end.</summary>
    internal bool TwoHands => Grip > Pixels(OneHandMm);

    /// <summary>Where the bar's tip bears: on the side the hands push from.</summary>
    internal SKPoint Tip => OnBar(Sketch.BarMm, BarHalf);

    /// <summary>Where the bar bears at the mouth: on the other side.</summary>
    internal SKPoint Mouth => OnBar(Sketch.BarMm - (Sketch.Tube?.OverlapMm ?? 0), -BarHalf);

    /// <summary>Outer end of bar or tube.</summary>
    internal SKPoint End => Sketch.Tube is { } tube ? OnTube(tube.LengthMm, 0) : OnBar(Sketch.BarMm, 0);

    /// <summary>Where a part gives: a tube at the bar's tip or its own mouth, everything else at the nut, where the torque is largest.</summary>
    internal SKPoint GivesAt(LinkKind part) => part switch
    {
        LinkKind.TubeBending or LinkKind.TubeDentTip => Tip,
        LinkKind.TubeDentMouth => Mouth,
        _ => Nut,
    };

    /// <summary>A length in pixels.</summary>
    internal float Pixels(double mm) => (float)mm * _scale;

    /// <summary>A point by its distance from the nut along the bar, and from its axis to the side the hands push from, mm.</summary>
    internal SKPoint OnBar(double alongMm, double aboveMm) => From(_nut, Along, alongMm, aboveMm);

    /// <summary>A point by its distance from the tube's mouth along the tube, and from its axis to that side, mm.</summary>
    internal SKPoint OnTube(double alongMm, double aboveMm) => From(_mouth, TubeAlong, alongMm, aboveMm);

    /// <summary>Square to the lever, towards the side the hands push from.</summary>
    internal SKPoint Above(SKPoint along) => new(Turn * along.Y, -Turn * along.X);

    /// <summary>A point moved along a direction by pixels.</summary>
    internal static SKPoint Moved(SKPoint from, SKPoint direction, float pixels) =>
        new(from.X + direction.X * pixels, from.Y + direction.Y * pixels);

    private SKPoint From(SKPoint origin, SKPoint along, double alongMm, double aboveMm) =>
        Moved(Moved(origin, along, (float)alongMm * _scale), Above(along), (float)aboveMm * _scale);
}
