using Leverage.Probability;
using System.Globalization;
using Leverage.Friction;
using Leverage.BreakLoose;
using Leverage.Outcomes;
using Leverage.Tables;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Proof;

/// <summary>
/// The three chances from a row's numbers: <c>book</c>, <c>growthMedian</c>, <c>growthSigma</c>, <c>prevailing</c>; a
/// thread's <c>diameter</c> and <c>pitch</c> with its friction; <c>hand</c>, <c>handSigma</c>, <c>handCap</c>;
/// <c>link1</c>, <c>linkSigma1</c> and so on. The bearing face is the table's, as in any answer.
/// </summary>
internal static class ChanceInputs
{
    /// <summary>Chances that the joint comes undone and that it stays stuck.</summary>
    internal static (double ComesLoose, double StaysTight) Chances(CheckInputs inputs)
    {
        var links = new List<Strength>();
        while (inputs.Find(Numbered("link", links)) is { } median)
        {
            links.Add(new Strength(median, inputs[Numbered("linkSigma", links)]));
        }

        var hand = new Strength(inputs["hand"], inputs["handSigma"], inputs.Find("handCap") ?? double.PositiveInfinity);
        return CompetingRisks.Split(BreakLooseSpread.Torque(Fastener(inputs)), hand, links.ToArray(), new double[links.Count]);
    }

    private static string Numbered(string name, List<Strength> before) =>
        name + (before.Count + 1).ToString(CultureInfo.InvariantCulture);

    private static Fastener Fastener(CheckInputs inputs)
    {
        ScrewThread? thread = inputs.Find("diameter") is { } diameter ? Thread(diameter, inputs["pitch"]) : null;
        var growth = new Growth(inputs["growthMedian"], inputs["growthSigma"]);
        GrowthBasis basis = thread is null ? GrowthBasis.Book : GrowthBasis.Loosening;
        return new Fastener
        {
            BookTorque = Torque.FromNewtonMillimeters(inputs["book"]),
            Condition = new Condition("check", "a check's own", basis, growth, 0, 1, "the row", ValueStatus.Derived),
            Friction = thread is null
                ? FrictionRange.About(FrictionRange.Default)
                : new FrictionRange(inputs["frictionLow"], inputs["friction"], inputs["frictionHigh"]),
            Thread = thread,
            Prevailing = Torque.FromNewtonMillimeters(inputs.Find("prevailing") ?? 0),
        };
    }

    private static ScrewThread Thread(double diameterMm, double pitchMm) => new(
        FormattableString.Invariant($"M{diameterMm}x{pitchMm}"),
        ThreadFamily.Metric,
        Length.FromMillimeters(diameterMm),
        Length.FromMillimeters(pitchMm));
}
