using Leverage.Tables;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>Something the person did not say and the answer took for granted.</summary>
/// <param name="What">What was assumed, in words.</param>
/// <param name="Value">Its value, if it is a quantity.</param>
/// <param name="Why">Where the value comes from, or what was left out.</param>
/// <param name="Status">How far the value may be trusted; a recalled or judged one is marked in every answer.</param>
public sealed record Assumption(
    string What, IQuantity? Value = null, string? Why = null, ValueStatus Status = ValueStatus.Published);
