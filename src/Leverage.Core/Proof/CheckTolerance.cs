using System.Globalization;
using Leverage.Tables;

namespace Leverage.Proof;

/// <summary>How far a result may stand from a printed number.</summary>
public static class CheckTolerance
{
    /// <summary>Half a unit in the last printed digit: 0.005 for <c>26.18</c>, 0.05 for <c>5.0</c>.</summary>
    /// <param name="printed">The number as printed.</param>
    /// <returns>The tolerance, in the number's own unit.</returns>
    /// <exception cref="FormatException">The text is no number.</exception>
    public static double OfLastDigit(string printed)
    {
        ArgumentNullException.ThrowIfNull(printed);
        if (!TableRow.TryNumber(printed, out _))
        {
            throw new FormatException($"'{printed}' is no number");
        }

        int exponent = printed.IndexOfAny(['e', 'E']);
        string digits = exponent < 0 ? printed : printed[..exponent];
        int power = exponent < 0 ? 0 : int.Parse(printed[(exponent + 1)..], CultureInfo.InvariantCulture);
        int point = digits.IndexOf('.', StringComparison.Ordinal);
        int decimals = point < 0 ? 0 : digits.Length - point - 1;
        return 0.5 * Math.Pow(10, power - decimals);
    }

    /// <summary>The tolerance of a row: an amount or a percentage as written, else that of the last digit.</summary>
    /// <param name="row">A row of a checks file.</param>
    /// <returns>The tolerance, in the row's unit.</returns>
    /// <exception cref="TableFormatException">The cell is not blank, an amount or a percentage above 0.</exception>
    public static double Of(TableRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        if (row.OptionalText("tolerance") is not { } written)
        {
            return OfLastDigit(row.Text("expected"));
        }

        bool share = written.EndsWith('%');
        return TableRow.TryNumber(share ? written[..^1] : written, out double amount) && amount > 0
            ? share ? Math.Abs(row.Number("expected")) * amount / 100 : amount
            : throw row.Error("tolerance", "nothing, an amount such as 0.5, or a percentage such as 1%");
    }
}
