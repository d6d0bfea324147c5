namespace Leverage.Reading;

/// <summary>What a number with a unit can be.</summary>
public enum QuantityKind
{
    /// <summary>Force times length.</summary>
    Torque,

    /// <summary>Length.</summary>
    Length,

    /// <summary>Force.</summary>
    Force,

    /// <summary>Mass.</summary>
    Mass,

    /// <summary>Force on an area.</summary>
    Stress,

    /// <summary>Angle.</summary>
    Angle,

    /// <summary>Difference of temperature.</summary>
    TemperatureRise,

    /// <summary>A share of one, in percent.</summary>
    Share,
}
