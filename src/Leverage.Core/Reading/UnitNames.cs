using UnitsNet.Units;

namespace Leverage.Reading;

/// <summary>The spellings of units a person may write, one table for all kinds; letter case counts only where two units differ by it.</summary>
internal static class UnitNames
{
    private static readonly Dictionary<string, Meaning> Known = Build();

    /// <summary>Every spelling there is, in no order.</summary>
    internal static IEnumerable<string> All => Known.Keys;

    /// <summary>The kind and UnitsNet unit a spelling stands for.</summary>
    internal static bool TryFind(string spelling, out QuantityKind kind, out int unit)
    {
        Meaning? found = Known.GetValueOrDefault(spelling);
        (kind, unit) = found is null ? default : (found.Kind, found.Unit);
        return found is not null;
    }

    /// <summary>The UnitsNet unit of a kind that a spelling stands for, in any letter case where one unit alone is spelt so.</summary>
    internal static bool TryFind(string spelling, QuantityKind kind, out int unit)
    {
        if (TryFind(spelling, out QuantityKind found, out unit))
        {
            return found == kind;
        }

        int[] near = [.. Known.Where(known => known.Value.Kind == kind && known.Key.Equals(spelling, StringComparison.OrdinalIgnoreCase))
            .Select(known => known.Value.Unit).Distinct()];
        unit = near is [var only] ? only : 0;
        return near.Length == 1;
    }

    /// <summary>Every spelling of a kind, as written.</summary>
    internal static IEnumerable<string> Of(QuantityKind kind)
    {
        foreach (var (spelling, entry) in Known)
        {
            if (entry.Kind == kind)
            {
                yield return spelling;
            }
        }
    }

    /// <summary>The first spelling of a unit.</summary>
    /// <exception cref="ArgumentException">The unit is not read here.</exception>
    internal static string Spelling(QuantityKind kind, int unit)
    {
        foreach (var (spelling, entry) in Known)
        {
            if (entry.Kind == kind && entry.Unit == unit)
            {
                return spelling;
            }
        }

        throw new ArgumentException("This unit is not read here.", nameof(unit));
    }

    private static Dictionary<string, Meaning> Build()
    {
        var names = new Dictionary<string, Meaning>(160, StringComparer.Ordinal);
        AddTorques(names);
        AddLengths(names);
        Add(names, QuantityKind.Force, (int)ForceUnit.Newton, "N");
        Add(names, QuantityKind.Force, (int)ForceUnit.Kilonewton, "kN");
        Add(names, QuantityKind.Force, (int)ForceUnit.Decanewton, "daN");
        Add(names, QuantityKind.Force, (int)ForceUnit.PoundForce, "lbf");
        Add(names, QuantityKind.Force, (int)ForceUnit.KilogramForce, "kgf", "kp");
        Add(names, QuantityKind.Mass, (int)MassUnit.Kilogram, "kg");
        Add(names, QuantityKind.Mass, (int)MassUnit.Gram, "g");
        Add(names, QuantityKind.Mass, (int)MassUnit.Tonne, "t");
        Add(names, QuantityKind.Mass, (int)MassUnit.Pound, "lb", "lbs");
        Add(names, QuantityKind.Mass, (int)MassUnit.Stone, "st");
        Add(names, QuantityKind.Stress, (int)PressureUnit.Megapascal, "MPa");
        Add(names, QuantityKind.Stress, (int)PressureUnit.NewtonPerSquareMillimeter, "N/mm2", "N/mm²");
        Add(names, QuantityKind.Stress, (int)PressureUnit.Gigapascal, "GPa");
        Add(names, QuantityKind.Stress, (int)PressureUnit.PoundForcePerSquareInch, "psi");
        Add(names, QuantityKind.Stress, (int)PressureUnit.KilopoundForcePerSquareInch, "ksi", "kpsi");
        Add(names, QuantityKind.Stress, (int)PressureUnit.KilogramForcePerSquareMillimeter, "kgf/mm2", "kgf/mm²");
        Add(names, QuantityKind.Angle, (int)AngleUnit.Degree, "deg", "°");
        Add(names, QuantityKind.Angle, (int)AngleUnit.Radian, "rad");
        Add(names, QuantityKind.TemperatureRise, (int)TemperatureDeltaUnit.Kelvin, "K");
        Add(names, QuantityKind.TemperatureRise, (int)TemperatureDeltaUnit.DegreeCelsius, "C", "°C", "degC");
        Add(names, QuantityKind.TemperatureRise, (int)TemperatureDeltaUnit.DegreeFahrenheit, "F", "°F", "degF");
        Add(names, QuantityKind.Share, (int)RatioUnit.Percent, "%");
        return names;
    }

