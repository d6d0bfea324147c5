using System.Globalization;
using UnitsNet;

namespace Leverage.Reading;

/// <summary>Writes quantities as a person would, so that <see cref="QuantityReader"/> reads back the same.</summary>
internal static class QuantityWriter
{
    /// <summary>A quantity in the unit it was written in: <c>600mm</c>, <c>24in</c>, <c>460Nm</c>.</summary>
    /// <param name="quantity">The quantity; null for none.</param>
    /// <returns>Its number to the last digit and its unit; empty for none.</returns>
    /// <exception cref="ArgumentException">A quantity or unit that is not read here.</exception>
    internal static string Text(IQuantity? quantity) => quantity is null
        ? ""
        : string.Create(CultureInfo.InvariantCulture, $"{(double)quantity.Value}{UnitNames.Spelling(Kind(quantity), Convert.ToInt32(quantity.Unit, CultureInfo.InvariantCulture))}");

    private static QuantityKind Kind(IQuantity quantity) => quantity switch
    {
        Torque => QuantityKind.Torque,
        Length => QuantityKind.Length,
        Force => QuantityKind.Force,
        Mass => QuantityKind.Mass,
        Pressure => QuantityKind.Stress,
        Angle => QuantityKind.Angle,
        TemperatureDelta => QuantityKind.TemperatureRise,
        _ => throw new ArgumentException("No text for this quantity.", nameof(quantity)),
    };
}
