using Leverage.Grades;
using Leverage.Levers;
using Leverage.Threads;

namespace Leverage.LoadPath;

/// <summary>The links of a load path with their limits as torques at the nut.</summary>
public static class LinkList
{
    /// <summary>Shear strength over tensile strength of steel, 1/√3 (von Mises).</summary>
    public const double ShearOverTensile = 0.577;

    /// <summary>Least torque of a hold that spins, N·mm: a lognormal has no 0.</summary>
    private const double LeastNmm = 1;

    /// <summary>Scatter of the torque that twists off a bolt of known size and grade, σ of the logarithm (judgement).</summary>
    public const double StudScatter = 0.08;

    /// <summary>Socket, spanner or key on its hexagon.</summary>
    /// <param name="tool">Socket, ring, open or key.</param>
    /// <param name="acrossFlatsMm">Width across flats, mm.</param>
    /// <returns>The link, or null where no test torque reaches this size.</returns>
    public static LinkLimit? Hexagon(LinkKind tool, double acrossFlatsMm) =>
        ToolStrength.Test(InTable(tool), acrossFlatsMm) is { } limit
            ? LinkLimit.Least(tool, 1000 * limit.TorqueNm, limit.Source, limit.Confirmed) with { SizeMm = acrossFlatsMm }
            : null;

    /// <summary>A drive square: of the bar, of an adapter or of an extension.</summary>
    /// <param name="drive">Its name in inches.</param>
    /// <param name="kind">Square, adapter or extension.</param>
    /// <returns>The link.</returns>
    public static LinkLimit Square(string drive, LinkKind kind)
    {
        ToolLimit limit = ToolStrength.Square(drive);
        return LinkLimit.Least(kind, 1000 * limit.TorqueNm, limit.Source, limit.Confirmed) with { Name = drive };
    }

    /// <summary>The bar in bending at the nut: where it folds, and where it takes a set.</summary>
    /// <param name="bar">The bar.</param>
    /// <param name="assumed">Whether its diameter or yield was assumed.</param>
    /// <param name="usualOf">Drive square whose usual bar this is, where its size is not known; else null.</param>
    /// <returns>The link, or null where the handle is not round or not known.</returns>
    public static LinkLimit? Bending(Bar bar, bool assumed, string? usualOf)
    {
        if (bar.Diameter is not { } diameter)
        {
            return null;
        }

        double yield = bar.Yield.Megapascals;
        double folds = yield * RoundBar.PlasticModulus(diameter.Millimeters);
        double square = usualOf is null ? 0 : 1000 * ToolStrength.Square(usualOf).TorqueNm;
        LinkLimit link = square > folds
            ? LinkLimit.Least(LinkKind.Bar, square, LimitSource.BarOfSquare, false)
            : LinkLimit.Likely(LinkKind.Bar, folds, LimitSource.Folds, !assumed);
        return link with
        {
            SizeMm = diameter.Millimeters,
            SetsNmm = link.LimitNmm / folds * yield * RoundBar.ElasticModulus(diameter.Millimeters),
        };
    }

    /// <summary>The pin of a flex head.</summary>
    /// <param name="bar">The bar.</param>
    /// <returns>The link, or null for a solid head.</returns>
    public static LinkLimit? Pin(Bar bar) => bar.Pin is { } pin
        ? LinkLimit.Likely(
            LinkKind.FlexPin,
            HingePin.Torque(
                pin.Diameter.Millimeters, pin.PlanesApart.Millimeters, ShearOverTensile * bar.Yield.Megapascals),
            LimitSource.DoubleShear, false) with
        { SizeMm = pin.Diameter.Millimeters }
        : null;

    /// <summary>The bolt or stud twisted off at its thread, as if nothing stretched it: the torque in the shank.</summary>
    /// <param name="thread">Its thread.</param>
    /// <param name="grade">Its strength.</param>
    /// <returns>The link.</returns>
    public static LinkLimit Stud(ScrewThread thread, Grade grade) => new(
        LinkKind.Stud, RoundBar.PlasticTorque(thread.StressDiameterMm, ShearOverTensile * grade.TensileMpa), 1, StudScatter,
        LimitSource.TwistsOff, true)
    { Name = $"{thread.Printed} {grade.Name}" };

    /// <summary>The corners of the hexagon.</summary>
    /// <param name="acrossFlatsMm">Width across flats, mm.</param>
    /// <param name="likelyNmm">Torque at which they round off at the likely play, N·mm.</param>
    /// <param name="scatter">σ of the logarithm about that.</param>
    /// <param name="byPlay">The same by a share of the way from the least to the most play.</param>
    /// <returns>The link.</returns>
    public static LinkLimit Corners(double acrossFlatsMm, double likelyNmm, double scatter, Func<double, double> byPlay) =>
        new(LinkKind.Corners, Math.Max(LeastNmm, likelyNmm), 1, scatter, LimitSource.CornerSolids, false)
        {
            SizeMm = acrossFlatsMm,
            MedianAt = share => Math.Max(LeastNmm, byPlay(share)),
        };

    /// <summary>The tube's three links.</summary>
    /// <param name="tube">Its limits.</param>
    /// <param name="lever">The lever it is part of.</param>
    /// <param name="links">The list they go on; what cannot break is left out.</param>
    public static void AddTube(TubeLimits tube, LeverGeometry lever, List<LinkLimit> links)
    {
        ArgumentNullException.ThrowIfNull(links);
        if (lever.HandToTipMm > 0)
        {
            links.Add(Of(tube, LinkKind.TubeBending, tube.BendingTorque(lever), tube.Source));
        }

        if (double.IsPositiveInfinity(tube.TipN))
        {
            return;
        }

        links.Add(Of(tube, LinkKind.TubeDentTip, tube.TipTorque(lever), LimitSource.Dent));
        if (lever.HandToTipMm > 0)
        {
            links.Add(Of(tube, LinkKind.TubeDentMouth, tube.MouthTorque(lever), LimitSource.DentAtMouth));
        }
    }

    private static LinkLimit Of(TubeLimits tube, LinkKind kind, double limitNmm, LimitSource source) =>
        tube.Least ? LinkLimit.Least(kind, limitNmm, source, true) : LinkLimit.Likely(kind, limitNmm, source, true);

    private static string InTable(LinkKind tool) => tool switch
    {
        LinkKind.Ring => "ring",
        LinkKind.Open => "open",
        LinkKind.Key => "key",
        _ => "socket",
    };
}
