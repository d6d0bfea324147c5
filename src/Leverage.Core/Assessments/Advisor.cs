using Leverage.Holding;
using Leverage.BreakLoose;
using Leverage.Reading;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>Tries the changes a person can make, judges each, and keeps those that help, best first.</summary>
internal static class Advisor
{
    /// <summary>Most pieces of advice worth reading.</summary>
    private const int Most = 3;

    /// <summary>Smallest gain in the chance to come undone, less what gives, that is worth a line (judgement).</summary>
    private const double LeastGain = 0.02;

    internal static IReadOnlyList<Advice> For(LooseningAssessment now)
    {
        var found = new List<Advice>();
        foreach (var (kind, value, name, setup) in Changes(now))
        {
            if (Judged(setup) is { } after && Helps(now, after))
            {
                found.Add(new Advice(kind, value, name, now, after));
            }
        }

        found.Sort((a, b) => Compare(b.After, a.After));
        return Chosen(now, found);
    }

    /// <summary>For every stop that fired the best change that clears it, then the best of the rest.</summary>
    private static List<Advice> Chosen(LooseningAssessment now, List<Advice> ranked)
    {
        var chosen = new HashSet<Advice>(ReferenceEqualityComparer.Instance);
        foreach (VerdictRules stop in Enum.GetValues<VerdictRules>())
        {
            bool fired = stop != VerdictRules.None && (now.Judgement.Rules & VerdictOf.Stops & stop) == stop;
            if (fired && ranked.Find(advice => !advice.After.Judgement.Rules.HasFlag(stop)) is { } cure)
            {
                chosen.Add(cure);
            }
        }

        foreach (Advice advice in ranked)
        {
            if (chosen.Count < Most)
            {
                chosen.Add(advice);
            }
        }

        return [.. ranked.Where(chosen.Contains)];
    }

    private static IEnumerable<Change> Changes(LooseningAssessment now)
    {
        LooseningSetup setup = now.Setup;
        if (setup.Hold is { OnStands: true } stands)
        {
            yield return new Change(AdviceKind.OnTheGround, null, null, setup with { Hold = stands with { OnStands = false } });
        }

        foreach (var change in LeverChanges.Of(now).Concat(TubeChanges.Of(now)).Concat(HoldChanges(setup)).Concat(JointChanges(setup)))
        {
            yield return change;
        }
    }

    private static IEnumerable<Change> HoldChanges(LooseningSetup setup)
    {
        if (setup.Hold is not { OnStands: false } hold)
        {
            yield break;
        }

        Length height = hold.ChockHeight > Length.Zero ? hold.ChockHeight : hold.TyreRadius / 3;
        LooseningSetup With(params ReadOnlySpan<Restraint> more) =>
            setup with { Hold = hold with { By = [.. hold.By, .. more], ChockHeight = height } };
        bool chocked = hold.By.Contains(Restraint.Chock);
        bool helped = hold.By.Contains(Restraint.Helper);
        if (!chocked)
        {
            yield return new Change(AdviceKind.Chock, height, null, With(Restraint.Chock));
        }

        if (!helped)
        {
            yield return new Change(AdviceKind.Helper, null, null, With(Restraint.Helper));
        }

        if (!chocked && !helped)
        {
            yield return new Change(AdviceKind.ChockAndHelper, height, null, With(Restraint.Chock, Restraint.Helper));
        }
    }

    private static IEnumerable<Change> JointChanges(LooseningSetup setup)
    {
        if (!setup.Fastener.Soaked && setup.Fastener.Condition.LockerNm == 0)
        {
            yield return new Change(AdviceKind.Soak, null, null, setup with { Fastener = setup.Fastener with { Soaked = true } });
        }

        if (setup.Fastener is { Heating: null, Thread: not null, Grade: not null })
        {
            var heating = new Heating(HeatedPart.Stud, 100);
            yield return new Change(AdviceKind.HeatStud, TemperatureDelta.FromKelvins(100), null, setup with { Fastener = setup.Fastener with { Heating = heating } });
        }
    }

    private static LooseningAssessment? Judged(LooseningSetup setup)
    {
        try
        {
            return LooseningAssessor.WithoutAdvice(setup);
        }
        catch (InputException)
        {
            // The change does not fit this set-up (a tube that no longer goes over the bar): no advice.
            return null;
        }
    }

    private static bool Helps(LooseningAssessment now, LooseningAssessment after) =>
        after.Verdict < now.Verdict
            || after.Verdict == now.Verdict
                && (Score(after) > Score(now) + LeastGain || FewerRules(now, after) && Score(after) > Score(now) - LeastGain);

    private static bool FewerRules(LooseningAssessment now, LooseningAssessment after) =>
        int.PopCount((int)after.Judgement.Rules) < int.PopCount((int)now.Judgement.Rules);

    private static int Compare(LooseningAssessment a, LooseningAssessment b) =>
        a.Verdict != b.Verdict ? b.Verdict.CompareTo(a.Verdict) : Score(a).CompareTo(Score(b));

    /// <summary>What a change is worth: the chance to come undone, with what gives counted against it.</summary>
    private static double Score(LooseningAssessment assessment) =>
        assessment.Judgement.ComesLoose - assessment.Judgement.Gives;
}
