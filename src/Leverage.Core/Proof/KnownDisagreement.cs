namespace Leverage.Proof;

/// <summary>Published rows that do not agree with the formula for one and the same reason.</summary>
/// <param name="Reason">What is known of the reason.</param>
/// <param name="Outcomes">The rows, worked out; at least one.</param>
public sealed record KnownDisagreement(string Reason, IReadOnlyList<CheckOutcome> Outcomes)
{
    /// <summary>The formula that stands against the print.</summary>
    public string Formula => Outcomes[0].Row.Formula.Name;

    /// <summary>Least deviation, formula over print less 1, in percent.</summary>
    public double LeastPercent => Outcomes.Min(o => o.DeviationPercent);

    /// <summary>Greatest deviation, formula over print less 1, in percent.</summary>
    public double MostPercent => Outcomes.Max(o => o.DeviationPercent);

    /// <summary>Gathers rows by formula and reason, in the order of the file.</summary>
    /// <param name="outcomes">The rows, worked out.</param>
    /// <returns>One entry a reason.</returns>
    public static IReadOnlyList<KnownDisagreement> Gather(IReadOnlyList<CheckOutcome> outcomes)
    {
        ArgumentNullException.ThrowIfNull(outcomes);
        var gathered = new List<(string Formula, string Reason, List<CheckOutcome> Outcomes)>();
        foreach (CheckOutcome outcome in outcomes)
        {
            var (formula, reason) = (outcome.Row.Formula.Name, outcome.Row.Note);
            int known = gathered.FindIndex(g => g.Formula == formula && g.Reason == reason);
            if (known < 0)
            {
                gathered.Add((formula, reason, [outcome]));
            }
            else
            {
                gathered[known].Outcomes.Add(outcome);
            }
        }

        return [.. gathered.Select(g => new KnownDisagreement(g.Reason, g.Outcomes))];
    }
}
