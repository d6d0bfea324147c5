using System.Globalization;

namespace Leverage.Reading;

/// <summary>The words of a refusal about a unit: what it is, what it could have been, what to write.</summary>
internal static class UnitAdvice
{
    /// <summary>The kind with its article: "a torque", "an angle".</summary>
    internal static string Article(QuantityKind kind) => kind switch
    {
        QuantityKind.Torque => "a torque",
        QuantityKind.Length => "a length",
        QuantityKind.Force => "a force",
        QuantityKind.Mass => "a mass",
        QuantityKind.Stress => "a stress",
        QuantityKind.Angle => "an angle",
        QuantityKind.TemperatureRise => "a rise of temperature",
        _ => "a share",
    };

    /// <summary>Why the unit does not do.</summary>
    internal static string Why(string unit, QuantityKind wanted)
    {
        if (UnitNames.TryFind(unit, out QuantityKind kind, out _))
        {
            string stands = $"{unit} is {Article(kind)}";
            return wanted == QuantityKind.Torque && kind == QuantityKind.Force
                ? $"{stands}; a torque is force × length."
                : wanted == QuantityKind.Force && kind == QuantityKind.Mass
                    ? $"{stands}; a force is in N, lbf or kgf."
                    : $"{stands}.";
        }

        var nearest = NearestNames.Of(unit, UnitNames.Of(wanted), 3);
        return nearest.Count > 0
            ? $"'{unit}' is no unit known here; nearest: {string.Join(", ", nearest)}."
            : $"'{unit}' is no unit known here.";
    }

    /// <summary>What to write instead.</summary>
    internal static string Example(QuantityKind kind) => kind switch
    {
        QuantityKind.Torque => "Write: 85Nm or 63ft-lb",
        QuantityKind.Length => "Write: 600mm or 24in",
        QuantityKind.Force => "Write: 450N or 100lbf",
        QuantityKind.Mass => "Write: 82kg or 180lb",
        QuantityKind.Stress => "Write: 640MPa or 93ksi",
        QuantityKind.Angle => "Write: 30deg",
        QuantityKind.TemperatureRise => "Write: 150K",
        _ => "Write: 75%",
    };

    /// <summary>The two likely readings of a number without a unit: guessing between them breaks studs.</summary>
    internal static string TwoReadings(string text, double value, QuantityKind kind) => kind switch
    {
        QuantityKind.Torque => Two(text, "Nm", "ft-lb", value, 1.3558, "N·m"),
        QuantityKind.Length => Two(text, "mm", "in", value, 25.4, "mm"),
        QuantityKind.Force => Two(text, "N", "lbf", value, 4.4482, "N"),
        QuantityKind.Mass => Two(text, "kg", "lb", value, 0.45359, "kg"),
        QuantityKind.Stress => Two(text, "MPa", "ksi", value, 6.8948, "MPa"),
        QuantityKind.TemperatureRise => Two(text, "K", "F", value, 1 / 1.8, "K"),
        _ => $"Write {text}deg.",
    };

    private static string Two(string text, string first, string second, double value, double factor, string unit) =>
        string.Create(CultureInfo.InvariantCulture, $"Write {text}{first}, or {text}{second} (which is {Figures(value * factor)} {unit}).");

    /// <summary>Three figures, written out as long as anybody would read them so.</summary>
    private static string Figures(double value)
    {
        double size = Math.Abs(value);
        if (size is not (> 1e-3 and < 1e7))
        {
            return value.ToString("G3", CultureInfo.InvariantCulture);
        }

        decimal step = (decimal)Math.Pow(10, Math.Floor(Math.Log10(size)) - 2);
        return (Math.Round((decimal)value / step) * step).ToString("0.######", CultureInfo.InvariantCulture);
    }
}
