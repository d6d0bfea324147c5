namespace Leverage.Workshop.Ordering;

/// <summary>
/// The rules as a network of what comes before what. Each state stands as two nodes behind the tasks, "given" and
/// "about to end", so that a thousand tasks that need a state cost a thousand links, not one for every pair.
/// </summary>
internal sealed class RuleNetwork
{
    private readonly List<Link>[] _before;
    private readonly List<int>[] _after;
    private readonly List<string> _states = [];
    private readonly Dictionary<string, int> _stateIds = new(TaskRules.Names);

    private RuleNetwork(IReadOnlyList<TaskRules> tasks)
    {
        Tasks = tasks.Count;
        foreach (string state in tasks.SelectMany(task => task.Needs.Concat(task.Ends).Concat(task.Gives)))
        {
            if (_stateIds.TryAdd(state, _states.Count))
            {
                _states.Add(state);
            }
        }

        int nodes = Tasks + 2 * _states.Count;
        _before = [.. Enumerable.Range(0, nodes).Select(_ => new List<Link>(2))];
        _after = [.. Enumerable.Range(0, nodes).Select(_ => new List<int>(2))];
    }

    /// <summary>A link from a node to the one that comes before it.</summary>
    /// <param name="Node">The earlier node.</param>
    /// <param name="Reason">Why, where both are tasks.</param>
    /// <param name="What">State or fastener, where both are tasks.</param>
    internal readonly record struct Link(int Node, OrderReason Reason, string What);

    /// <summary>Count of tasks; nodes from here on are states.</summary>
    internal int Tasks { get; }

    /// <summary>Count of all nodes.</summary>
    internal int Nodes => _before.Length;

    /// <summary>The network of tasks and further rules.</summary>
    internal static RuleNetwork Of(IReadOnlyList<TaskRules> tasks, IEnumerable<OrderRule> more)
    {
        var network = new RuleNetwork(tasks);
        var index = new Dictionary<string, int>(tasks.Count, TaskRules.Names);
        for (int i = 0; i < tasks.Count; i++)
        {
            index[tasks[i].Name] = i;
        }

        for (int i = 0; i < tasks.Count; i++)
        {
            network.Place(tasks[i], i, index);
        }

        network.OrderThoseThatNeedAndEnd(tasks);
        foreach (OrderRule rule in more)
        {
            network.Add(rule.First, rule.Then, rule.Reason, rule.What);
        }

        return network;
    }

    /// <summary>What comes right before a node.</summary>
    internal IReadOnlyList<Link> Before(int node) => _before[node];

    /// <summary>What comes right after a node.</summary>
    internal IReadOnlyList<int> After(int node) => _after[node];

    /// <summary>The rule between two tasks that are linked, directly or through the one state node between them.</summary>
    internal OrderRule Rule(int first, int between, int then)
    {
        if (between < Tasks)
        {
            Link link = _before[then].Find(candidate => candidate.Node == first);
            return new OrderRule(first, then, link.Reason, link.What);
        }

        bool ending = (between - Tasks) % 2 == 1;
        OrderReason given = _before[then].Exists(link => link.Node == between && link.Reason == OrderReason.GivenBeforeEnded)
            ? OrderReason.GivenBeforeEnded
            : OrderReason.GivenBeforeNeeded;
        return new OrderRule(first, then, ending ? OrderReason.NeededBeforeEnded : given, _states[(between - Tasks) / 2]);
    }

    private void Place(TaskRules task, int i, Dictionary<string, int> index)
    {
        foreach (string name in task.After)
        {
            Add(index[name], i, OrderReason.After, "");
        }

        foreach (string state in task.Gives)
        {
            Add(i, Given(state), OrderReason.GivenBeforeNeeded, state);
        }

        foreach (string state in task.Needs)
        {
            Add(Given(state), i, OrderReason.GivenBeforeNeeded, state);
            if (!task.Ends.Contains(state, TaskRules.Names))
            {
                Add(i, Ending(state), OrderReason.NeededBeforeEnded, state);
            }
        }

        foreach (string state in task.Ends)
        {
            Add(Given(state), i, OrderReason.GivenBeforeEnded, state);
            Add(Ending(state), i, OrderReason.NeededBeforeEnded, state);
        }
    }

    /// <summary>
    /// A task that both needs a state and ends it comes before every other that ends it. Two such tasks make a loop,
    /// and two links show it as well as all of them would.
    /// </summary>
    private void OrderThoseThatNeedAndEnd(IReadOnlyList<TaskRules> tasks)
    {
        var enders = new List<int>[_states.Count];
        var both = new List<int>[_states.Count];
        for (int i = 0; i < tasks.Count; i++)
        {
            foreach (string state in tasks[i].Ends.Distinct(TaskRules.Names))
            {
                (enders[_stateIds[state]] ??= []).Add(i);
                if (tasks[i].Needs.Contains(state, TaskRules.Names))
                {
                    (both[_stateIds[state]] ??= []).Add(i);
                }
            }
        }

        for (int s = 0; s < both.Length; s++)
        {
            foreach (int first in both[s] ?? [])
            {
                foreach (int then in (both[s].Count > 1 ? both[s] : enders[s]).Where(other => other != first).Take(both[s].Count > 1 ? 1 : int.MaxValue))
                {
                    Add(first, then, OrderReason.NeededBeforeEnded, _states[s]);
                }
            }
        }
    }

    private int Given(string state) => Tasks + 2 * _stateIds[state];

    private int Ending(string state) => Given(state) + 1;

    private void Add(int first, int then, OrderReason reason, string what)
    {
        _before[then].Add(new Link(first, reason, what));
        _after[first].Add(then);
    }
}
