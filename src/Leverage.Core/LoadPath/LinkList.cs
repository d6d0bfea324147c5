using System.Globalization;
using Leverage.Grades;
using Leverage.Levers;
using Leverage.Tubes;
using Leverage.Threads;

namespace Leverage.LoadPath;

/// <summary>The links of a load path with their limits as torques at the nut.</summary>
public static class LinkList
{
    /// <summary>Shear strength over tensile strength of steel, 1/√3 (von Mises).</summary>
    public const double ShearOverTensile = 0.577;

    /// <summary>Socket, spanner or key on its hexagon.</summary>
    /// <param name="tool">Its name in the table <c>tool-torques</c>.</param>
    /// <param name="acrossFlatsMm">Width across flats, mm.</param>
    /// <returns>The link, or null where no test torque is tabled.</returns>
    public static LinkLimit? Hexagon(string tool, double acrossFlatsMm) =>
        ToolStrength.Test(tool, acrossFlatsMm) is { } limit
            ? new LinkLimit(
                LinkKind.Hexagon, $"{Plain(acrossFlatsMm)} mm {Name(tool)}", 1000 * limit.TorqueNm,
                ToolStrength.MedianOverTest, limit.Source, limit.Confirmed)
            : null;

    /// <summary>A drive square, of bar and socket or of an adapter.</summary>
    /// <param name="drive">Its name in inches.</param>
    /// <param name="adapter">Whether it is an adapter's.</param>
    /// <returns>The link.</returns>
    public static LinkLimit Square(string drive, bool adapter)
    {
        ToolLimit limit = ToolStrength.Square(drive);
        return new LinkLimit(
            adapter ? LinkKind.Adapter : LinkKind.Square, adapter ? $"{drive} in adapter" : $"{drive} in square",
            1000 * limit.TorqueNm, ToolStrength.MedianOverTest, limit.Source, limit.Confirmed);
    }

    /// <summary>The bar in bending at the nut, at first yield.</summary>
    /// <param name="bar">The bar.</param>
    /// <param name="assumed">Whether its diameter or yield was assumed.</param>
    /// <returns>The link, or null where the handle is not round or not known.</returns>
    public static LinkLimit? Bending(Bar bar, bool assumed) => bar.Diameter is { } diameter
        ? new LinkLimit(
            LinkKind.Bar, $"{Plain(diameter.Millimeters)} mm bar",
            bar.Yield.Megapascals * RoundBar.ElasticModulus(diameter.Millimeters), 1,
            $"first yield at {Plain(bar.Yield.Megapascals)} MPa", !assumed)
        : null;

    /// <summary>The pin of a flex head.</summary>
    /// <param name="bar">The bar.</param>
    /// <returns>The link, or null for a solid head.</returns>
    public static LinkLimit? Pin(Bar bar) => bar.Pin is { } pin
        ? new LinkLimit(
            LinkKind.FlexPin, $"{Plain(pin.Diameter.Millimeters)} mm flex pin",
            HingePin.Torque(
                pin.Diameter.Millimeters, pin.PlanesApart.Millimeters, ShearOverTensile * bar.Yield.Megapascals),
            1, "double shear at yield", false)
        : null;

    /// <summary>The bolt or stud twisted off at its root.</summary>
    /// <param name="thread">Its thread.</param>
    /// <param name="grade">Its strength.</param>
    /// <returns>The link.</returns>
    public static LinkLimit Stud(ScrewThread thread, Grade grade) => new(
        LinkKind.Stud, $"{thread.Printed} {grade.Name} stud",
        RoundBar.PlasticTorque(thread.RootDiameterMm, ShearOverTensile * grade.TensileMpa), 1,
        $"twists off at 0.577 × {Plain(grade.TensileMpa)} MPa", true);

    /// <summary>The tube's three links.</summary>
    /// <param name="tube">Its limits.</param>
    /// <param name="lever">The lever it is part of.</param>
    /// <param name="links">The list they go on; what cannot give is left out.</param>
    public static void AddTube(TubeLimits tube, LeverGeometry lever, List<LinkLimit> links)
    {
        ArgumentNullException.ThrowIfNull(links);
        if (lever.HandToTipMm > 0)
        {
            string source = double.IsPositiveInfinity(tube.TipN)
                ? "floor: 450 N at a jack handle's end, AS 2615"
                : tube.FullyPlastic ? "fully plastic, EN 1993-1-1 class 1" : "first yield, not class 1";
            links.Add(new LinkLimit(LinkKind.TubeBending, "tube bending", tube.BendingTorque(lever), 1, source, true));
        }

        if (double.IsPositiveInfinity(tube.TipN))
        {
            return;
        }

        links.Add(new LinkLimit(
            LinkKind.TubeDentTip, "tube dent at bar tip", tube.TipTorque(lever), 1, "1 % dent, DNV-RP-C204", true));
        if (lever.HandToTipMm > 0)
        {
            links.Add(new LinkLimit(
                LinkKind.TubeDentMouth, "tube dent at mouth", tube.MouthTorque(lever), 1,
                "0.7 of the tip's, finite elements", true));
        }
    }

    private static string Name(string tool) => tool switch
    {
        "ring" => "ring spanner",
        "open" => "open spanner",
        "key" => "hexagon key",
        _ => tool,
    };

    private static string Plain(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
