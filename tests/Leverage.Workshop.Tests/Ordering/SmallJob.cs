using FsCheck;
using FsCheck.Fluent;
using Leverage.Workshop.Ordering;

namespace Leverage.Workshop.Tests.Ordering;

/// <summary>A job of a few tasks with any rules that <see cref="RuleCheck"/> passes.</summary>
public sealed record SmallJob(IReadOnlyList<TaskRules> Tasks, IReadOnlyList<string> AtStart)
{
    private static readonly string[] States = ["wheels down", "in gear", "drained", "propped"];

    /// <summary>Every order in which all rules hold, found by trying every order there is.</summary>
    public IReadOnlyList<int[]> ValidOrders => [.. Orders(Tasks.Count).Where(IsValid)];

    /// <summary>
    /// Whether every task finds its needs fulfilled, by playing the order through: a state holds once all who give it
    /// have done so, until the first that ends it; nobody ends what does not hold.
    /// </summary>
    public bool IsValid(IReadOnlyList<int> order)
    {
        var done = new HashSet<int>();
        foreach (int i in order)
        {
            TaskRules task = Tasks[i];
            if (!task.After.All(name => done.Contains(IndexOf(name)))
                || !task.Needs.All(state => IsGiven(state, done) && !IsEnded(state, done))
                || !task.Ends.All(state => IsGiven(state, done)))
            {
                return false;
            }

            done.Add(i);
        }

        return done.Count == Tasks.Count;
    }

    /// <summary>The same tasks written in another order.</summary>
    public SmallJob Rewritten(int[] order) => new([.. order.Select(i => Tasks[i])], AtStart);

    /// <inheritdoc/>
    public override string ToString() => string.Join("\n", Tasks.Select(t =>
        $"{t.Name}: needs [{string.Join(',', t.Needs)}] ends [{string.Join(',', t.Ends)}] gives [{string.Join(',', t.Gives)}] after [{string.Join(',', t.After)}]"))
        + $"\nat start [{string.Join(',', AtStart)}]";

    private bool IsGiven(string state, HashSet<int> done) =>
        AtStart.Contains(state, TaskRules.Names) || Who(task => task.Gives.Contains(state, TaskRules.Names)).All(done.Contains);

    private bool IsEnded(string state, HashSet<int> done) => Who(task => task.Ends.Contains(state, TaskRules.Names)).Any(done.Contains);

    private IEnumerable<int> Who(Func<TaskRules, bool> does) => Enumerable.Range(0, Tasks.Count).Where(i => does(Tasks[i]));

    private int IndexOf(string name) => Who(task => task.Name == name).Single();

    internal static IEnumerable<int[]> Orders(int count) => count == 0
        ? [[]]
        : Orders(count - 1).SelectMany(order => Enumerable.Range(0, count).Select(at => (int[])[.. order[..at], count - 1, .. order[at..]]));

    internal static Gen<SmallJob> Any(int most) =>
        from count in Gen.Choose(1, most)
        from start in Some(States, 0.5)
        from tasks in Gen.ListOf(Task(count), count)
        select Passed(tasks, start);

    private static Gen<TaskRules> Task(int count) =>
        from needs in Some(States, 0.2)
        from ends in Some(States, 0.15)
        from gives in Some(States, 0.15)
        from after in Some(Enumerable.Range(0, count).Select(Name), 0.25 / count)
        select new TaskRules("", needs, ends, gives, after);

    private static string Name(int i) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"task {i}");

    private static Gen<List<string>> Some(IEnumerable<string> words, double share) =>
        words.Aggregate(
            Gen.Constant(new List<string>()),
            (list, word) => from some in list
                            from pick in Gen.Choose(0, 999)
                            select pick < share * 1000 ? (List<string>)[.. some, word] : some);

    /// <summary>Takes out what the check refuses, one thing at a time.</summary>
    private static SmallJob Passed(IEnumerable<TaskRules> any, List<string> start)
    {
        TaskRules[] tasks = [.. any.Select((task, i) => task with { Name = Name(i) })];
        while (RuleCheck.Problems(tasks, start) is [var problem, ..])
        {
            TaskRules task = tasks[problem.Task];
            tasks[problem.Task] = problem.Key switch
            {
                "after" => task with { After = Without(task.After, problem.Entry) },
                "gives" => task with { Gives = Without(task.Gives, problem.Entry) },
                "needs" => task with { Needs = Without(task.Needs, problem.Entry) },
                _ => task with { Ends = Without(task.Ends, problem.Entry) },
            };
        }

        return new SmallJob(tasks, start);
    }

    private static List<string> Without(IReadOnlyList<string> list, int entry) => [.. list.Where((_, i) => i != entry)];
}

/// <summary>Makes small jobs for properties.</summary>
public static class SmallJobs
{
    public static Arbitrary<SmallJob> SmallJob() => Tests.Ordering.SmallJob.Any(5).ToArbitrary();
}
