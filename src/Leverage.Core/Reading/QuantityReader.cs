using System.Globalization;
using UnitsNet;
using UnitsNet.Units;

namespace Leverage.Reading;

/// <summary>Reads a number and its unit as people write them; every refusal says what, why and the cure.</summary>
public static class QuantityReader
{
    /// <summary>Beyond any range in any unit, yet far from where a conversion overflows.</summary>
    private const double Beyond = 1e30;

    /// <summary>A torque, such as <c>460Nm</c>, <c>340 ft-lb</c>, <c>47kgf.m</c>.</summary>
    /// <param name="text">What the person wrote.</param>
    /// <returns>The torque, 0.01 N·m to 50 kN·m.</returns>
    /// <exception cref="InputException">Not a torque, no unit, or outside the range.</exception>
    public static Torque Torque(string text)
    {
        var (value, unit) = Read(text, QuantityKind.Torque);
        var torque = UnitsNet.Torque.From(value, (TorqueUnit)unit);
        Within(text, torque.NewtonMeters, 0.01, 50_000, "0.01Nm to 50000Nm");
        return torque;
    }

    /// <summary>A length, such as <c>600mm</c>, <c>24in</c>, <c>2ft</c>, <c>15/16in</c>.</summary>
    /// <param name="text">What the person wrote.</param>
    /// <param name="orZero">Whether 0 is a sensible length here.</param>
    /// <returns>The length, 0.1 mm to 10 m.</returns>
    /// <exception cref="InputException">Not a length, no unit, or outside the range.</exception>
    public static Length Length(string text, bool orZero = false)
    {
        var (value, unit) = Read(text, QuantityKind.Length);
        var length = UnitsNet.Length.From(value, (LengthUnit)unit);
        Within(text, length.Millimeters, orZero ? 0 : 0.1, 10_000, orZero ? "0mm to 10m" : "0.1mm to 10m");
        return length;
    }

    /// <summary>A force, such as <c>450N</c>, <c>100lbf</c>.</summary>
    /// <param name="text">What the person wrote.</param>
    /// <returns>The force, 1 N to 100 kN.</returns>
    /// <exception cref="InputException">Not a force, no unit, or outside the range.</exception>
    public static Force Force(string text)
    {
        var (value, unit) = Read(text, QuantityKind.Force);
        var force = UnitsNet.Force.From(value, (ForceUnit)unit);
        Within(text, force.Newtons, 1, 100_000, "1N to 100kN");
        return force;
    }

    /// <summary>A mass, such as <c>82kg</c>, <c>180lb</c>.</summary>
    /// <param name="text">What the person wrote.</param>
    /// <param name="mostKg">The largest mass that makes sense here, kg.</param>
    /// <returns>The mass, 1 kg to the largest.</returns>
    /// <exception cref="InputException">Not a mass, no unit, or outside the range.</exception>
    public static Mass Mass(string text, double mostKg)
    {
        var (value, unit) = Read(text, QuantityKind.Mass);
        var mass = UnitsNet.Mass.From(value, (MassUnit)unit);
        Within(text, mass.Kilograms, 1, mostKg, string.Create(CultureInfo.InvariantCulture, $"1kg to {mostKg}kg"));
        return mass;
    }

    /// <summary>A stress or strength, such as <c>640MPa</c>, <c>36ksi</c>.</summary>
    /// <param name="text">What the person wrote.</param>
    /// <returns>The stress, 1 MPa to 5 GPa.</returns>
    /// <exception cref="InputException">Not a stress, no unit, or outside the range.</exception>
    public static Pressure Stress(string text)
    {
        var (value, unit) = Read(text, QuantityKind.Stress);
        var stress = Pressure.From(value, (PressureUnit)unit);
        Within(text, stress.Megapascals, 1, 5000, "1MPa to 5GPa");
        return stress;
    }

    /// <summary>An angle, such as <c>20deg</c>.</summary>
    /// <param name="text">What the person wrote.</param>
    /// <param name="mostDegrees">The largest angle that makes sense here, degrees.</param>
    /// <returns>The angle, 0 to the largest.</returns>
    /// <exception cref="InputException">Not an angle, no unit, or outside the range.</exception>
    public static Angle Angle(string text, double mostDegrees)
    {
        var (value, unit) = Read(text, QuantityKind.Angle);
        var angle = UnitsNet.Angle.From(value, (AngleUnit)unit);
        Within(text, angle.Degrees, 0, mostDegrees, string.Create(CultureInfo.InvariantCulture, $"0deg to {mostDegrees}deg"));
        return angle;
    }

    /// <summary>A rise of temperature, such as <c>150K</c>, <c>150C</c>, <c>270F</c>.</summary>
    /// <param name="text">What the person wrote.</param>
    /// <returns>The difference, 1 K to 1000 K.</returns>
    /// <exception cref="InputException">Not a temperature difference, no unit, or outside the range.</exception>
    public static TemperatureDelta Warming(string text)
    {
        var (value, unit) = Read(text, QuantityKind.Warming);
        var warming = TemperatureDelta.From(value, (TemperatureDeltaUnit)unit);
        Within(text, warming.Kelvins, 1, 1000, "1K to 1000K");
        return warming;
    }

    /// <summary>A share, such as <c>75%</c> or <c>0.75</c>.</summary>
    /// <param name="text">What the person wrote.</param>
    /// <returns>The share, above 0 to 1.</returns>
    /// <exception cref="InputException">Not a share, or outside the range.</exception>
    public static double Share(string text)
    {
        var (value, rest) = NumberText.Split(text);
        double share = rest switch
        {
            "" => value,
            "%" => value / 100,
            _ => throw Wrong(text, rest, QuantityKind.Share),
        };
        Within(text, share, 0.001, 1, "0.1% to 100%");
        return share;
    }

    /// <summary>A plain number, such as a coefficient of friction, <c>0.14</c>.</summary>
    /// <param name="text">What the person wrote.</param>
    /// <param name="least">The smallest value accepted.</param>
    /// <param name="most">The largest value accepted.</param>
    /// <returns>The number.</returns>
    /// <exception cref="InputException">Not a number, a unit behind it, or outside the range.</exception>
    public static double Number(string text, double least, double most)
    {
        var (value, rest) = NumberText.Split(text);
        if (rest.Length > 0)
        {
            throw new InputException($"cannot read '{text}': a plain number is wanted, without '{rest}'.");
        }

        Within(text, value, least, most, string.Create(CultureInfo.InvariantCulture, $"{least} to {most}"));
        return value;
    }

    private static (double Value, int Unit) Read(string text, QuantityKind kind)
    {
        ArgumentNullException.ThrowIfNull(text);
        var (value, rest) = NumberText.Split(text);
        if (rest.Length == 0)
        {
            throw new InputException($"cannot read '{text}': it has no unit. {UnitAdvice.TwoReadings(text.Trim(), value, kind)}");
        }

        return UnitNames.TryFind(rest, out QuantityKind found, out int unit) && found == kind
            ? (Math.Clamp(value, -Beyond, Beyond), unit)
            : throw Wrong(text, rest, kind);
    }

    private static InputException Wrong(string text, string rest, QuantityKind kind) =>
        new($"cannot read '{text}' as {UnitAdvice.Article(kind)}. {UnitAdvice.Why(rest, kind)} {UnitAdvice.Example(kind)}");

    private static void Within(string text, double value, double least, double most, string accepted)
    {
        if (!(value >= least && value <= most))
        {
            throw new InputException($"cannot use '{text}': accepted is {accepted}.");
        }
    }
}
