using System.Globalization;
using Leverage.BreakLoose;
using Leverage.Corners;
using Leverage.LoadPath;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Tables;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>Fills the blanks of how a tool holds the corners of a hexagon.</summary>
internal static class CornerDefaults
{
    /// <summary>The tool's own size; null where it is the nut's.</summary>
    /// <exception cref="InputException">It does not go on.</exception>
    internal static Length? Size(LooseningRequest request)
    {
        if (request is not { ToolSize: { } size, AcrossFlats: { } nut } || Math.Abs((size - nut).Millimeters) < 1e-6)
        {
            return null;
        }

        string? refused = size.Millimeters >= ToolFit.CornersOverFlats * nut.Millimeters ? "turns round" : ToolFit.Of(nut.Millimeters, size.Millimeters) is null ? "does not go on" : null;
        return refused is null ? size : throw new InputException(
            "tool-size", string.Create(CultureInfo.InvariantCulture, $"a tool of {size.Millimeters:0.##} mm {refused} a nut of {nut.Millimeters:0.##} mm across flats."),
            new Cure("tool-size", string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(nut.Millimeters):0}mm")));
    }

    /// <summary>The grip of a tool; null where corners are not judged: a key, or a height that no thread tells.</summary>
    internal static CornerGrip? Complete(LooseningRequest request, Fastener fastener, List<Assumption> assumed)
    {
        ToolKind tool = request.Tool ?? ToolKind.Socket;
        if (tool == ToolKind.Key || fastener is not { AcrossFlats: { } flats, Thread: { } thread })
        {
            return null;
        }

        CornerWear wear = CornerWear.Named(request.Worn ?? (fastener.Condition.IsRusty ? "worn" : "new"));
        NutClass steel = NutClass.Named(request.NutClass ?? "unknown");
        if (request.Worn is null)
        {
            assumed.Add(new Assumption(AssumptionKind.CornerWear, null, ValueStatus.Judgement) { Name = wear.Key, Words = wear.Words });
        }

        if (request.NutClass is null)
        {
            assumed.Add(new Assumption(AssumptionKind.HexagonSteel, Pressure.FromMegapascals(steel.YieldMpa ?? 0), steel.Status));
        }

        return new CornerGrip(
            flats.Millimeters,
            HexagonCatalog.NutHeightMm(thread),
            request.Engaged ?? UsualValues.Engaged,
            tool == ToolKind.Open ? CornerTool.OpenJaw : request.Points == 12 ? CornerTool.TwelvePoints : CornerTool.SixPoints,
            wear.Share,
            steel.YieldMpa ?? fastener.Grade?.YieldMpa ?? NutClass.Named("unknown").YieldMpa ?? 0,
            Size(request)?.Millimeters,
            JawTestNmm: tool == ToolKind.Open ? 1000 * ToolStrength.Test("open", flats.Millimeters)?.TorqueNm : null);
    }
}
