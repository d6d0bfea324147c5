using Leverage.Requests;
using Leverage.Workshop.Chest;
using UnitsNet;

namespace Leverage.Workshop.Picking;

/// <summary>Pieces that fit together on a nut.</summary>
/// <param name="Tool">What goes on the nut.</param>
/// <param name="Adapters">What stands between it and the bar, from the bar on.</param>
/// <param name="Bar">The bar; null for a spanner or key that is its own lever.</param>
/// <param name="Tube">The tube over the bar, if any.</param>
public sealed record ToolSet(NutTool Tool, IReadOnlyList<ChestAdapter> Adapters, ChestBar? Bar, ChestTube? Tube)
{
    /// <summary>How many pieces it takes.</summary>
    public int Pieces => 1 + Adapters.Count + (Bar is null ? 0 : 1) + (Tube is null ? 0 : 1);

    /// <summary>What their owner calls them, from the hands to the nut.</summary>
    public string Name => string.Join(" + ", new[] { Tube?.Name, Bar?.Name }.Concat(Adapters.Select(adapter => adapter.Name)).Append(Tool.Name).OfType<string>());

    /// <summary>The request of a nut with these pieces.</summary>
    /// <param name="nut">The nut and the hands.</param>
    /// <returns>The request.</returns>
    public LooseningRequest Into(LooseningRequest nut)
    {
        ArgumentNullException.ThrowIfNull(nut);
        Length? size = nut.AcrossFlats is { } flats && Fit.SizeOn(Tool, flats) is { } own && !Fit.IsSame(own, flats) ? own : null;
        LooseningRequest request = nut with { Tool = Tool.Kind, ToolSize = size, Points = Tool.Points ?? nut.Points, Adapters = [.. Adapters.Select(adapter => adapter.To)] };
        request = Bar is null ? request with { Bar = Tool.Length } : request.With(Bar);
        return Tube is null ? request : request.With(Tube);
    }
}
