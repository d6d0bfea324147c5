using System.Globalization;
using Leverage.LoadPath;
using UnitsNet;

namespace Leverage.Wording;

/// <summary>Names of the parts of a load path, how each breaks, and where its limit comes from.</summary>
internal static class PartWords
{
    /// <summary>How far an inch size may be from a thirty-second of an inch, mm.</summary>
    private const double SameMm = 0.02;

    private const int Parts = 32;

    /// <summary>A part by its name.</summary>
    internal static string Name(LinkLimit link, UnitStyle style) =>
        link.Kind switch
        {
            LinkKind.Socket => $"{Hexagon(link.SizeMm, style)} socket",
            LinkKind.Ring => $"{Hexagon(link.SizeMm, style)} ring spanner",
            LinkKind.Open => $"{Hexagon(link.SizeMm, style)} open spanner",
            LinkKind.Key => $"{Hexagon(link.SizeMm, style)} hexagon key",
            LinkKind.Corners => $"{Hexagon(link.SizeMm, style)} hexagon",
            LinkKind.Adapter => $"{link.Name} in adapter",
            LinkKind.Extension => $"{link.Name} in extension",
            LinkKind.Square => $"{link.Name} in square",
            LinkKind.FlexPin => $"{Diameter(link, style)} flex pin",
            LinkKind.Bar => $"{Diameter(link, style)} bar",
            LinkKind.Stud => $"{link.Name} bolt or stud",
            _ => Name(link.Kind),
        };

    /// <summary>A kind of part, its size not known.</summary>
    internal static string Name(LinkKind kind) => kind switch
    {
        LinkKind.Socket => "socket",
        LinkKind.Ring => "ring spanner",
        LinkKind.Open => "open spanner",
        LinkKind.Key => "hexagon key",
        LinkKind.Corners => "corners of the hexagon",
        LinkKind.Adapter => "adapter",
        LinkKind.Extension => "extension",
        LinkKind.Square => "drive square",
        LinkKind.FlexPin => "flex pin",
        LinkKind.Bar => "bar",
        LinkKind.TubeBending => "tube",
        LinkKind.TubeDentTip => "tube at the bar's tip",
        LinkKind.TubeDentMouth => "tube at its mouth",
        _ => "bolt or stud",
    };

    /// <summary>How a part breaks.</summary>
    internal static string Breaks(LinkKind kind) => kind switch
    {
        LinkKind.Socket or LinkKind.Ring or LinkKind.Open => "cracks",
        LinkKind.Bar or LinkKind.TubeBending => "folds",
        LinkKind.TubeDentTip or LinkKind.TubeDentMouth => "dents",
        LinkKind.FlexPin => "breaks",
        LinkKind.Corners => "rounds off",
        _ => "twists off",
    };

    /// <summary>A part and how it breaks, with where on a tube: the front of a sentence.</summary>
    internal static string Fails(LinkLimit link, UnitStyle style) => link.Kind switch
    {
        LinkKind.TubeDentTip => "tube dents at the bar's tip",
        LinkKind.TubeDentMouth => "tube dents at its mouth",
        _ => $"{Name(link, style)} {Breaks(link.Kind)}",
    };

    /// <summary>Where a limit comes from.</summary>
    internal static string Source(LinkLimit link) => link.Source switch
    {
        LimitSource.CornerSolids => "our own finite elements",
        LimitSource.TestTorque => $"{Standard(link.Kind)} test torque",
        LimitSource.BetweenSizes => $"between two sizes of {Standard(link.Kind)}",
        LimitSource.SeriesLaw => "ISO 1711-1 series A, by its formula",
        LimitSource.RecalledTest => "recalled test torque, unconfirmed",
        LimitSource.LeastSquare => "smallest legal square, 39 HRC, unconfirmed",
        LimitSource.BarOfSquare => "as strong as its square; measure the bar",
        LimitSource.Folds => "folds",
        LimitSource.DoubleShear => "double shear at yield",
        LimitSource.PlasticTube => "fully plastic, EN 1993-1-1 class 1",
        LimitSource.ElasticTube => "first yield, not class 1",
        LimitSource.JackHandle => "least: 450 N at a jack handle's end, AS 2615",
        LimitSource.Dent => "1 % dent, DNV-RP-C204",
        LimitSource.DentAtMouth => "0.7 of the tip, by finite elements",
        _ => "twists off at its root",
    };

    private static string Standard(LinkKind kind) => kind == LinkKind.Key ? "ISO 2936" : "ISO 1711-1";

    /// <summary>A width across flats.</summary>
    internal static string Flats(Length flats, UnitStyle style) =>
        Hexagon(flats.Millimeters, style);

    /// <summary>The size of the other measure that goes on: in metric units a whole millimetre on an inch hexagon, in US units a sixteenth on a metric one.</summary>
    internal static string? OtherMeasure(Length flats, UnitStyle style)
    {
        double mm = flats.Millimeters;
        double step = style.IsUs ? 25.4 / 16 : 1;
        if (Flats(flats, style).EndsWith(style.IsUs ? " in" : " mm", StringComparison.Ordinal))
        {
            return null;
        }

        double other = Math.Ceiling((mm - Corners.ToolFit.SameMm) / step) * step;
        return Corners.ToolFit.IsNear(mm, other) ? Hexagon(other, style) : null;
    }

    private static string Diameter(LinkLimit link, UnitStyle style) => style.Length(Length.FromMillimeters(link.SizeMm));

    /// <summary>A width across flats as sockets are marked: the inch fraction it is, else in millimetres; where it is both, by the units.</summary>
    internal static string Hexagon(double acrossFlatsMm, UnitStyle style)
    {
        int parts = (int)Math.Round(acrossFlatsMm * Parts / 25.4);
        bool isMetric = Math.Abs(2 * acrossFlatsMm - Math.Round(2 * acrossFlatsMm)) < 1e-6;
        if (!style.IsUs && isMetric || Math.Abs(parts * 25.4 / Parts - acrossFlatsMm) > SameMm)
        {
            return $"{UnitStyle.Trim(acrossFlatsMm, 2)} mm";
        }

        int under = Parts;
        int over = parts % Parts;
        while (over > 0 && over % 2 == 0)
        {
            (over, under) = (over / 2, under / 2);
        }

        int whole = parts / Parts;
        string fraction = over == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{over}/{under}");
        string number = whole.ToString(CultureInfo.InvariantCulture);
        return whole == 0 ? $"{fraction} in" : over == 0 ? $"{number} in" : $"{number}-{fraction} in";
    }
}
