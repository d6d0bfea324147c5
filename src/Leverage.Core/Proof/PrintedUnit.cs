using System.Collections.Concurrent;
using Leverage.Reading;
using UnitsNet;
using UnitsNet.Units;

namespace Leverage.Proof;

/// <summary>
/// A unit as a source prints it, against the coherent set the formulas work in: N, mm, MPa, N·mm, rad, kg, K.
/// </summary>
public static class PrintedUnit
{
    private static readonly ConcurrentDictionary<string, (string Kind, double Factor)> Met = new(StringComparer.Ordinal);

    private static double Centimeter => Length.FromCentimeters(1).Millimeters;

    private static double Inch => Length.FromInches(1).Millimeters;

    /// <summary>What kind of quantity the unit is for, in words; energy and torque are one kind.</summary>
    /// <param name="unit">The unit as printed, such as <c>lbfft</c> or <c>cm3</c>; nothing for a bare number.</param>
    /// <returns>The kind.</returns>
    /// <exception cref="ArgumentException">The unit is not known.</exception>
    public static string Kind(string unit) => Find(unit).Kind;

    /// <summary>How many coherent units one printed unit holds.</summary>
    /// <param name="unit">The unit as printed, such as <c>lbfft</c> or <c>cm3</c>; nothing for a bare number.</param>
    /// <returns>The factor: 25.4 for <c>in</c>, 1000 for <c>kN</c>.</returns>
    /// <exception cref="ArgumentException">The unit is not known.</exception>
    public static double Factor(string unit) => Find(unit).Factor;

    private static (string Kind, double Factor) Find(string unit) =>
        Met.TryGetValue(unit, out var met) ? met : Met.GetOrAdd(unit, Read(unit));

    private static (string Kind, double Factor) Read(string unit) => unit switch
    {
        "" => ("number", 1),
        "mm" => ("length", 1),
        "N" => ("force", 1),
        "MPa" => ("stress", 1),
        _ => Section(unit) ?? Seldom(unit) ?? Everyday(unit)
            ?? throw new ArgumentException($"no unit '{unit}' is known", nameof(unit)),
    };

    private static (string Kind, double Factor)? Section(string unit) => unit switch
    {
        "mm2" => ("area", 1),
        "cm2" => ("area", Math.Pow(Centimeter, 2)),
        "in2" => ("area", Math.Pow(Inch, 2)),
        "mm3" => ("volume", 1),
        "cm3" => ("volume", Math.Pow(Centimeter, 3)),
        "in3" => ("volume", Math.Pow(Inch, 3)),
        "mm4" => ("inertia", 1),
        "1e6mm4" => ("inertia", 1e6),
        "cm4" => ("inertia", Math.Pow(Centimeter, 4)),
        "in4" => ("inertia", Math.Pow(Inch, 4)),
        "kg/m" => ("mass of a metre", 1),
        "lb/ft" => ("mass of a metre", Mass.FromPounds(1).Kilograms / Length.FromFeet(1).Meters),
        _ => null,
    };

    private static (string Kind, double Factor)? Seldom(string unit) => unit switch
    {
        "um" => ("length", Length.FromMicrometers(1).Millimeters),
        "kip" => ("force", Force.FromKilopoundsForce(1).Newtons),
        "J" => ("torque", Torque.FromNewtonMeters(1).NewtonMillimeters),
        "m/s" => ("speed", 1),
        "N/mm" => ("stiffness", 1),
        "MN/m" => ("stiffness", 1000),
        "Mlbf/in" => ("stiffness", Force.FromPoundsForce(1e6).Newtons / Inch),
        "Nmm2" => ("bending stiffness", 1),
        _ => null,
    };

    private static (string Kind, double Factor)? Everyday(string unit) =>
        !UnitNames.TryFind(unit, out var kind, out int found) ? null : kind switch
        {
            QuantityKind.Torque => ("torque", Torque.From(1, (TorqueUnit)found).NewtonMillimeters),
            QuantityKind.Length => ("length", Length.From(1, (LengthUnit)found).Millimeters),
            QuantityKind.Force => ("force", Force.From(1, (ForceUnit)found).Newtons),
            QuantityKind.Mass => ("mass", Mass.From(1, (MassUnit)found).Kilograms),
            QuantityKind.Stress => ("stress", Pressure.From(1, (PressureUnit)found).Megapascals),
            QuantityKind.Angle => ("angle", Angle.From(1, (AngleUnit)found).Radians),
            QuantityKind.TemperatureRise => ("rise", TemperatureDelta.From(1, (TemperatureDeltaUnit)found).Kelvins),
            _ => ("number", Ratio.From(1, (RatioUnit)found).DecimalFractions),
        };
}
