using Leverage.Workshop.Ordering;

namespace Leverage.Workshop.Jobs;

/// <summary>How far a fastener goes in one step of the refit.</summary>
public enum RefitStage
{
    /// <summary>To its torque.</summary>
    Full,

    /// <summary>Snug only: its torque comes once the vehicle stands on its wheels.</summary>
    Snug,
}

/// <summary>A fastener in a step of the refit.</summary>
/// <param name="Tightening">How it goes back.</param>
/// <param name="Stage">How far.</param>
/// <param name="IsFitted">Whether it is put in here, with its new part and lubricant; else it was snug already.</param>
public sealed record RefitFit(PlannedTightening Tightening, RefitStage Stage, bool IsFitted);

/// <summary>A step of the refit.</summary>
/// <param name="Number">Its number, from 1.</param>
/// <param name="Title">What it is.</param>
/// <param name="Reverses">The task it puts back; null where it is none.</param>
/// <param name="Fits">What is tightened.</param>
/// <param name="Then">What is done besides, as the task says.</param>
public sealed record RefitStep(int Number, string Title, JobTask? Reverses, IReadOnlyList<RefitFit> Fits, IReadOnlyList<string> Then);

/// <summary>
/// Puts the refit in order: the tasks mirrored; what must stand on its wheels for its torque is snug until the mirrored
/// lift, and gets its torque right behind it.
/// </summary>
internal sealed class RefitOrder
{
    private const string OnItsWheels = "On its wheels, chocked";

    private readonly Job _job;
    private readonly JobStates _states;
    private readonly IReadOnlyList<PlannedTightening> _refit;
    private readonly List<RefitStep> _steps = [];
    private readonly SortedSet<int> _snug = [];
    private readonly bool[] _fitted;

    private RefitOrder(Job job, JobStates states, IReadOnlyList<PlannedTightening> refit) =>
        (_job, _states, _refit, _fitted) = (job, states, refit, new bool[refit.Count]);

    /// <summary>The steps.</summary>
    /// <param name="job">The job.</param>
    /// <param name="states">Its states.</param>
    /// <param name="sequence">All its tasks in the order of work, done and to do.</param>
    /// <param name="refit">How each fastener goes back, by its index.</param>
    /// <returns>The steps in order.</returns>
    internal static IReadOnlyList<RefitStep> Of(
        Job job, JobStates states, IReadOnlyList<JobTask> sequence, IReadOnlyList<PlannedTightening> refit)
    {
        var order = new RefitOrder(job, states, refit);
        IReadOnlyList<IReadOnlySet<string>> during = StateTrack.During(
            [.. sequence.Select(task => task.Rules)], job.AtStart, [.. Enumerable.Range(0, sequence.Count)]);
        var off = sequence.SelectMany(task => task.TakesOff).ToHashSet();
        for (int i = sequence.Count - 1; i >= 0; i--)
        {
            order.PutBack(sequence[i], during[i], off);
            order.Lowered(sequence.Take(i), during[i]);
        }

        order.Rest();
        order.Again();
        return order._steps;
    }

    /// <summary>A task mirrored: what it took off goes on, the last first; what it only loosened is tightened.</summary>
    private void PutBack(JobTask task, IReadOnlySet<string> states, HashSet<int> off)
    {
        bool lifted = _states.IsLifted(states);
        var fits = new List<RefitFit>();
        foreach (int i in task.TakesOff.Reverse())
        {
            bool wait = lifted && NeedsGround(_job.Fasteners[i]);
            fits.Add(Fit(i, wait ? RefitStage.Snug : RefitStage.Full));
        }

        foreach (int i in task.Loosens.Where(i => !off.Contains(i) || _snug.Contains(i) && !lifted))
        {
            fits.Add(Fit(i, RefitStage.Full));
        }

        if (fits.Count > 0 || task.Refit.Count > 0 || task.Rules.Gives.Count + task.Rules.Ends.Count > 0)
        {
            Add(task.Name, task, fits, task.Refit);
        }
    }

    /// <summary>Once it stands on its wheels, what is still snug gets its torque, unless a task to come does that.</summary>
    private void Lowered(IEnumerable<JobTask> toCome, IReadOnlySet<string> states)
    {
        int[] now = _snug.Count == 0 || _states.IsLifted(states) ? [] : [.. _snug.Except(toCome.SelectMany(task => task.Loosens))];
        if (now.Length > 0)
        {
            Add(OnItsWheels, null, [.. now.Select(i => Fit(i, RefitStage.Full))], []);
        }
    }

    private RefitFit Fit(int i, RefitStage stage)
    {
        bool first = !_fitted[i];
        _fitted[i] = true;
        _ = stage == RefitStage.Snug ? _snug.Add(i) : _snug.Remove(i);
        return new RefitFit(_refit[i], stage, first);
    }

    /// <summary>What is still snug, and what is in no task.</summary>
    private void Rest()
    {
        if (_snug.Count > 0)
        {
            Add(OnItsWheels, null, [.. _snug.ToArray().Select(i => Fit(i, RefitStage.Full))], []);
        }

        int[] left = [.. Enumerable.Range(0, _fitted.Length).Where(i => !_fitted[i])];
        if (left.Length > 0)
        {
            Add("In no task", null, [.. left.Select(i => Fit(i, RefitStage.Full))], []);
        }
    }

    /// <summary>What is checked again after the first drive.</summary>
    private void Again()
    {
        foreach (var group in _refit.Where(planned => planned.Fastener.RetorqueAfter is not null)
            .GroupBy(planned => planned.Fastener.RetorqueAfter!, StringComparer.OrdinalIgnoreCase))
        {
            Add($"Torque again after {group.Key}", null, [.. group.Select(planned => new RefitFit(planned, RefitStage.Full, false))], []);
        }
    }

    private void Add(string title, JobTask? task, IReadOnlyList<RefitFit> fits, IReadOnlyList<string> then) =>
        _steps.Add(new RefitStep(_steps.Count + 1, title, task, fits, then));

    private static bool NeedsGround(JobFastener fastener) => !fastener.Adjustable && (fastener.RideHeight || fastener.Wheel is not null);
}
