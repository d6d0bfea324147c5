namespace Leverage.Workshop.Ordering;

/// <summary>What a task says of its place in the order of work. States are free words, such as "wheels down" or "in gear".</summary>
/// <param name="Name">Its name, unlike any other's.</param>
/// <param name="Needs">States that must hold while it is done.</param>
/// <param name="Ends">States it puts an end to.</param>
/// <param name="Gives">States that hold once it is done.</param>
/// <param name="After">Names of tasks that must be done before it.</param>
public sealed record TaskRules(
    string Name,
    IReadOnlyList<string> Needs,
    IReadOnlyList<string> Ends,
    IReadOnlyList<string> Gives,
    IReadOnlyList<string> After)
{
    /// <summary>How names of tasks and states are compared: case does not count.</summary>
    public static StringComparer Names => StringComparer.OrdinalIgnoreCase;
}

/// <summary>Why one task comes before another.</summary>
public enum OrderReason
{
    /// <summary>The later one says so with <c>after</c>.</summary>
    After,

    /// <summary>The earlier one needs a state that the later one ends.</summary>
    NeededBeforeEnded,

    /// <summary>The earlier one gives a state that the later one needs.</summary>
    GivenBeforeNeeded,

    /// <summary>The earlier one gives a state that the later one ends.</summary>
    GivenBeforeEnded,

    /// <summary>The earlier one loosens a fastener that the later one takes off.</summary>
    LoosenedBeforeTakenOff,
}

/// <summary>One task before another.</summary>
/// <param name="First">Index of the earlier task.</param>
/// <param name="Then">Index of the later task.</param>
/// <param name="Reason">Why.</param>
/// <param name="What">The state or fastener it is about; empty for <see cref="OrderReason.After"/>.</param>
public readonly record struct OrderRule(int First, int Then, OrderReason Reason, string What);
