using Leverage.Levers;
using Leverage.LoadPath;

namespace Leverage.Assessments;

/// <summary>The load path of a set-up, from the nut to the hands.</summary>
public static class SetupLinks
{
    /// <summary>Every link that can be judged, from the hexagon outwards, the stud last.</summary>
    /// <param name="setup">The set-up.</param>
    /// <param name="lever">Its lengths; null with no bar.</param>
    /// <returns>The links with their limits at the nut.</returns>
    public static List<LinkLimit> Of(LooseningSetup setup, LeverGeometry? lever)
    {
        ArgumentNullException.ThrowIfNull(setup);
        var links = new List<LinkLimit>(9);
        if (setup.Fastener.AcrossFlats is { } flats)
        {
            Add(links, LinkList.Hexagon(ToolName(setup.Tool.Kind), flats.Millimeters));
        }

        foreach (string adapter in setup.Tool.Adapters)
        {
            links.Add(LinkList.Square(adapter, true));
        }

        if (setup.Tool.Drive is { } drive)
        {
            links.Add(LinkList.Square(drive, false));
        }

        if (setup.Bar is { } bar)
        {
            Add(links, LinkList.Pin(bar));
            Add(links, LinkList.Bending(bar, setup.BarAssumed || setup.BarYieldAssumed));
        }

        if (setup.Tube is { } tube && lever is { } geometry)
        {
            LinkList.AddTube(TubeLimits.Of(tube), geometry, links);
        }

        if (setup.Fastener is { Thread: { } thread, Grade: { } grade })
        {
            links.Add(LinkList.Stud(thread, grade));
        }

        return links;
    }

    private static void Add(List<LinkLimit> links, LinkLimit? link)
    {
        if (link is { } known)
        {
            links.Add(known);
        }
    }

    private static string ToolName(ToolKind kind) => kind switch
    {
        ToolKind.Ring => "ring",
        ToolKind.Open => "open",
        ToolKind.Key => "key",
        _ => "socket",
    };
}
