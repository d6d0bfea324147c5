using Leverage.Tables;

namespace Leverage.Proof;

/// <summary>One published number, and what to put into which formula to get it.</summary>
/// <param name="Id">Name of the row, one of its kind over all files.</param>
/// <param name="Formula">The formula it checks.</param>
/// <param name="Inputs">What goes in.</param>
/// <param name="Expected">The number as printed.</param>
/// <param name="Printed">That number.</param>
/// <param name="Unit">Its unit as printed; nothing for a bare number.</param>
/// <param name="Tolerance">How far the result may stand from it, in that unit.</param>
/// <param name="Source">Where it is printed.</param>
/// <param name="Status">How far it may be trusted.</param>
/// <param name="Note">Reason for a wider tolerance, or what the number means; may be empty.</param>
public sealed record CheckRow(
    string Id, CheckedFormula Formula, CheckInputs Inputs, string Expected, double Printed, string Unit, double Tolerance,
    string Source, ValueStatus Status, string Note)
{
    /// <summary>Works the formula out and sets the result beside the printed number.</summary>
    /// <returns>The outcome.</returns>
    public CheckOutcome WorkOut()
    {
        double value = Formula.Evaluate(Inputs) / Inputs["per"];
        double factor = PrintedUnit.Factor(Formula.Unit) / PrintedUnit.Factor(Unit);
        return new CheckOutcome(this, value * factor, Printed);
    }
}
