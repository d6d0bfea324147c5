namespace Leverage.Workshop.Ordering;

/// <summary>The order of work, or the loop that forbids one.</summary>
/// <param name="Sequence">Indices of the tasks in order; empty where there is a loop.</param>
/// <param name="Moves">Each task done earlier than it was written, and the rule that moved it.</param>
/// <param name="Loop">Rules that lead from a task back to itself; empty where there is an order.</param>
public sealed record WorkOrder(IReadOnlyList<int> Sequence, IReadOnlyList<OrderRule> Moves, IReadOnlyList<OrderRule> Loop)
{
    /// <summary>
    /// Puts tasks in order: each as written, but what must come before it is done first. A list that is already in order
    /// stays as it is.
    /// </summary>
    /// <param name="tasks">The tasks as written; <see cref="RuleCheck"/> must have passed them.</param>
    /// <param name="more">Further rules, such as loosening before taking off.</param>
    /// <returns>The order.</returns>
    public static WorkOrder Of(IReadOnlyList<TaskRules> tasks, IEnumerable<OrderRule> more)
    {
        ArgumentNullException.ThrowIfNull(tasks);
        ArgumentNullException.ThrowIfNull(more);
        return new Orderer(RuleNetwork.Of(tasks, more)).Order();
    }
}

/// <summary>Walks the network once; the cost is linear in tasks and rules, but for the heaps.</summary>
internal sealed class Orderer
{
    private readonly RuleNetwork _network;
    private readonly int[] _waitsFor;
    private readonly bool[] _done;
    private readonly int[] _askedBy;
    private readonly List<int> _sequence;
    private readonly List<OrderRule> _moves = [];

    internal Orderer(RuleNetwork network)
    {
        _network = network;
        _waitsFor = [.. Enumerable.Range(0, network.Nodes).Select(node => network.Before(node).Count)];
        _done = new bool[network.Nodes];
        _askedBy = new int[network.Nodes];
        Array.Fill(_askedBy, -1);
        _sequence = new List<int>(network.Tasks);
    }

    /// <summary>For each task in turn: whatever must come before it and is not yet done, then the task.</summary>
    internal WorkOrder Order()
    {
        for (int task = 0; task < _network.Tasks; task++)
        {
            if (!_done[task] && !DoFirst(task))
            {
                return new WorkOrder([], [], LoopFinder.Shortest(_network, _done));
            }
        }

        return new WorkOrder(_sequence, _moves, []);
    }

    /// <summary>Does a task and all that must come before it, those written first first; false where they wait for each other.</summary>
    private bool DoFirst(int task)
    {
        List<int> needed = Needed(task);
        var ready = new PriorityQueue<int, int>(needed.Where(node => _waitsFor[node] == 0).Select(node => (node, Rank(node))));
        int left = needed.Count;
        while (ready.TryDequeue(out int node, out _))
        {
            left--;
            Finish(node, task);
            foreach (int next in _network.After(node))
            {
                if (--_waitsFor[next] == 0 && _askedBy[next] >= 0 && !_done[next])
                {
                    ready.Enqueue(next, Rank(next));
                }
            }
        }

        return left == 0;
    }

    /// <summary>The task and everything not yet done that comes before it.</summary>
    private List<int> Needed(int task)
    {
        var needed = new List<int> { task };
        _askedBy[task] = task;
        for (int i = 0; i < needed.Count; i++)
        {
            foreach (RuleNetwork.Link link in _network.Before(needed[i]))
            {
                if (!_done[link.Node] && _askedBy[link.Node] < 0)
                {
                    _askedBy[link.Node] = needed[i];
                    needed.Add(link.Node);
                }
            }
        }

        return needed;
    }

    private void Finish(int node, int wanted)
    {
        _done[node] = true;
        if (node >= _network.Tasks)
        {
            return;
        }

        _sequence.Add(node);
        if (node > wanted)
        {
            int between = _askedBy[node];
            int then = between < _network.Tasks ? between : _askedBy[between];
            _moves.Add(_network.Rule(node, between, then));
        }
    }

    /// <summary>States cost nothing and go first; tasks go as written.</summary>
    private int Rank(int node) => node < _network.Tasks ? node : -1;
}
