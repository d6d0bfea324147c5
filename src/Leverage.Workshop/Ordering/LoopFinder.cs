namespace Leverage.Workshop.Ordering;

/// <summary>Finds a short loop among tasks that wait for each other.</summary>
internal static class LoopFinder
{
    /// <summary>Tasks of a found loop that are tried as start of a shorter one.</summary>
    private const int Tries = 16;

    /// <summary>A loop among the nodes not done; there must be one.</summary>
    /// <param name="network">The network.</param>
    /// <param name="done">Nodes that are in no loop.</param>
    /// <returns>Its rules, from the task written first round to itself.</returns>
    internal static IReadOnlyList<OrderRule> Shortest(RuleNetwork network, bool[] done)
    {
        List<int> best = Any(network, done);
        foreach (int task in best.Where(node => node < network.Tasks).Take(Tries).ToList())
        {
            List<int> loop = Through(task, network, done);
            best = loop.Count < best.Count ? loop : best;
        }

        return Rules(network, FromFirstTask(network, best));
    }

    /// <summary>
    /// Walks backwards from a stuck node until one comes again. Nodes that nothing precedes but what is done are never
    /// stuck, so there is always a step back.
    /// </summary>
    private static List<int> Any(RuleNetwork network, bool[] done)
    {
        var colour = new byte[network.Nodes];
        for (int start = 0; start < network.Tasks; start++)
        {
            if (!done[start] && colour[start] == 0 && Walk(start, network, done, colour) is { } loop)
            {
                return loop;
            }
        }

        throw new InvalidOperationException("No loop among tasks that could not be ordered.");
    }

    /// <summary>Depth first along what comes before, on a stack of our own: a chain may be 100,000 tasks long.</summary>
    private static List<int>? Walk(int start, RuleNetwork network, bool[] done, byte[] colour)
    {
        var path = new List<(int Node, int Next)> { (start, 0) };
        colour[start] = 1;
        while (path.Count > 0)
        {
            var (node, next) = path[^1];
            IReadOnlyList<RuleNetwork.Link> before = network.Before(node);
            if (next == before.Count)
            {
                colour[node] = 2;
                path.RemoveAt(path.Count - 1);
                continue;
            }

            path[^1] = (node, next + 1);
            int earlier = before[next].Node;
            if (colour[earlier] == 1)
            {
                int from = path.FindIndex(step => step.Node == earlier);
                return [.. path.Skip(from).Select(step => step.Node).Reverse()];
            }

            if (colour[earlier] == 0 && !done[earlier])
            {
                colour[earlier] = 1;
                path.Add((earlier, 0));
            }
        }

        return null;
    }

    /// <summary>The shortest loop through a node that is in one, in the order of work.</summary>
    private static List<int> Through(int node, RuleNetwork network, bool[] done)
    {
        var from = new Dictionary<int, int>();
        var queue = new Queue<int>([node]);
        while (queue.TryDequeue(out int at))
        {
            foreach (int next in network.After(at))
            {
                if (next == node)
                {
                    var loop = new List<int> { at };
                    while (loop[^1] != node)
                    {
                        loop.Add(from[loop[^1]]);
                    }

                    loop.Reverse();
                    return loop;
                }

                if (!done[next] && from.TryAdd(next, at))
                {
                    queue.Enqueue(next);
                }
            }
        }

        throw new InvalidOperationException("The node is in no loop.");
    }

    private static List<int> FromFirstTask(RuleNetwork network, List<int> loop)
    {
        int first = loop.IndexOf(loop.Where(node => node < network.Tasks).Min());
        return [.. loop.Skip(first), .. loop.Take(first)];
    }

    private static List<OrderRule> Rules(RuleNetwork network, List<int> loop)
    {
        var rules = new List<OrderRule>();
        for (int i = 0; i < loop.Count; i++)
        {
            int next = loop[(i + 1) % loop.Count];
            if (loop[i] < network.Tasks)
            {
                bool direct = next < network.Tasks;
                rules.Add(network.Rule(loop[i], direct ? loop[i] : next, direct ? next : loop[(i + 2) % loop.Count]));
            }
        }

        return rules;
    }
}