    private static void AddTorques(Dictionary<string, Meaning> names)
    {
        Pairs(names, TorqueUnit.NewtonMeter, "N", "m");
        Pairs(names, TorqueUnit.NewtonCentimeter, "N", "cm");
        Pairs(names, TorqueUnit.NewtonMillimeter, "N", "mm");
        Pairs(names, TorqueUnit.KilonewtonMeter, "kN", "m");
        Pairs(names, TorqueUnit.KilogramForceMeter, "kgf", "m");
        Pairs(names, TorqueUnit.KilogramForceMeter, "kg", "m");
        Pairs(names, TorqueUnit.KilogramForceCentimeter, "kgf", "cm");
        Pairs(names, TorqueUnit.PoundForceFoot, "lbf", "ft");
        Pairs(names, TorqueUnit.PoundForceFoot, "lb", "ft");
        Pairs(names, TorqueUnit.PoundForceFoot, "ft", "lbf");
        Pairs(names, TorqueUnit.PoundForceFoot, "ft", "lb");
        Pairs(names, TorqueUnit.PoundForceInch, "lbf", "in");
        Pairs(names, TorqueUnit.PoundForceInch, "lb", "in");
        Pairs(names, TorqueUnit.PoundForceInch, "in", "lbf");
        Pairs(names, TorqueUnit.PoundForceInch, "in", "lb");
        Pairs(names, TorqueUnit.PoundForceFoot, "ft", "lbs");
        Pairs(names, TorqueUnit.PoundForceFoot, "lbs", "ft");
        Pairs(names, TorqueUnit.PoundForceInch, "in", "lbs");
        Pairs(names, TorqueUnit.PoundForceInch, "lbs", "in");
    }

    private static void AddLengths(Dictionary<string, Meaning> names)
    {
        Add(names, QuantityKind.Length, (int)LengthUnit.Millimeter, "mm");
        Add(names, QuantityKind.Length, (int)LengthUnit.Centimeter, "cm");
        Add(names, QuantityKind.Length, (int)LengthUnit.Meter, "m");
        Add(names, QuantityKind.Length, (int)LengthUnit.Kilometer, "km");
        Add(names, QuantityKind.Length, (int)LengthUnit.Inch, "in", "\"", "inch");
        Add(names, QuantityKind.Length, (int)LengthUnit.Foot, "ft", "'", "foot", "feet");
    }

    private static void Pairs(Dictionary<string, Meaning> names, TorqueUnit unit, string first, string second)
    {
        Add(names, QuantityKind.Torque, (int)unit, first + second);
        foreach (string joint in (ReadOnlySpan<string>)["·", ".", "-", "*", " ", "⋅"])
        {
            names.TryAdd(first + joint + second, new Meaning(QuantityKind.Torque, (int)unit));
        }
    }

    private static void Add(
        Dictionary<string, Meaning> names, QuantityKind kind, int unit, params ReadOnlySpan<string> spellings)
    {
        foreach (string spelling in spellings)
        {
            names.Add(spelling, new Meaning(kind, unit));
        }
    }

    /// <summary>What a spelling stands for.</summary>
    /// <param name="Kind">The kind of quantity.</param>
    /// <param name="Unit">UnitsNet's unit of that kind.</param>
    private sealed record Meaning(QuantityKind Kind, int Unit);
}
