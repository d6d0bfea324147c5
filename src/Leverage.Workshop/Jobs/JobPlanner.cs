using Leverage.Assessments;
using Leverage.Reading;
using Leverage.Workshop.Ordering;

namespace Leverage.Workshop.Jobs;

/// <summary>Plans a job.</summary>
public sealed class JobPlanner
{
    private readonly Job _whole;
    private readonly Job _job;
    private readonly JobProgress _progress;
    private readonly IReadOnlyList<TaskRules> _rules;
    private readonly JobStates _states;
    private readonly SetUpChooser _chooser;

    private JobPlanner(Job job)
    {
        _whole = job;
        _progress = new JobProgress(job);
        _job = _progress.Left;
        _rules = _job.Rules;
        _states = new JobStates(job);
        _chooser = new SetUpChooser(job);
    }

    /// <summary>The plan of a job.</summary>
    /// <param name="job">The job.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="InputException">The tasks wait for each other; the error names the loop and where it begins.</exception>
    public static JobPlan Plan(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return new JobPlanner(job).Plan();
    }

    private JobPlan Plan()
    {
        WorkOrder order = WorkOrder.Of(_rules, LoosenFirst());
        if (order.Loop.Count > 0)
        {
            throw _job.Tasks[order.Loop[0].First].Place.Error("tasks", OrderWords.OfLoop(order.Loop, _rules));
        }

        List<PlannedTask> tasks = InOrder(order);
        PlannedTask?[] breaking = ByFastener(Enumerable.Reverse(tasks));
        var refit = new RefitPlanner(_job);
        PlannedTightening[] back = [.. _job.Fasteners.Select(refit.Of)];
        PlannedLoosening[] loosening =
        [
            .. HardFirst(Enumerable.Range(0, _job.Fasteners.Count).Where(i => !_progress.Loose[i]).Select(i => Loosen(_job.Fasteners[i], breaking[i]))),
        ];
        return new JobPlan
        {
            Job = _whole,
            Left = _job,
            Tasks = tasks,
            Loosening = loosening,
            Refit = back,
            RefitSteps = RefitOrder.Of(_whole, _states, [.. _progress.Done, .. tasks.Select(task => task.Task)], back),
            Parts = Parts(),
            Gaps = JobGaps.Of(_whole, _progress, loosening, back),
        };
    }

    /// <summary>A fastener is loosened before it is taken off.</summary>
    private IEnumerable<OrderRule> LoosenFirst()
    {
        var loosened = new Dictionary<int, int>();
        for (int i = 0; i < _job.Tasks.Count; i++)
        {
            foreach (int fastener in _job.Tasks[i].Loosens)
            {
                loosened[fastener] = i;
            }
        }

        for (int i = 0; i < _job.Tasks.Count; i++)
        {
            foreach (int fastener in _job.Tasks[i].TakesOff)
            {
                if (loosened.TryGetValue(fastener, out int first) && first != i)
                {
                    yield return new OrderRule(first, i, OrderReason.LoosenedBeforeTakenOff, _job.Fasteners[fastener].Name);
                }
            }
        }
    }

    private List<PlannedTask> InOrder(WorkOrder order)
    {
        IReadOnlyList<IReadOnlySet<string>> during = StateTrack.During(_rules, _job.AtStart, order.Sequence);
        var enders = new Dictionary<string, List<string>>(TaskRules.Names);
        foreach (int i in order.Sequence)
        {
            foreach (string state in _rules[i].Ends)
            {
                if (!enders.TryGetValue(state, out List<string>? list))
                {
                    enders[state] = list = [];
                }

                list.Add(_rules[i].Name);
            }
        }

        var moves = order.Moves.ToDictionary(move => move.First);
        return
        [
            .. order.Sequence.Select((i, at) => new PlannedTask(
                at + 1, _job.Tasks[i], during[i], Before(_rules[i], enders), moves.TryGetValue(i, out OrderRule move) ? move : null)),
        ];
    }

    /// <summary>The first task that ends each state a task needs.</summary>
    private static string[] Before(TaskRules task, Dictionary<string, List<string>> enders) =>
    [
        .. task.Needs.Select(state => enders.GetValueOrDefault(state)?[0]).OfType<string>()
            .Where(name => !TaskRules.Names.Equals(name, task.Name)).Distinct(TaskRules.Names),
    ];

    /// <summary>The task that turns each fastener; of two, the one that comes last here.</summary>
    private PlannedTask?[] ByFastener(IEnumerable<PlannedTask> tasks)
    {
        var found = new PlannedTask?[_job.Fasteners.Count];
        foreach (PlannedTask task in tasks)
        {
            foreach (int fastener in task.Task.Loosens.Concat(task.Task.TakesOff))
            {
                found[fastener] = task;
            }
        }

        return found;
    }

    private PlannedLoosening Loosen(JobFastener fastener, PlannedTask? task)
    {
        IEnumerable<string> states = task?.States ?? (IEnumerable<string>)_job.AtStart;
        WheelHold? hold = fastener.Wheel is { } wheel ? _states.Of(wheel, states) : null;
        NutHistory history = _progress.Of(fastener);
        var (choice, assessment) = Chosen(fastener, hold, history);
        return new PlannedLoosening
        {
            Fastener = fastener,
            History = history,
            Task = task,
            Choice = choice,
            Assessment = assessment,
            Hold = hold,
            Lifted = _states.IsLifted(states),
        };
    }

    /// <summary>What has happened may not fit the nut, and only its torque tells: the refusal names the fastener.</summary>
    private (SetUpChoice? Choice, LooseningAssessment Assessment) Chosen(JobFastener fastener, WheelHold? hold, NutHistory history)
    {
        try
        {
            return _chooser.For(fastener, hold, history);
        }
        catch (InputException e)
        {
            throw fastener.At.Error(fastener.Name, e.Line);
        }
    }

    private static IOrderedEnumerable<PlannedLoosening> HardFirst(IEnumerable<PlannedLoosening> planned) => planned
        .OrderByDescending(each => each.Verdict)
        .ThenBy(each => each.Choice is null ? 0 : each.Assessment.Judgement.ComesLoose)
        .ThenByDescending(each => each.Assessment.Nut.LikelyNmm);

    private List<PartToBuy> Parts() =>
    [
        .. _job.Fasteners.Where(fastener => fastener.NewPart is not null)
            .GroupBy(fastener => fastener.NewPart!, StringComparer.OrdinalIgnoreCase).OrderBy(group => group.Key, StringComparer.OrdinalIgnoreCase)
            .Select(group => new PartToBuy(
                group.Key, group.Sum(fastener => fastener.NewPartCount), [.. group.Select(fastener => fastener.Name)])),
    ];
}
