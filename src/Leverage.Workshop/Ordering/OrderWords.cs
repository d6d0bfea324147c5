namespace Leverage.Workshop.Ordering;

/// <summary>Rules of order and loops of them in words.</summary>
public static class OrderWords
{
    /// <summary>Most rules of a loop that are spelt out; a person follows no more.</summary>
    private const int Most = 12;

    /// <summary>A rule as a clause: 'Loosen the nuts' needs "wheels down", which 'Lift the axle' ends.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="tasks">The tasks.</param>
    /// <returns>A clause without a full stop.</returns>
    public static string Of(OrderRule rule, IReadOnlyList<TaskRules> tasks)
    {
        ArgumentNullException.ThrowIfNull(tasks);
        string first = $"'{tasks[rule.First].Name}'";
        string then = $"'{tasks[rule.Then].Name}'";
        return rule.Reason switch
        {
            OrderReason.NeededBeforeEnded => $"{first} needs \"{rule.What}\", which {then} ends",
            OrderReason.GivenBeforeNeeded => $"{then} needs \"{rule.What}\", which {first} gives",
            OrderReason.GivenBeforeEnded => $"{then} ends \"{rule.What}\", which {first} gives before it",
            OrderReason.LoosenedBeforeTakenOff => $"{first} loosens '{rule.What}', which {then} takes off",
            _ => $"{then} comes after {first}",
        };
    }

    /// <summary>Why the earlier task of a rule was moved up, said of that task: it needs "wheels down", which 'Lift the axle' ends.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="tasks">The tasks.</param>
    /// <returns>A clause without a full stop.</returns>
    public static string WhyMoved(OrderRule rule, IReadOnlyList<TaskRules> tasks)
    {
        ArgumentNullException.ThrowIfNull(tasks);
        string then = $"'{tasks[rule.Then].Name}'";
        return rule.Reason switch
        {
            OrderReason.NeededBeforeEnded => $"it needs \"{rule.What}\", which {then} ends",
            OrderReason.GivenBeforeNeeded => $"it gives \"{rule.What}\", which {then} needs",
            OrderReason.GivenBeforeEnded => $"it gives \"{rule.What}\", which {then} ends",
            OrderReason.LoosenedBeforeTakenOff => $"it loosens '{rule.What}', which {then} takes off",
            _ => $"{then} comes after it",
        };
    }

    /// <summary>A loop in one line: its tasks and states, and what to do about it.</summary>
    /// <param name="loop">The rules of the loop.</param>
    /// <param name="tasks">The tasks.</param>
    /// <returns>What, why, cure.</returns>
    public static string OfLoop(IReadOnlyList<OrderRule> loop, IReadOnlyList<TaskRules> tasks)
    {
        ArgumentNullException.ThrowIfNull(loop);
        ArgumentNullException.ThrowIfNull(tasks);
        string clauses = string.Join("; ", loop.Take(Most).Select(rule => $"{Of(rule, tasks)}"));
        string more = loop.Count > Most ? "; and so on" : "";
        string count = loop.Count == 1 ? "one task waits for itself"
            : $"{loop.Count.ToString(System.Globalization.CultureInfo.InvariantCulture)} tasks wait for each other";
        return $"there is no order of work, {count}: {clauses}{more}. "
            + "Take one of these rules out, or split one of these tasks in two.";
    }
}
