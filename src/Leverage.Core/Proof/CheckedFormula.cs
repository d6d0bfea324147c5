namespace Leverage.Proof;

/// <summary>A formula the checks can call by name.</summary>
/// <param name="Name">Class and method, such as <c>TubeSection.Area</c>.</param>
/// <param name="Unit">Unit of its result; nothing for a bare number.</param>
/// <param name="Evaluate">Works it out from named inputs.</param>
public sealed record CheckedFormula(string Name, string Unit, Func<CheckInputs, double> Evaluate)
{
    private double _unitFactor;

    /// <summary>How many coherent units its own holds.</summary>
    internal double UnitFactor => _unitFactor > 0 ? _unitFactor : _unitFactor = PrintedUnit.Factor(Unit);
}
