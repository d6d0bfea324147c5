using UnitsNet;
using UnitsNet.Units;

namespace Leverage.Reading;

/// <summary>Reads a number and its unit as people write them; every refusal says what, why and the cure.</summary>
internal static class QuantityReader
{
    /// <summary>Beyond any range in any unit, yet far from where a conversion overflows.</summary>
    private const double Beyond = 1e30;

    /// <summary>A torque, such as <c>460Nm</c>, <c>340 ft-lb</c>, <c>47kgf.m</c>.</summary>
    internal static Torque Torque(string text)
    {
        var (value, unit) = Read(text, QuantityKind.Torque);
        return UnitsNet.Torque.From(value, (TorqueUnit)unit);
    }

    /// <summary>A length, such as <c>600mm</c>, <c>24in</c>, <c>2ft</c>, <c>15/16in</c>.</summary>
    internal static Length Length(string text)
    {
        var (value, unit) = Read(text, QuantityKind.Length);
        return UnitsNet.Length.From(value, (LengthUnit)unit);
    }

    /// <summary>A width across flats: a length, and a fraction without a unit is in inches: <c>15/16</c>, <c>1-1/4</c>.</summary>
    internal static Length AcrossFlats(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Contains('/', StringComparison.Ordinal) && NumberText.Split(text) is (var inches, "")
            ? UnitsNet.Length.FromInches(inches)
            : Length(text);
    }

    /// <summary>A force, such as <c>450N</c>, <c>100lbf</c>; a mass is a reading off a scale: <c>60kg</c>.</summary>
    internal static Force Force(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var (reading, rest) = NumberText.Split(text);
        if (UnitNames.TryFind(rest, QuantityKind.Mass, out int mass) && (MassUnit)mass is MassUnit.Kilogram or MassUnit.Pound)
        {
            reading = Math.Clamp(reading, -Beyond, Beyond);
            return (MassUnit)mass == MassUnit.Kilogram ? UnitsNet.Force.FromKilogramsForce(reading) : UnitsNet.Force.FromPoundsForce(reading);
        }

        var (value, unit) = Read(text, QuantityKind.Force);
        return UnitsNet.Force.From(value, (ForceUnit)unit);
    }

    /// <summary>A mass, such as <c>82kg</c>, <c>180lb</c>.</summary>
    internal static Mass Mass(string text)
    {
        var (value, unit) = Read(text, QuantityKind.Mass);
        return UnitsNet.Mass.From(value, (MassUnit)unit);
    }

    /// <summary>A stress or strength, such as <c>640MPa</c>, <c>36ksi</c>.</summary>
    internal static Pressure Stress(string text)
    {
        var (value, unit) = Read(text, QuantityKind.Stress);
        return Pressure.From(value, (PressureUnit)unit);
    }

    /// <summary>An angle, such as <c>20deg</c>.</summary>
    internal static Angle Angle(string text)
    {
        var (value, unit) = Read(text, QuantityKind.Angle);
        return UnitsNet.Angle.From(value, (AngleUnit)unit);
    }

    /// <summary>A rise of temperature, such as <c>150C</c>, <c>150K</c>, <c>270F</c>.</summary>
    internal static TemperatureDelta TemperatureRise(string text)
    {
        var (value, unit) = Read(text, QuantityKind.TemperatureRise);
        return TemperatureDelta.From(value, (TemperatureDeltaUnit)unit);
    }

    /// <summary>A share, such as <c>75%</c> or <c>0.75</c>.</summary>
    internal static double Share(string text)
    {
        var (value, rest) = NumberText.Split(text);
        return rest switch
        {
            "" => value,
            "%" => value / 100,
            _ => throw Wrong(text, rest, QuantityKind.Share),
        };
    }

    /// <summary>A plain number, such as a coefficient of friction, <c>0.14</c>.</summary>
    internal static double Number(string text)
    {
        var (value, rest) = NumberText.Split(text);
        return rest.Length == 0 ? value : throw new InputException($"cannot read '{text}': a plain number is wanted, without '{rest}'.");
    }

    private static (double Value, int Unit) Read(string text, QuantityKind kind)
    {
        ArgumentNullException.ThrowIfNull(text);
        var (value, rest) = NumberText.Split(text);
        return rest.Length == 0 ? throw new InputException($"cannot read '{text}': it has no unit. {UnitAdvice.TwoReadings(text.Trim(), value, kind)}")
            : UnitNames.TryFind(rest, kind, out int unit) ? (Math.Clamp(value, -Beyond, Beyond), unit)
            : throw Wrong(text, rest, kind);
    }

    private static InputException Wrong(string text, string rest, QuantityKind kind) =>
        new($"cannot read '{text}' as {UnitAdvice.Article(kind)}. {UnitAdvice.Why(rest, kind)} {UnitAdvice.Example(kind)}");
}
