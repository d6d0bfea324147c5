using UnitsNet;

namespace Leverage.Reading;

/// <summary>A tube as a person describes it: a tube by outside and wall, or a jack handle by its bore.</summary>
/// <param name="Length">Whole length.</param>
/// <param name="Outside">Outside diameter; null for a jack handle.</param>
/// <param name="Wall">Wall; null for a jack handle.</param>
/// <param name="Bore">Measured bore; null to work it out from outside and wall.</param>
public sealed record TubeText(Length Length, Length? Outside = null, Length? Wall = null, Length? Bore = null);
