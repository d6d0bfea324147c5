using Leverage.Tables;

namespace Leverage.Proof;

/// <summary>One published number, and what to put into which formula to get it.</summary>
public sealed class CheckRow
{
    private readonly TableRow _row;
    private readonly double _unitFactor;

    internal CheckRow(TableRow row, CheckedFormula formula, CheckInputs inputs, double printed, (string Name, double Factor) unit, double tolerance, string source)
    {
        (_row, Formula, Inputs, Printed, Tolerance, Source) = (row, formula, inputs, printed, tolerance, source);
        ((Unit, _unitFactor), Status) = (unit, row.Status);
    }

    /// <summary>Name of the row, one of its kind over all files.</summary>
    public string Id => _row.Key;

    /// <summary>The formula it checks.</summary>
    public CheckedFormula Formula { get; }

    /// <summary>What goes in.</summary>
    public CheckInputs Inputs { get; }

    /// <summary>The number as printed.</summary>
    public string Expected => _row.Text("expected");

    /// <summary>That number.</summary>
    public double Printed { get; }

    /// <summary>Its unit as printed; nothing for a bare number.</summary>
    public string Unit { get; }

    /// <summary>How far the result may stand from it, in that unit.</summary>
    public double Tolerance { get; }

    /// <summary>Where it is printed.</summary>
    public string Source { get; }

    /// <summary>How far it may be trusted.</summary>
    public ValueStatus Status { get; }

    /// <summary>Reason for a wider tolerance, or what the number means; may be empty.</summary>
    public string Note => _row.OptionalText("note") ?? string.Empty;

    /// <summary>Works the formula out and sets the result beside the printed number.</summary>
    /// <returns>The outcome.</returns>
    public CheckOutcome WorkOut() =>
        new(this, Formula.Evaluate(Inputs) / (Inputs.Find("per") ?? 1) * (Formula.UnitFactor / _unitFactor), Printed);
}
