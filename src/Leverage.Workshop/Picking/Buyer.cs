using Leverage.Requests;
using Leverage.Assessments;
using Leverage.Workshop.Chest;
using UnitsNet;

namespace Leverage.Workshop.Picking;

/// <summary>
/// Finds the smallest thing to borrow or buy that makes a go: one piece before two, and of one kind the lightest. Where
/// nothing does, the piece that brings it furthest.
/// </summary>
internal sealed class Buyer
{
    /// <summary>Stances tried with what is new: those in which the chest is at its best.</summary>
    private const int MostStances = 2;

    private readonly PickRequest _request;
    private readonly NutFigures _nut;
    private readonly StanceHands[] _stances;
    private readonly Length _acrossFlats;
    private readonly Standing? _now;

    internal Buyer(PickRequest request, NutFigures nut, Contest contest, Length acrossFlats)
    {
        string[] stances = [.. contest.Stances.Take(MostStances)];
        _request = stances.Length > 0 ? request with { Stances = stances } : request;
        (_nut, _acrossFlats) = (nut, acrossFlats);
        _now = contest.Ranked(1) is [var first] ? first.Standing : null;
        _stances = StanceHands.Of(_request, nut, LooseningDefaults.Complete(_request.Standing(_request.Ways()[0].Key)).Hold);
    }

    private ToolChest Chest => _request.Chest;

    /// <summary>What to get: what makes a go, smallest change first, else what helps most.</summary>
    internal List<Purchase> Search()
    {
        List<Purchase> singles = First([Singles(Sockets()), Singles(StandardPieces.Bars()), Singles(Tubes())]);
        if (singles.Exists(IsGo))
        {
            return [.. singles.Where(IsGo).OrderBy(purchase => purchase.Mass)];
        }

        List<Purchase> pairs = First([Pairs()]);
        return pairs.Exists(IsGo)
            ? [.. pairs.Where(IsGo)]
            : [.. singles.Concat(pairs).OrderBy(purchase => purchase.Then.Standing).Take(1)];
    }

    private static bool IsGo(Purchase purchase) => purchase.Then.Standing.Verdict == Verdict.Go;

    private IEnumerable<NewPiece> Sockets() => StandardPieces.Sockets(_request.Nut.Tool ?? ToolKind.Socket, _acrossFlats)
        .Where(piece => Chest.Bars.Any(bar => bar.Drive == piece.Socket!.Drive));

    private IEnumerable<NewPiece> Tubes() => Chest.Bars
        .Select(bar => bar.Diameter ?? StandardPieces.UsualDiameter(bar.Drive))
        .SelectMany(StandardPieces.Tubes)
        .DistinctBy(piece => (piece.Name, piece.Tube!.Tube.Length))
        .OrderBy(piece => piece.MassKg);

    private static IEnumerable<NewPiece[]> Singles(IEnumerable<NewPiece> pieces) => pieces.Select(piece => new[] { piece });

    /// <summary>A bar with its socket, lightest first.</summary>
    private IEnumerable<NewPiece[]> Pairs()
    {
        NewPiece[] sockets = [.. StandardPieces.Sockets(_request.Nut.Tool ?? ToolKind.Socket, _acrossFlats)];
        return StandardPieces.Bars()
            .OrderBy(piece => piece.MassKg)
            .Select(bar => new[] { bar, sockets.First(socket => socket.Socket!.Drive == bar.Bar!.Drive) });
    }

    /// <summary>Of each kind the first that makes a go, else the best of what is worth getting.</summary>
    private List<Purchase> First(IEnumerable<NewPiece[]>[] kinds)
    {
        var found = new List<Purchase>();
        foreach (IEnumerable<NewPiece[]> kind in kinds)
        {
            Purchase? best = null;
            foreach (Purchase purchase in kind.Select(With).OfType<Purchase>().Where(IsWorth))
            {
                best = best is null || purchase.Then.Standing < best.Then.Standing ? purchase : best;
                if (IsGo(purchase))
                {
                    break;
                }
            }

            found.AddRange(best is null ? [] : [best]);
        }

        return found;
    }

    private bool IsWorth(Purchase purchase) => _now is not { } now || purchase.Then.Standing.IsWorthMoreThan(now);

    /// <summary>The best use of the chest with new pieces, in sets that take all of them; null where they fit nothing.</summary>
    private Purchase? With(NewPiece[] pieces)
    {
        PickRequest request = _request with { Chest = Filled(pieces) };
        var contest = new Contest(request, _nut, _stances);
        contest.Judge(ToolSets.Of(request, _acrossFlats).Where(set => Takes(set.Set, pieces)));
        return contest.Best is { } best
            ? new Purchase(pieces, Mass.FromKilograms(pieces.Sum(piece => piece.MassKg)), best)
            : null;
    }

    /// <summary>The chest with the new pieces, and without what lies on their shelves: every set must take them.</summary>
    private ToolChest Filled(NewPiece[] pieces) => Chest with
    {
        NutTools = pieces.Select(piece => piece.Socket).OfType<NutTool>().ToArray() is [_, ..] sockets ? sockets : Chest.NutTools,
        Bars = pieces.Select(piece => piece.Bar).OfType<ChestBar>().ToArray() is [_, ..] bars ? bars : Chest.Bars,
        Tubes = pieces.Select(piece => piece.Tube).OfType<ChestTube>().ToArray() is [_, ..] tubes ? tubes : Chest.Tubes,
    };

    private static bool Takes(ToolSet set, NewPiece[] pieces) => pieces.All(
        piece => piece.Tube is null || set.Tube == piece.Tube);
}
