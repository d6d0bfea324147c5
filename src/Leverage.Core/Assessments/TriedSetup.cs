using System.Globalization;
using System.Runtime.InteropServices;
using Leverage.Levers;
using Leverage.LoadPath;
using Leverage.Outcomes;
using Leverage.Reading;
using Leverage.Requests;

namespace Leverage.Assessments;

/// <summary>A set-up tried on a nut that is known already: judged, but not described.</summary>
internal sealed record TriedSetup(
    LooseningRequest Request, LooseningSetup Setup, NutFigures Nut, HandFigures Hand, LeverGeometry Lever, List<LinkLimit> Links, Circumstances Around, Judgement Judgement)
{
    /// <summary>Whether it is not safe.</summary>
    internal bool IsStop => Judgement.Verdict == Verdict.Stop;

    /// <summary>The set-up judged; null where it has no lever, or its pieces do not go together.</summary>
    /// <param name="request">The request.</param>
    /// <param name="nut">What the nut takes; null to work it out.</param>
    internal static TriedSetup? Of(LooseningRequest request, NutFigures? nut = null)
    {
        try
        {
            return Of(request, LooseningDefaults.Complete(request), nut);
        }
        catch (InputException)
        {
            // The nut alone was complete, so it is what was changed: a tube too loose on this bar, a chock and no load on the wheel.
            return null;
        }
    }

    /// <summary>Pulled steps with the chances by then, less a step that after all gains too little.</summary>
    /// <param name="pulled">The steps, in order, each with its set-up.</param>
    internal static List<LadderStep> Figured(List<(LadderStep Step, TriedSetup Tried)> pulled)
    {
        while (true)
        {
            IReadOnlyList<ByThen> states = PullSequence.Run([.. pulled.Select(pull => pull.Tried.Pull())]);
            int idle = Enumerable.Range(1, Math.Max(0, states.Count - 1))
                .FirstOrDefault(i => states[i].ComesLoose - states[i - 1].ComesLoose < LadderRank.LeastGain);
            if (idle == 0)
            {
                return [.. pulled.Zip(states, (pull, state) => pull.Step with { ComesLooseBy = state.ComesLoose, BreaksBy = state.Breaks })];
            }

            pulled.RemoveAt(idle);
        }
    }

    /// <summary>The same as a pull of a sequence: a part under the same limit is the same part.</summary>
    internal Pull Pull()
    {
        var risks = new List<(string, Risk)>(Links.Count + 1);
        foreach (LinkLimit link in Links)
        {
            string key = string.Create(CultureInfo.InvariantCulture, $"{link.Kind} {link.Name} {link.LimitNmm:R}");
            risks.Add((link.Kind == LinkKind.Stud ? "stud" : key, Judgement.RiskOf(link, Nut)));
        }

        if (Around.Hold is { } hold)
        {
            risks.Add((string.Create(CultureInfo.InvariantCulture, $"hold {hold.MedianNmm:R}"), Judgement.RiskOf(hold)));
        }

        return new Pull(Nut.Spread, Hand.Torque(Lever.ReachMm), risks, Around.Sliding, Setup.Tube is not { } tube ? "" : string.Create(CultureInfo.InvariantCulture, $"{tube.Bore.Millimeters} {Setup.Surface.Words}"));
    }

    private static TriedSetup? Of(LooseningRequest request, LooseningSetup setup, NutFigures? known)
    {
        if (setup.Geometry is not { } lever)
        {
            return null;
        }

        NutFigures nut = known ?? NutFigures.Of(setup.Fastener);
        HandFigures hand = HandFigures.Of(setup.Hands);
        List<LinkLimit> links = SetupLinks.Of(setup, lever);
        var around = Circumstances.Of(setup, nut, hand, lever, Circumstances.HoldOf(setup, setup.Hands.Stance.Push, nut, hand, lever));
        var judgement = Judgement.Of(nut, hand, lever.ReachMm, CollectionsMarshal.AsSpan(links), around, new double[links.Count]);
        return new TriedSetup(request, setup, nut, hand, lever, links, around, judgement);
    }
}
