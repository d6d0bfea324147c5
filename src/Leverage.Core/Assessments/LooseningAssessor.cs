using System.Runtime.InteropServices;
using Leverage.Holding;
using Leverage.Levers;
using Leverage.LoadPath;

namespace Leverage.Assessments;

/// <summary>Judges a set-up: data goes in at the top and comes out as one assessment.</summary>
public static class LooseningAssessor
{
    /// <summary>What a set-up means, with advice.</summary>
    /// <param name="setup">What you have.</param>
    /// <returns>The assessment.</returns>
    /// <exception cref="Reading.InputException">Two things do not fit together.</exception>
    public static LooseningAssessment Assess(LooseningSetup setup)
    {
        return WithoutAdvice(setup);
    }

    /// <summary>What a set-up means, without looking for anything better.</summary>
    /// <param name="setup">What you have.</param>
    /// <returns>The assessment, its advice empty.</returns>
    /// <exception cref="Reading.InputException">Two things do not fit together.</exception>
    public static LooseningAssessment WithoutAdvice(LooseningSetup setup)
    {
        ArgumentNullException.ThrowIfNull(setup);
        NutFigures nut = NutFigures.Of(setup.Fastener);
        HandFigures hand = HandFigures.Of(setup.Hands);
        LeverGeometry? lever = setup.Geometry;
        List<LinkLimit> links = SetupLinks.Of(setup, lever);
        HoldCapacity? hold = Circumstances.HoldOf(setup, setup.Hands.Stance.Push, nut, hand, lever);
        double[] gives = new double[links.Count];
        Judgement judgement = Judgement.Of(
            nut, hand, lever?.ReachMm, CollectionsMarshal.AsSpan(links), Circumstances.Of(setup, nut, hand, lever, hold), gives);
        return new LooseningAssessment
        {
            Setup = setup,
            Nut = nut,
            Hand = hand,
            Lever = lever,
            Judgement = judgement,
            Links = Judged(CollectionsMarshal.AsSpan(links), gives),
            NotJudged = SetupLinks.NotJudged(setup, links),
            Tube = TubeAssessor.Assess(setup, nut, judgement, lever),
            Hold = hold is null ? null : new HoldAssessment(hold, Roll(setup)),
            Stands = Circumstances.StandsOf(setup, nut, hand, lever),
            Release = ReleaseAssessor.Assess(setup, nut, judgement.StrongPullNmm, lever),
            Heat = HeatAssessment.Of(setup.Fastener),
        };
    }

    private static JudgedLink[] Judged(ReadOnlySpan<LinkLimit> links, double[] gives)
    {
        var judged = new JudgedLink[links.Length];
        for (int i = 0; i < judged.Length; i++)
        {
            judged[i] = new JudgedLink(links[i], gives[i]);
        }

        return judged;
    }

    private static Roll? Roll(LooseningSetup setup) => setup.Hold is { Side: not Side.Unknown } hold
        ? RollDirection.Undoing(hold.Side, setup.Fastener.LeftHand)
        : null;
}
