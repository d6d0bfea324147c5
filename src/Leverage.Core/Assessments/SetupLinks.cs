using Leverage.BreakLoose;
using Leverage.Corners;
using Leverage.Levers;
using Leverage.LoadPath;
using Leverage.Requests;

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
            Add(links, LinkList.Hexagon(Tool(setup.Tool.Kind), (setup.Tool.Size ?? flats).Millimeters));
        }

        if (setup.Corners is { } corners && corners.Limit() is { } rounds)
        {
            links.Add(LinkList.Corners(corners.AcrossFlatsMm, rounds.MedianNmm, CornerLimit.Sigma, rounds.TorqueNmm));
        }

        foreach (string adapter in setup.Tool.Adapters)
        {
            links.Add(LinkList.Square(adapter, LinkKind.Adapter));
        }

        if (setup.Tool.Drive is { } drive)
        {
            links.Add(LinkList.Square(drive, LinkKind.Square));
            if (setup.Tool.Extension is { } extension)
            {
                links.Add(LinkList.Square(extension, LinkKind.Extension));
            }
        }

        if (setup.Bar is { } bar)
        {
            Add(links, LinkList.Pin(bar));
            Add(links, LinkList.Bending(bar, setup.BarAssumed || setup.BarYieldAssumed, setup.BarAssumed ? setup.Tool.Drive : null));
        }

        if (setup.Tube is { } tube && lever is { } geometry)
        {
            LinkList.AddTube(TubeLimits.Of(tube), geometry, links);
        }

        if (setup.Fastener is { Thread: { } thread, Grade: { } grade })
        {
            LinkLimit stud = LinkList.Stud(thread, grade) with { Confirmed = !setup.ThreadBySight };
            links.Add(BreakLooseSpread.Stud(setup.Fastener) is { } strength
                ? stud with { LimitNmm = BreakLooseSpread.ShankOf(setup.Fastener).LimitAtNut(strength.MedianNmm) }
                : stud);
        }

        return links;
    }

    /// <summary>The kinds of link this set-up has that could not be judged, from the hexagon outwards.</summary>
    /// <param name="setup">The set-up.</param>
    /// <param name="links">Those that were judged.</param>
    /// <returns>The kinds; never left out of an answer.</returns>
    public static IReadOnlyList<LinkKind> NotJudged(LooseningSetup setup, IReadOnlyList<LinkLimit> links)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(links);
        return [.. Parts(setup).Where(kind => links.All(link => link.Kind != kind))];
    }

    private static IEnumerable<LinkKind> Parts(LooseningSetup setup)
    {
        yield return Tool(setup.Tool.Kind);
        yield return LinkKind.Corners;
        if (setup.Tool.Kind == ToolKind.Socket)
        {
            yield return LinkKind.Square;
        }

        if (setup.Bar is not null)
        {
            yield return LinkKind.Bar;
        }

        if (setup.Tube is { Wall: null })
        {
            yield return LinkKind.TubeDentTip;
            yield return LinkKind.TubeDentMouth;
        }

        yield return LinkKind.Stud;
    }

    private static void Add(List<LinkLimit> links, LinkLimit? link)
    {
        if (link is { } known)
        {
            links.Add(known);
        }
    }

    private static LinkKind Tool(ToolKind kind) => kind switch
    {
        ToolKind.Ring => LinkKind.Ring,
        ToolKind.Open => LinkKind.Open,
        ToolKind.Key => LinkKind.Key,
        _ => LinkKind.Socket,
    };
}
