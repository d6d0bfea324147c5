using Leverage.LoadPath;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Tables;
using Leverage.Tubes;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>Bars, tubes and spanners of sizes a shop sells, from the table <c>shop-tools</c>.</summary>
internal static class ShopTools
{
    /// <summary>Least play that lets a tube go over a bar as it comes, mm (judgement).</summary>
    private const double LeastPlayMm = 0.3;

    /// <summary>What a shop has for a request: longer bars and tubes of its own drive, then bigger drives.</summary>
    /// <param name="request">What was said.</param>
    /// <returns>The options, each a request.</returns>
    internal static IEnumerable<ToolOption> For(LooseningRequest request)
    {
        string[] drives = [.. ToolStrength.Drives()];
        bool tubes = !LeverDefaults.IsCramped(request.Stance);
        bool square = request.Drive is not null && request.Tool is null or ToolKind.Socket or ToolKind.Key;
        if (square && tubes && request is { Bar: not null, Tube: null })
        {
            foreach (ToolOption tubed in Tubed(new ToolOption(request with { HandsIn = null }, 1)))
            {
                yield return tubed;
            }
        }

        int first = square ? Math.Max(0, Array.IndexOf(drives, RowLookup.Named("drive-squares", request.Drive!, "a drive square").Key)) : 1;
        foreach (string drive in drives.Skip(first))
        {
            foreach (Length length in LengthsOf("bar", drive).Where(length => drive != request.Drive || !(length <= request.Bar)))
            {
                var bare = new ToolOption(WithBar(request, drive, length), 2);
                yield return bare;
                if (tubes)
                {
                    foreach (ToolOption tubed in Tubed(bare))
                    {
                        yield return tubed;
                    }
                }
            }
        }
    }

    /// <summary>A ring spanner of the standard length in place of an open jaw; null where none is made.</summary>
    internal static LooseningRequest? Ring(LooseningRequest request, Length acrossFlats)
    {
        double[] lengths =
        [
            .. TableCatalog.Tables["spanner-lengths"].Rows
                .Where(row => Math.Abs(row.Number("large_mm") - acrossFlats.Millimeters) < 0.1 || Math.Abs(row.Number("small_mm") - acrossFlats.Millimeters) < 0.1)
                .Select(row => row.Number("length_mm")),
        ];
        return lengths.Length == 0 ? null : WithBar(request, null, Mm(lengths.Max())) with { Tool = ToolKind.Ring };
    }

    private static IEnumerable<ToolOption> Tubed(ToolOption bare)
    {
        if (Diameter(bare.Request) is not { } diameter || Stoutest(diameter) is not var (outside, wall))
        {
            yield break;
        }

        foreach (Length length in LengthsOf("tube", null))
        {
            yield return new ToolOption(bare.Request with { Tube = new TubeText(length, outside, wall), TubeYield = null, Overlap = null }, bare.Pieces + 1);
        }
    }

    private static LooseningRequest WithBar(LooseningRequest request, string? drive, Length length) => request with
    {
        Tool = request.Tool is ToolKind.Key ? ToolKind.Key : ToolKind.Socket,
        Drive = drive,
        Adapters = [],
        Bar = length,
        BarDiameter = null,
        BarYield = null,
        StraightHandle = null,
        Taper = null,
        BarPin = null,
        BarPinPlanes = null,
        Tube = null,
        TubeYield = null,
        Overlap = null,
        HandsIn = null,
    };

    private static double? Diameter(LooseningRequest request) => request.BarDiameter?.Millimeters
        ?? (request.Drive is { } drive ? RowLookup.Named("handles", drive, "a drive").Number("diameter_mm") : null);

    /// <summary>The heaviest tube that goes snugly over a bar.</summary>
    private static (Length Outside, Length Wall)? Stoutest(double barMm)
    {
        TableRow? best = null;
        foreach (TableRow row in TableCatalog.Tables["tubes"].Rows)
        {
            double play = row.Number("outside_mm") - 2 * row.Number("wall_mm") - barMm;
            if (play >= LeastPlayMm && play <= Tube.LoosePlayShare * barMm && !(Modulus(row) <= (best is null ? 0 : Modulus(best))))
            {
                best = row;
            }
        }

        return best is null ? null : (Mm(best.Number("outside_mm")), Mm(best.Number("wall_mm")));
    }

    private static double Modulus(TableRow row) => TubeSection.PlasticModulus(row.Number("outside_mm"), row.Number("wall_mm"));

    private static IEnumerable<Length> LengthsOf(string kind, string? drive) => TableCatalog.Tables["shop-tools"].Rows
        .Where(row => row.Text("kind") == kind && row.OptionalText("drive") == drive)
        .Select(row => Mm(row.Number("length_mm")));

    private static Length Mm(double lengthMm) => Length.FromMillimeters(lengthMm);
}
