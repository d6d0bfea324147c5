using System.Buffers.Text;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Leverage.Page.Answering;

/// <summary>
/// Writes the numbers of a curve to a tenth, finer than a screen shows, and none as null. A curve has hundreds of them, and their
/// shortest exact digits cost most of a frame.
/// </summary>
internal sealed class Tenths : JsonConverter<IReadOnlyList<double>>
{
    /// <summary>Letters of the longest number, with its comma.</summary>
    private const int Longest = 14;

    /// <summary>Past this nothing is drawn.</summary>
    private const double Most = 1e8;

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, IReadOnlyList<double> value, JsonSerializerOptions options)
    {
        byte[] text = new byte[2 + Longest * value.Count];
        text[0] = (byte)'[';
        int at = 1;
        foreach (double each in value)
        {
            if (at > 1)
            {
                text[at++] = (byte)',';
            }

            at += Number(text.AsSpan(at), each);
        }

        text[at++] = (byte)']';
        writer.WriteRawValue(text.AsSpan(0, at), skipInputValidation: true);
    }

    /// <inheritdoc/>
    public override IReadOnlyList<double> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        throw new NotSupportedException("A curve goes to the page and never comes back.");

    private static int Number(Span<byte> text, double number)
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
