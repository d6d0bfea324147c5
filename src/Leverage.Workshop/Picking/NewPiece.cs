using Leverage.Reading;
using Leverage.Requests;
using Leverage.Levers;
using Leverage.Tubes;
using Leverage.Tables;
using Leverage.Workshop.Chest;
using UnitsNet;

namespace Leverage.Workshop.Picking;

/// <summary>A piece that is not in the chest, as the tables have it. Exactly one of the three is there.</summary>
/// <param name="Socket">A socket.</param>
/// <param name="Bar">A bar.</param>
/// <param name="Tube">A tube.</param>
public sealed record NewPiece(NutTool? Socket = null, ChestBar? Bar = null, ChestTube? Tube = null)
{
    /// <summary>The piece in words.</summary>
    public string Name => Socket?.Name ?? Bar?.Name ?? Tube!.Name;

    /// <summary>What it weighs, kg; sockets are not weighed.</summary>
    internal double MassKg => Bar is { Diameter: { } diameter } bar
        ? RoundBar.Mass(diameter.Millimeters, bar.Length.Millimeters)
        : Tube?.Tube is { Outside: { } outside, Wall: { } wall } tube
            ? TubeSection.MassPerMetre(outside.Millimeters, wall.Millimeters) * tube.Length.Meters
            : 0;
}

/// <summary>Pieces of usual sizes, out of the tables.</summary>
internal static class StandardPieces
{
    /// <summary>Lengths tubes are cut to, mm (judgement).</summary>
    private static readonly double[] TubeLengthsMm = [600, 1000, 1500];

    /// <summary>A socket for a nut, in every drive.</summary>
    internal static IEnumerable<NewPiece> Sockets(ToolKind kind, Length acrossFlats) =>
        TableCatalog.Tables["drive-squares"].Rows.Select(row => new NewPiece(Socket: new NutTool(
            $"{row.Key} in {(kind == ToolKind.Key ? "hexagon key" : "socket")}", kind, [acrossFlats], row.Key, null)));

    /// <summary>Bars of every drive, short and long, of usual diameter and yield.</summary>
    internal static IEnumerable<NewPiece> Bars()
    {
        foreach (TableRow row in TableCatalog.Tables["handles"].Rows)
        {
            foreach (string column in (string[])["length_min_mm", "length_max_mm"])
            {
                var length = Length.FromMillimeters(row.Number(column));
                yield return new NewPiece(Bar: new ChestBar(
                    $"{row.Key} in bar", row.Key, length, Length.FromMillimeters(row.Number("diameter_mm")),
                    length * row.Number("straight_share"), null, null, null));
            }
        }
    }

    /// <summary>Tubes that go snugly over a bar, cut to a few lengths, lightest first; steel as by default.</summary>
    internal static IEnumerable<NewPiece> Tubes(Length barDiameter) => TableCatalog.Tables["tubes"].Rows
        .Select(row => (Name: row.Key, Outside: row.Number("outside_mm"), Wall: row.Number("wall_mm")))
        .DistinctBy(tube => (tube.Outside, tube.Wall))
        .Where(tube => IsSnug(tube.Outside - 2 * tube.Wall, barDiameter.Millimeters))
        .SelectMany(tube => TubeLengthsMm.Select(length => new NewPiece(Tube: new ChestTube(
            tube.Name, new TubeText(Mm(length), Mm(tube.Outside), Mm(tube.Wall)), null))))
        .OrderBy(piece => piece.MassKg);

    /// <summary>Diameter of the handle usual for a drive.</summary>
    internal static Length UsualDiameter(string drive) => Mm(RowLookup.Named("handles", drive, "a drive").Number("diameter_mm"));

    private static bool IsSnug(double boreMm, double barMm) => boreMm >= barMm && boreMm - barMm <= Tube.LoosePlayShare * barMm;

    private static Length Mm(double lengthMm) => Length.FromMillimeters(lengthMm);
}
