using Leverage.Reading;
using Leverage.Workshop.Ordering;

namespace Leverage.Workshop.Jobs;

/// <summary>States that look as if they were to hold a wheel, and do not: misspelt, or said in other words.</summary>
internal static class HoldingWords
{
    /// <summary>Letters a state may differ by and still be meant.</summary>
    private const int Slips = 2;

    /// <summary>What people say instead.</summary>
    private static readonly (string Phrase, string State)[] Others =
    [
        ("handbrake", JobStates.ParkingBrake), ("hand brake", JobStates.ParkingBrake), ("handbrake on", JobStates.ParkingBrake),
        ("parking brake on", JobStates.ParkingBrake), ("park brake", JobStates.ParkingBrake),
        ("first gear", JobStates.InGear), ("gear in", JobStates.InGear), ("in first gear", JobStates.InGear), ("gear engaged", JobStates.InGear),
        ("on the ground", JobStates.WheelsDown), ("on its wheels", JobStates.WheelsDown), ("wheels on the ground", JobStates.WheelsDown),
        ("foot on the brake", JobStates.FootBrake), ("brake pedal", JobStates.FootBrake), ("helper on the brake", JobStates.FootBrake),
        ("chock", JobStates.Chocked), ("chocks", JobStates.Chocked), ("wheels chocked", JobStates.Chocked), ("rear wheels chocked", JobStates.Chocked),
        ("bar on the studs", JobStates.StudBar), ("bar across studs", JobStates.StudBar),
    ];

    /// <summary>A sentence for each state that is near to one that holds, and none itself.</summary>
    internal static IEnumerable<string> NearMisses(Job job)
    {
        string[] known = [.. JobStates.Known, .. job.Chest.Holds.Select(hold => hold.Name)];
        IEnumerable<string> states = job.AtStart.Concat(job.Rules.SelectMany(rules => rules.Gives)).Select(JobStates.Plain)
            .Distinct(TaskRules.Names).Where(state => !known.Contains(state, TaskRules.Names));
        foreach (string state in states)
        {
            string? meant = Others.FirstOrDefault(other => TaskRules.Names.Equals(other.Phrase, state)).State
                ?? known.FirstOrDefault(one => one.Length > 5 && NearestNames.Distance(one.ToUpperInvariant(), state.ToUpperInvariant()) <= Slips);
            if (meant is not null)
            {
                yield return $"\"{state}\" holds nothing: write \"{meant}\" if that is meant.";
            }
        }
    }
}
