using Leverage.BreakLoose;
using Leverage.Probability;

namespace Leverage.Outcomes;

/// <summary>A pull with its curves worked out once for all draws.</summary>
internal sealed class PreparedPull
{
    private readonly BreakLooseTorque _nut;
    private readonly Strength _hand;
    private readonly PreparedRisk[] _risks;
    private readonly int[]? _cases;

    private PreparedPull(Pull pull, PreparedRisk[] risks, int[]? cases, double staysOn) =>
        (_nut, _hand, _risks, _cases, StaysOn) = (pull.Nut, pull.Hand, risks, cases, staysOn);

    /// <summary>Chance that the tube stays on, given that it has at the pulls before.</summary>
    internal double StaysOn { get; }

    /// <summary>The pulls, things of one key counted as one, and how many things there are.</summary>
    internal static (int Keys, PreparedPull[] Pulls) Of(IReadOnlyList<Pull> pulls)
    {
        var keys = new Dictionary<string, int>(StringComparer.Ordinal);
        var stayed = new Dictionary<string, double>(StringComparer.Ordinal);
        var prepared = new PreparedPull[pulls.Count];
        for (int i = 0; i < prepared.Length; i++)
        {
            Pull pull = pulls[i];
            var risks = new PreparedRisk[pull.Risks.Count];
            for (int j = 0; j < risks.Length; j++)
            {
                string key = pull.Risks[j].Key;
                risks[j] = new PreparedRisk(keys.TryGetValue(key, out int known) ? known : keys[key] = keys.Count, pull.Risks[j].Risk);
            }

            double before = stayed.GetValueOrDefault(pull.TubeKey, 1);
            double now = pull.Tube is { } tube ? Math.Min(before, 1 - tube.Friction.Below(tube.LeastToStay)) : before;
            stayed[pull.TubeKey] = now;
            prepared[i] = new PreparedPull(pull, risks, Counterparts(pulls[0].Nut, pull.Nut), now / before);
        }

        return (keys.Count, prepared);
    }

    /// <summary>Torque that breaks the nut loose, N·mm.</summary>
    /// <param name="which">Case of the first pull's nut.</param>
    /// <param name="share">Share of all growth below its own, above 0 and below 1.</param>
    internal double Takes(int which, double share) => _nut.TorqueAt(CaseOf(which), share);

    /// <summary>Share of a case's growths that a torque moves.</summary>
    /// <param name="which">Case of the first pull's nut.</param>
    /// <param name="torque">Torque at the nut.</param>
    internal double ShareBelow(int which, in Reach torque) => _nut.ShareBelow(CaseOf(which), torque.LogNmm);

    /// <summary>Torque a person of some strength reaches.</summary>
    /// <param name="deviate">Normal deviate of the person's strength.</param>
    internal Reach Reaches(double deviate) => Reach.Of(Math.Min(_hand.CapNmm, _hand.MedianNmm * Math.Exp(_hand.Sigma * deviate)));

    /// <summary>Chance that everything stands a torque, given what it has stood before.</summary>
    /// <param name="which">Case of the first pull's nut.</param>
    /// <param name="torque">Torque at the nut.</param>
    /// <param name="stood">The most each thing has stood.</param>
    /// <param name="keep">Whether that is raised to what it stands now.</param>
    internal double Survives(int which, in Reach torque, Span<Stood> stood, bool keep)
    {
        double all = 1;
        foreach (ref readonly PreparedRisk risk in _risks.AsSpan())
        {
            double load = risk.IsStud ? Twist(which, torque.Nmm) : torque.LogNmm;
            ref Stood before = ref stood[risk.Key];
            if (load <= risk.LogLow || before.Happened && load <= before.LogNmm)
            {
                continue;
            }

            double survival = risk.Survival(load);
            all *= before.Happened ? survival / Math.Max(before.Chance, double.Epsilon) : survival;
            if (keep)
            {
                before = new Stood(true, load, survival);
            }
        }

        return all;
    }

    /// <summary>Log of the shank's torque, as if it had no tension.</summary>
    private double Twist(int which, double torqueNmm)
    {
        ShankState shank = _nut.Cases[CaseOf(which)].Shank;
        return Math.Log(shank.Torque(torqueNmm) / shank.StandsShare);
    }

    private int CaseOf(int which) => _cases is null ? which : _cases[which];

    /// <summary>For each case of a nut the one of the same place among another's; null where they go one to one.</summary>
    private static int[]? Counterparts(BreakLooseTorque first, BreakLooseTorque other)
    {
        if (first.Cases.Length == other.Cases.Length)
        {
            return null;
        }

        var counterparts = new int[first.Cases.Length];
        var (firsts, others) = (Shares(first), Shares(other));
        var (upTo, place, at) = (0.0, others[0], 0);
        for (int i = 0; i < counterparts.Length; i++)
        {
            while (at < others.Length - 1 && place < upTo + firsts[i] / 2)
            {
                place += others[++at];
            }

            counterparts[i] = at;
            upTo += firsts[i];
        }

        return counterparts;
    }

    /// <summary>Each case's part of all.</summary>
    private static double[] Shares(BreakLooseTorque nut)
    {
        NutCase[] cases = nut.Cases.ToArray();
        double whole = cases.Sum(one => one.Weight);
        return [.. cases.Select(one => one.Weight / whole)];
    }
}

/// <summary>A torque at the nut, its logarithm worked out once.</summary>
/// <param name="Nmm">The torque, N·mm.</param>
/// <param name="LogNmm">Its logarithm.</param>
internal readonly record struct Reach(double Nmm, double LogNmm)
{
    /// <summary>Of a torque, N·mm.</summary>
    internal static Reach Of(double torqueNmm) => new(torqueNmm, Math.Log(torqueNmm));
}

/// <summary>The most a thing has stood, if it was loaded at all.</summary>
/// <param name="Happened">Whether it was.</param>
/// <param name="LogNmm">The log torque.</param>
/// <param name="Chance">Chance that such a thing stands so much.</param>
internal readonly record struct Stood(bool Happened, double LogNmm, double Chance);

/// <summary>A risk of a prepared pull.</summary>
internal readonly struct PreparedRisk
{
    private readonly RiskCurve _curve;

    internal PreparedRisk(int key, Risk risk) => (Key, IsStud, _curve) = (key, risk.Kind == RiskKind.StudTwistsOff, new RiskCurve(risk));

    /// <summary>Number of the thing it happens to.</summary>
    internal int Key { get; }

    /// <summary>Whether it is the bolt or stud, whose load is the torque in its shank.</summary>
    internal bool IsStud { get; }

    /// <summary>Log torque it certainly stands.</summary>
    internal double LogLow => _curve.Low;

    /// <summary>Chance that it stands a log torque.</summary>
    internal double Survival(double logTorque) => _curve.At(logTorque).Survival;
}
