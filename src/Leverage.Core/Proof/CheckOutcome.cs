namespace Leverage.Proof;

/// <summary>A result beside the number a source prints.</summary>
/// <param name="Row">The row.</param>
/// <param name="Value">What the formula gives, in the printed unit.</param>
/// <param name="Printed">The printed number.</param>
public readonly record struct CheckOutcome(CheckRow Row, double Value, double Printed)
{
    /// <summary>A last bit of room, so that exactly half a digit is not lost to binary rounding.</summary>
    private const double Room = 1 + 1e-9;

    /// <summary>Deviation as a share of the tolerance; 1 or less holds.</summary>
    public double ToleranceShare => Math.Abs(Value - Printed) / Row.Tolerance;

    /// <summary>Deviation from the printed number in percent, with its sign; 0 when the printed number is 0.</summary>
    public double DeviationPercent => Printed == 0 ? 0 : (Value / Printed - 1) * 100;

    /// <summary>Whether the result is within the tolerance.</summary>
    public bool Holds => ToleranceShare <= Room;
}
