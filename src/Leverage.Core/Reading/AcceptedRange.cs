using System.Globalization;

namespace Leverage.Reading;

/// <summary>The values that are accepted, both ends among them, in the unit they are said in: the one place of each range.</summary>
/// <param name="Least">The smallest.</param>
/// <param name="Most">The largest.</param>
/// <param name="Unit">The unit as a person writes it; empty for a plain number.</param>
internal readonly record struct AcceptedRange(double Least, double Most, string Unit)
{
    internal static readonly AcceptedRange Torque = new(0.01, 50_000, "Nm");
    internal static readonly AcceptedRange Length = new(0.1, 10_000, "mm");
    internal static readonly AcceptedRange AcrossFlats = new(1, 200, "mm");
    internal static readonly AcceptedRange LengthOrZero = new(0, 10_000, "mm");
    internal static readonly AcceptedRange Force = new(1, 100_000, "N");
    internal static readonly AcceptedRange Body = new(30, 250, "kg");
    internal static readonly AcceptedRange HungWeight = new(1, 250, "kg");
    internal static readonly AcceptedRange Vehicle = new(1, 60_000, "kg");
    internal static readonly AcceptedRange Stress = new(1, 5000, "MPa");
    internal static readonly AcceptedRange TemperatureRise = new(1, 1000, "K");
    internal static readonly AcceptedRange Share = new(0.1, 100, "%");
    internal static readonly AcceptedRange JointFriction = new(0.02, 1, "");
    internal static readonly AcceptedRange SurfaceFriction = new(0.01, 1, "");

    /// <summary>A turn after a first torque: at most two whole turns, twice what any standard asks for.</summary>
    internal static readonly AcceptedRange Turn = new(0.1, 720, "deg");

    /// <summary>From 0 up to an angle.</summary>
    internal static AcceptedRange UpTo(double degrees) => new(0, degrees, "deg");

    /// <summary>The range in words.</summary>
    internal string Words => string.Create(CultureInfo.InvariantCulture, $"{Least}{Unit} to {Most}{Unit}");

    /// <summary>Refuses a value outside, and what is no number.</summary>
    internal void Check(double value, string text)
    {
        if (!(value >= Least && value <= Most))
        {
            throw new InputException($"cannot use '{text}': accepted is {Words}.");
        }
    }
}
