using System.Globalization;
using System.Text;

namespace Leverage.Benchmarks;

/// <summary>A chest of 20 bars and 10 tubes that all go together: 18,000 set-ups with 10 overlaps and 9 stances.</summary>
internal static class BigChest
{
    private const int Bars = 20;
    private const int Tubes = 10;

    /// <summary>The chest as TOML.</summary>
    internal static string Text()
    {
        var text = new StringBuilder("[[sockets]]\nname = \"socket\"\ndrive = \"3/4\"\nsize = \"36mm\"\n");
        for (int i = 0; i < Bars; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"[[bars]]\nname = \"bar {i}\"\ndrive = \"3/4\"\nlength = \"{500 + 25 * i}mm\"\n");
            text.Append(CultureInfo.InvariantCulture, $"diameter = \"{20 + i / 4}mm\"\nstraight = \"{400 + 20 * i}mm\"\n");
        }

        for (int i = 0; i < Tubes; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"[[tubes]]\nname = \"tube {i}\"\noutside = \"{33 + i}mm\"\nwall = \"3.2mm\"\n");
            text.Append(CultureInfo.InvariantCulture, $"length = \"{900 + 50 * i}mm\"\n");
        }

        return text.ToString();
    }
}
