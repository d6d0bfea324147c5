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
        return TableRow.TryNumber(printed, out _)
            ? OfLastDigit(printed.AsSpan())
            : throw new FormatException($"'{printed}' is no number");
    }

    /// <summary>The tolerance of a row: an amount or a percentage as written, else that of the last digit.</summary>
    /// <param name="row">A row of a checks file.</param>
    /// <returns>The tolerance, in the row's unit.</returns>
    /// <exception cref="TableFormatException">The cell is not blank, an amount or a percentage above 0.</exception>
    public static double Of(TableRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return Of(row, CheckColumns.Of(row.Table), row.Number("expected"));
    }

    /// <summary>The tolerance of a row whose printed number is read already.</summary>
    internal static double Of(TableRow row, CheckColumns columns, double printed)
    {
        var written = row.Part(columns.Tolerance);
        if (written.Length == 0)
        {
            return OfLastDigit(row.Part(columns.Expected));
        }

        bool share = written[^1] == '%';
        return TableRow.TryNumber(share ? written[..^1] : written, out double amount) && amount > 0
            ? share ? Math.Abs(printed) * amount / 100 : amount
            : throw row.Error("tolerance", "nothing, an amount such as 0.5, or a percentage such as 1%");
    }

    private static double OfLastDigit(ReadOnlySpan<char> printed)
    {
        int exponent = printed.IndexOfAny('e', 'E');
        var digits = exponent < 0 ? printed : printed[..exponent];
        int power = exponent < 0 ? 0 : int.Parse(printed[(exponent + 1)..], CultureInfo.InvariantCulture);
        int point = digits.IndexOf('.');
        int decimals = point < 0 ? 0 : digits.Length - point - 1;
        return 0.5 * Math.Pow(10, power - decimals);
    }
}
