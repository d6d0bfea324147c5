using UnitsNet;

namespace Leverage.Assessments;

/// <summary>A change worth trying.</summary>
/// <param name="Kind">What is changed.</param>
/// <param name="Value">To what, or by how much, where it is a quantity.</param>
/// <param name="Name">To what, where it is a name.</param>
/// <param name="Setup">The set-up with it.</param>
internal sealed record Change(AdviceKind Kind, IQuantity? Value, string? Name, LooseningSetup Setup);
