using System.Globalization;

namespace Leverage;

/// <summary>The one place where a formula refuses a number it cannot use.</summary>
public static class Require
{
    /// <summary>The value, if it is a finite number above zero.</summary>
    /// <param name="value">The number to look at.</param>
    /// <param name="name">Its parameter name, with the unit.</param>
    /// <returns>The value unchanged.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Zero, negative, NaN or infinite.</exception>
    public static double Positive(double value, string name) =>
        double.IsFinite(value) && value > 0 ? value : throw Refusal(value, name, "a finite number above 0");

    /// <summary>The value, if it is a finite number of zero or more.</summary>
    /// <param name="value">The number to look at.</param>
    /// <param name="name">Its parameter name, with the unit.</param>
    /// <returns>The value unchanged.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative, NaN or infinite.</exception>
    public static double NotNegative(double value, string name) =>
        double.IsFinite(value) && value >= 0 ? value : throw Refusal(value, name, "a finite number of 0 or more");

    /// <summary>The value, if it is any finite number.</summary>
    /// <param name="value">The number to look at.</param>
    /// <param name="name">Its parameter name, with the unit.</param>
    /// <returns>The value unchanged.</returns>
    /// <exception cref="ArgumentOutOfRangeException">NaN or infinite.</exception>
    public static double Finite(double value, string name) =>
        double.IsFinite(value) ? value : throw Refusal(value, name, "a finite number");

    /// <summary>The value, if it lies between two bounds, both allowed.</summary>
    /// <param name="value">The number to look at.</param>
    /// <param name="least">The smallest value allowed.</param>
    /// <param name="most">The largest value allowed.</param>
    /// <param name="name">Its parameter name, with the unit.</param>
    /// <returns>The value unchanged.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the bounds, NaN or infinite.</exception>
    public static double Between(double value, double least, double most, string name) =>
        value >= least && value <= most
            ? value
            : throw Refusal(value, name, string.Create(CultureInfo.InvariantCulture, $"a number from {least} to {most}"));

    /// <summary>A slope angle: finite, and short of a right angle either way.</summary>
    /// <param name="value">The angle, rad.</param>
    /// <param name="name">Its parameter name, with the unit.</param>
    /// <returns>The value unchanged.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A right angle or more, NaN or infinite.</exception>
    public static double Slope(double value, string name) =>
        Math.Abs(value) < Math.PI / 2 ? value : throw Refusal(value, name, "an angle between -pi/2 and pi/2");

    private static ArgumentOutOfRangeException Refusal(double value, string name, string accepted) =>
        new(name, value, string.Create(CultureInfo.InvariantCulture, $"{name} is {value}; accepted is {accepted}."));
}
