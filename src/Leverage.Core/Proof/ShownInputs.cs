using System.Globalization;
using Leverage.BreakLoose;

namespace Leverage.Proof;

/// <summary>
/// What a nut takes after what was shown, from a row's numbers: <c>median</c>, <c>sigma</c>, or <c>median2</c>, <c>sigma2</c>
/// as well, each half; <c>extra</c>, <c>within</c>, <c>held</c>; <c>came1</c>, <c>alike1</c> and so on.
/// </summary>
internal static class ShownInputs
{
    /// <summary>The torque after what was shown.</summary>
    internal static ShownTorque Torque(CheckInputs inputs)
    {
        List<LogNormalPart> parts = [Part(inputs, "")];
        if (inputs.Find("median2") is not null)
        {
            parts = [parts[0] with { Weight = 0.5 }, Part(inputs, "2") with { Weight = 0.5 }];
        }

        var shown = new Shown(inputs.Find("held") ?? 0, Numbered(inputs, "came"), Numbered(inputs, "alike"));
        return new ShownTorque(parts, inputs.Find("extra") ?? 0, shown, inputs.Find("within") ?? Shown.Within);
    }

    private static LogNormalPart Part(CheckInputs inputs, string which) =>
        new(Math.Log(inputs["median" + which]), inputs["sigma" + which], 1);

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
