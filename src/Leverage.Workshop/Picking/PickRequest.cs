using Leverage.Levers;
using Leverage.Requests;
using Leverage.Workshop.Chest;
using UnitsNet;

namespace Leverage.Workshop.Picking;

/// <summary>A nut and the chest to loosen it with.</summary>
public sealed record PickRequest
{
    /// <summary>The nut, what has to turn it (where nothing is said, socket or spanner, whichever is best), what holds the wheel, the state of the handle, and whatever else is the same for every set-up.</summary>
    public required LooseningRequest Nut { get; init; }

    /// <summary>What there is to take.</summary>
    public required ToolChest Chest { get; init; }

    /// <summary>How one can stand there, names of the table <c>stances</c>; empty for all of them.</summary>
    public IReadOnlyList<string> Stances { get; init; } = [];

    /// <summary>Who pulls; null for whom <see cref="Nut"/> says.</summary>
    public ChestPerson? Person { get; init; }

    /// <summary>How far the nut sits back, so that adapters and extensions must be at least that long.</summary>
    public Length Recess { get; init; }

    /// <summary>Whether to look for what to do if it stays tight.</summary>
    public bool Advise { get; init; } = true;

    /// <summary>The nut's request for one stance, the person put in.</summary>
    internal LooseningRequest InStance(string stance)
    {
        LooseningRequest request = Nut with { Stance = stance };
        return Person is { } person ? request.With(person) : request;
    }

    /// <summary>The stances to try.</summary>
    internal IReadOnlyList<Stance> Ways() => Stances.Count > 0 ? [.. Stances.Select(Stance.Named)] : Stance.All();
}
