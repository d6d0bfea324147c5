using UnitsNet;

namespace Leverage.Levers;

/// <summary>The cross pin of a flex-head bar.</summary>
/// <param name="Diameter">Diameter of the pin.</param>
/// <param name="PlanesApart">Distance between its two shear planes: thickness of the tang.</param>
public sealed record FlexPin(Length Diameter, Length PlanesApart);

/// <summary>A bar or handle that turns a nut.</summary>
/// <param name="Length">Square to end.</param>
/// <param name="Diameter">Diameter of the round handle; null where it is not round or not known, as on a spanner.</param>
/// <param name="Yield">Yield strength of its steel.</param>
/// <param name="StraightHandle">How far a tube can go on.</param>
/// <param name="Taper">Taper of the handle towards its end.</param>
/// <param name="Pin">The pin of a flex head, if it has one.</param>
public sealed record Bar(
    Length Length, Length? Diameter, Pressure Yield, Length StraightHandle, Angle Taper = default, FlexPin? Pin = null);
