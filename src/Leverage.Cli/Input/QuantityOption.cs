using System.CommandLine;
using Leverage.Reading;
using UnitsNet;

namespace Leverage.Cli.Input;

/// <summary>Options that take a number and its unit.</summary>
internal static class QuantityOption
{
    /// <summary>A torque, such as 85Nm or 63ft-lb.</summary>
    internal static Asked<Torque?> Torque(string name, string description) =>
        new Asked<Torque?>(name, "TORQUE", description, text => QuantityReader.Torque(text));

    /// <summary>A length, such as 600mm or 24in.</summary>
    internal static Asked<Length?> Length(string name, string description, bool orZero = false) =>
        new Asked<Length?>(name, "LENGTH", description, text => QuantityReader.Length(text, orZero));

    /// <summary>A force, such as 450N or 100lbf.</summary>
    internal static Asked<Force?> Force(string name, string description) =>
        new Asked<Force?>(name, "FORCE", description, text => QuantityReader.Force(text));

    /// <summary>A mass, such as 82kg or 180lb.</summary>
    internal static Asked<Mass?> Mass(string name, string description, double mostKg) =>
        new Asked<Mass?>(name, "MASS", description, text => QuantityReader.Mass(text, mostKg));

    /// <summary>A stress, such as 640MPa or 93ksi.</summary>
    internal static Asked<Pressure?> Stress(string name, string description) =>
        new Asked<Pressure?>(name, "STRESS", description, text => QuantityReader.Stress(text));

    /// <summary>An angle, such as 30deg.</summary>
    internal static Asked<Angle?> Angle(string name, string description, double mostDegrees) =>
        new Asked<Angle?>(name, "ANGLE", description, text => QuantityReader.Angle(text, mostDegrees));

    /// <summary>A share, such as 75% or 0.75.</summary>
    internal static Asked<double?> Share(string name, string description) =>
        new Asked<double?>(name, "SHARE", description, text => QuantityReader.Share(text));

    /// <summary>A plain number, such as a coefficient of friction.</summary>
    internal static Asked<double?> Number(string name, string description, double least, double most) =>
        new Asked<double?>(name, "NUMBER", description, text => QuantityReader.Number(text, least, most));
}
