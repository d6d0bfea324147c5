using System.Buffers.Text;
using System.Text;

namespace Leverage.Page.Answering;

/// <summary>
/// Numbers of a curve as the text of a list, to a tenth, finer than a screen shows. A curve has many, and their shortest exact
/// digits would cost most of a frame.
/// </summary>
internal static class Tenths
{
    /// <summary>Letters of the longest number, with its comma.</summary>
    private const int Longest = 14;

    /// <summary>Past this nothing is drawn.</summary>
    private const double Most = 1e8;

    /// <summary>The first number of a list, and of the others one in so many.</summary>
    /// <param name="numbers">The numbers, 0 and above; what is not finite becomes null.</param>
    /// <param name="step">How many to go on each time, 1 and above.</param>
    /// <returns>"[12.3,14.0,null]".</returns>
    internal static string Of(IReadOnlyList<double> numbers, int step)
    {
        byte[] text = new byte[2 + Longest * numbers.Count];
        text[0] = (byte)'[';
        int at = 1;
        for (int i = 0; i < numbers.Count; i += step)
        {
            if (at > 1)
            {
                text[at++] = (byte)',';
            }

            at += Write(text.AsSpan(at), numbers[i]);
        }

        text[at++] = (byte)']';
        return Encoding.ASCII.GetString(text, 0, at);
    }

    private static int Write(Span<byte> text, double number)
    {
        if (!double.IsFinite(number))
        {
            "null"u8.CopyTo(text);
            return 4;
        }

        int tenths = (int)Math.Round(10 * Math.Clamp(number, 0, Most));
        _ = Utf8Formatter.TryFormat(tenths / 10, text, out int length);
        text[length] = (byte)'.';
        text[length + 1] = (byte)('0' + tenths % 10);
        return length + 2;
    }
}
