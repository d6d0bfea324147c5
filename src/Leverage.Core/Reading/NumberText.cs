using System.Globalization;

namespace Leverage.Reading;

/// <summary>A number as a person writes it, split from what follows: decimal point, never a comma, or a fraction.</summary>
internal static class NumberText
{
    /// <summary>Splits "460 N·m" into 460 and "N·m"; accepts 1.5, 1e3, 1/2 and 1-1/2.</summary>
    /// <exception cref="InputException">No number, a decimal comma, or a number that is none.</exception>
    internal static (double Value, string Unit) Split(string text)
    {
        string trimmed = DecimalPoint(text.Trim().Replace('−', '-'));
        RefuseNames(trimmed);
        int end = NumberEnd(trimmed);
        if (end == 0)
        {
            throw new InputException($"cannot read '{text}': no number at the start. Write: 1.5mm");
        }

        if (end < trimmed.Length && trimmed[end] == ',' && end + 1 < trimmed.Length && char.IsAsciiDigit(trimmed[end + 1]))
        {
            throw new InputException($"cannot read '{text}': a comma stands in the number. "
                + $"Write {trimmed.Replace(",", "", StringComparison.Ordinal)}, or with a decimal point {trimmed.Replace(',', '.')}.");
        }

        double value = double.Parse(trimmed.AsSpan(0, end), NumberStyles.Float, CultureInfo.InvariantCulture);
        if (!double.IsFinite(value))
        {
            throw new InputException($"cannot use '{text}': it is not a finite number.");
        }

        string rest = trimmed[end..];
        double whole = Fraction(value, trimmed[..end], ref rest) ?? value;
        return double.IsFinite(whole) ? (whole, rest.Trim()) : throw new InputException($"cannot use '{text}': it is not a finite number.");
    }

    /// <summary>A lone comma becomes a point where it can stand for nothing else: never before three digits, as in 1,500.</summary>
    private static string DecimalPoint(string text)
    {
        int comma = text.IndexOf(',', StringComparison.Ordinal);
        int start = text.Length > 0 && text[0] is '-' or '+' ? 1 : 0;
        int digits = comma < 0 ? 0 : Digits(text, comma + 1) - comma - 1;
        bool decimals = comma > start && digits > 0 && Digits(text, start) == comma
            && (digits != 3 || text[start..comma] == "0")
            && text.AsSpan(comma + 1 + digits) is not [',' or '.', ..];
        return decimals ? string.Concat(text.AsSpan(0, comma), ".", text.AsSpan(comma + 1)) : text;
    }

    private static void RefuseNames(string text)
    {
        string bare = text.TrimStart('-', '+');
        if (bare.StartsWith("nan", StringComparison.OrdinalIgnoreCase)
            || bare.StartsWith("inf", StringComparison.OrdinalIgnoreCase) && !bare.StartsWith("inch", StringComparison.Ordinal)
            || bare.StartsWith('∞'))
        {
            throw new InputException($"cannot use '{text}': it is not a finite number.");
        }
    }

    private static int NumberEnd(string text)
    {
        int i = text.Length > 0 && text[0] is '-' or '+' ? 1 : 0;
        int digits = i;
        while (i < text.Length && (char.IsAsciiDigit(text[i]) || text[i] == '.'))
        {
            i++;
        }

        if (i == digits || !double.TryParse(text.AsSpan(0, i), NumberStyles.Float, CultureInfo.InvariantCulture, out _))
        {
            return 0;
        }

        int exponent = i;
        if (i < text.Length && text[i] is 'e' or 'E')
        {
            i += i + 1 < text.Length && text[i + 1] is '-' or '+' ? 2 : 1;
            int power = i;
            while (i < text.Length && char.IsAsciiDigit(text[i]))
            {
                i++;
            }

            return i > power ? i : exponent;
        }

        return i;
    }

    /// <summary>Reads the "/2" of 1/2 or the "-1/2" of 1-1/2 behind a whole number.</summary>
    private static double? Fraction(double whole, string wholeText, ref string rest)
    {
        if (rest.StartsWith('/') && Digits(rest, 1) is var end and > 1)
        {
            double under = double.Parse(rest.AsSpan(1, end - 1), NumberStyles.None, CultureInfo.InvariantCulture);
            rest = rest[end..];
            return under > 0 ? whole / under : throw new InputException($"cannot read '{wholeText}/0': a fraction over 0.");
        }

        int top = rest.Length > 1 && rest[0] is '-' or ' ' ? Digits(rest, 1) : 0;
        if (top > 1 && top < rest.Length && rest[top] == '/')
        {
            double part = double.Parse(rest.AsSpan(1, top - 1), NumberStyles.None, CultureInfo.InvariantCulture);
            string under = rest[top..];
            double? fraction = Fraction(part, rest[1..top], ref under);
            rest = under;
            return whole + fraction;
        }

        return null;
    }

    private static int Digits(string text, int from)
    {
        int i = from;
        while (i < text.Length && char.IsAsciiDigit(text[i]))
        {
            i++;
        }

        return i;
    }
}
