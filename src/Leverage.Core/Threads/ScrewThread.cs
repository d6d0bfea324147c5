using UnitsNet;

namespace Leverage.Threads;

/// <summary>Family of a screw thread.</summary>
public enum ThreadFamily
{
    /// <summary>ISO metric.</summary>
    Metric,

    /// <summary>Unified inch: UNC and UNF.</summary>
    Unified,
}

/// <summary>A standard screw thread: name, nominal diameter and pitch.</summary>
/// <param name="Designation">Its name: <c>M24x1.5</c>, <c>1/2-20</c>.</param>
/// <param name="Family">Metric or Unified.</param>
/// <param name="Diameter">d, nominal diameter.</param>
/// <param name="Pitch">P, pitch.</param>
public sealed record ScrewThread(string Designation, ThreadFamily Family, Length Diameter, Length Pitch)
{
    /// <summary>d, nominal diameter, mm.</summary>
    public double DiameterMm { get; } = Diameter.Millimeters;

    /// <summary>P, pitch, mm.</summary>
    public double PitchMm { get; } = Pitch.Millimeters;

    /// <summary>d2, pitch diameter, mm.</summary>
    public double PitchDiameterMm => ThreadGeometry.PitchDiameter(DiameterMm, PitchMm);

    /// <summary>d3, root diameter, mm.</summary>
    public double RootDiameterMm => ThreadGeometry.RootDiameter(DiameterMm, PitchMm);

    /// <summary>As, stress area, mm²: each family by its own standard.</summary>
    public double StressAreaMm2 => Family == ThreadFamily.Unified
        ? ThreadGeometry.UnifiedStressArea(DiameterMm, PitchMm)
        : ThreadGeometry.StressArea(DiameterMm, PitchMm);

    /// <summary>d0, diameter of a circle of the stress area, mm.</summary>
    public double StressDiameterMm => Math.Sqrt(StressAreaMm2 * 4 / Math.PI);

    /// <summary>Its size without the pitch, as the hexagon tables name it: <c>M24</c>, <c>1/2</c>.</summary>
    public string Size => Family == ThreadFamily.Metric
        ? Designation.Split('x')[0]
        : Designation[..Designation.LastIndexOf('-')];

    /// <summary>The designation as it is printed: M24×1.5, 1/2-20.</summary>
    public string Printed => Designation.Replace('x', '×');
}
