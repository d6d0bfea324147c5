using UnitsNet;

namespace Leverage.Reading;

/// <summary>A torque as a book prints it: alone, or with the turn that follows it.</summary>
/// <param name="Torque">The torque.</param>
/// <param name="Turn">The turn after it; null for none.</param>
internal readonly record struct TorqueAndTurn(Torque Torque, Angle? Turn)
{
    /// <summary>Reads <c>100Nm</c>, <c>100Nm + 90deg</c>, <c>60Nm + 90° + 90°</c>: turns one after another add up.</summary>
    /// <exception cref="InputException">A part of it cannot be read.</exception>
    internal static TorqueAndTurn Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string[] parts = Parts(text);
        return new TorqueAndTurn(
            QuantityReader.Torque(parts[0]),
            parts.Length > 1 ? parts.Skip(1).Select(QuantityReader.Angle).Aggregate((turn, next) => turn + next) : null);
    }

    /// <summary>A text that is read back the same.</summary>
    internal string Text() => Turn is { } turn ? $"{QuantityWriter.Text(Torque)} + {QuantityWriter.Text(turn)}" : QuantityWriter.Text(Torque);

    /// <summary>Splits at a plus that stands behind a unit; the one of a number, +5 or 1e+3, stays.</summary>
    private static string[] Parts(string text)
    {
        var parts = new List<string>();
        int from = 0;
        for (int i = 1; i < text.Length; i++)
        {
            string before = text[from..i].TrimEnd();
            if (text[i] == '+' && before.Length > 0 && !(before[^1] is 'e' or 'E' && before.Length > 1 && (char.IsAsciiDigit(before[^2]) || before[^2] == '.')))
            {
                parts.Add(before.Trim());
                from = i + 1;
            }
        }

        return [.. parts, text[from..].Trim()];
    }
}
