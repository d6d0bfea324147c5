using System.Globalization;
using Leverage.BreakLoose;
using Leverage.Outcomes;
using Leverage.Probability;

namespace Leverage.Proof;

/// <summary>
/// A sequence of pulls from a row's numbers: the nut as in <see cref="ChanceInputs"/>, <c>held</c>, its growth
/// <c>soakedMedian</c> and <c>soakedSigma</c> from the pull <c>soakedFrom</c> on; <c>pulls</c>, and of each <c>hand1</c>,
/// <c>handSigma1</c>, <c>handCap1</c>; <c>tool1</c>, <c>toolSigma1</c> from pull <c>toolFrom1</c> to <c>toolTo1</c>; corners;
/// a tube from <c>tubeFrom</c> to <c>tubeTo</c>. <c>by</c> is the pull after which it is asked.
/// </summary>
internal static class SequenceInputs
{
    /// <summary>Where things stand after the pull asked for.</summary>
    internal static ByThen By(CheckInputs inputs)
    {
        Fastener fastener = ChanceInputs.Fastener(inputs);
        BreakLooseTorque nut = BreakLooseSpread.Torque(fastener);
        nut = inputs.Find("held") is { } held ? nut.HavingHeld(held) : nut;
        BreakLooseTorque soaked = inputs.Find("soakedMedian") is { } median
            ? BreakLooseSpread.Torque(fastener with
            {
                Condition = fastener.Condition with { Growth = new Growth(median, inputs["soakedSigma"]) },
            })
            : nut;
        var pulls = new List<Pull>();
        for (int i = 1; i <= inputs["pulls"]; i++)
        {
            bool tubed = inputs.Find("tubeFrom") <= i && i <= inputs.Find("tubeTo");
            pulls.Add(new Pull(
                inputs.Find("soakedFrom") <= i ? soaked : nut,
                new Strength(inputs[N("hand", i)], inputs[N("handSigma", i)], inputs.Find(N("handCap", i)) ?? double.PositiveInfinity),
                Risks(inputs, fastener, i),
                tubed ? new Sliding(new SplitLogNormal(inputs["tube"], inputs["tubeBelow"], inputs["tubeAbove"]), inputs["leastTube"]) : null,
                tubed ? "tube" : ""));
        }

        return PullSequence.Run(pulls)[(int)inputs["by"] - 1];
    }

    private static List<(string Key, Risk Risk)> Risks(CheckInputs inputs, Fastener fastener, int pull)
    {
        var risks = new List<(string, Risk)>();
        for (int i = 1; inputs.Find(N("tool", i)) is { } median; i++)
        {
            if (inputs[N("toolFrom", i)] <= pull && pull <= inputs[N("toolTo", i)])
            {
                risks.Add((N("tool", i), new Risk(RiskKind.ToolGives, new Strength(median, inputs[N("toolSigma", i)]))));
            }
        }

        if (BreakLooseSpread.Stud(fastener) is { } stud)
        {
            risks.Add(("stud", new Risk(RiskKind.StudTwistsOff, stud)));
        }

        if (ChanceInputs.Corners(inputs) is { } corners)
        {
            risks.Add(("corners", corners));
        }

        return risks;
    }

    private static string N(string name, int number) => name + number.ToString(CultureInfo.InvariantCulture);
}
