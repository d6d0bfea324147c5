using System.Globalization;
using Leverage.BreakLoose;

namespace Leverage.Proof;

/// <summary>
/// What a nut takes after what was shown, from a row's numbers: <c>median</c>, <c>sigma</c>, or <c>median2</c> as well, each half; <c>extra</c>, <c>within</c>, <c>held</c>; <c>came1</c>, <c>alike1</c> and so on.
/// </summary>
internal static class ShownInputs
{
    /// <summary>The torque after what was shown.</summary>
    internal static BreakLooseTorque Torque(CheckInputs inputs)
    {
        List<double> medians = [inputs["median"], .. inputs.Find("median2") is { } second ? (double[])[second] : []];
        NutCase[] cases = [.. medians.Select(median => new NutCase(1.0 / medians.Count, Math.Log(median), inputs.Find("extra") ?? 0, default))];
        var nut = new BreakLooseTorque(cases, new GrowthCurve(new Growth(1, inputs["sigma"])));
        return nut.HavingSeen(Numbered(inputs, "came"), Numbered(inputs, "alike"), inputs.Find("within") ?? LikeNuts.Within).HavingHeld(inputs.Find("held") ?? 0);
    }

    private static List<double> Numbered(CheckInputs inputs, string name)
    {
        var values = new List<double>();
        while (inputs.Find(name + (values.Count + 1).ToString(CultureInfo.InvariantCulture)) is { } value)
        {
            values.Add(value);
        }

        return values;
    }
}
