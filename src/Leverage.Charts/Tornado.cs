using Leverage.Assessments;
using Leverage.Wording;

namespace Leverage.Charts;

/// <summary>One input's effect on an answer.</summary>
/// <param name="Input">The input, in words.</param>
/// <param name="AtLow">The answer with the input at its low end.</param>
/// <param name="AtHigh">The answer with the input at its high end.</param>
public sealed record TornadoBar(string Input, double AtLow, double AtHigh)
{
    /// <summary>How far the answer moves.</summary>
    public double Width => Math.Abs(AtHigh - AtLow);
}

/// <summary>Which input moves an answer how far.</summary>
/// <param name="Axis">The answer, with its unit.</param>
/// <param name="Centre">The answer as it stands.</param>
/// <param name="Bars">The inputs.</param>
/// <param name="Words">A value of the answer in words.</param>
public sealed record Tornado(string Axis, double Centre, IReadOnlyList<TornadoBar> Bars, Func<double, string> Words)
{
    /// <summary>What moves the chance that the nut comes loose.</summary>
    /// <param name="comesLoose">The chance as it stands.</param>
    /// <param name="effects">What the inputs do.</param>
    /// <returns>The tornado, in hundredths.</returns>
    public static Tornado OfComesLoose(double comesLoose, IEnumerable<Sensitivity> effects) => new(
        "chance that the nut comes loose, in 100",
        100 * comesLoose,
        [.. effects.Select(one => new TornadoBar(SensitivityWords.Input(one.Input), 100 * one.ComesLooseLow, 100 * one.ComesLooseHigh))],
        value => UnitStyle.Fixed(value, 0));
}
