using Leverage.Charts;
using Leverage.Cli.Input;
using Leverage.Reading;

namespace Leverage.Cli.Output;

/// <summary>A picture a command can draw into a file: looked at before any work, written whole or not at all.</summary>
internal sealed class Picture
{
    /// <summary>A picture named by an option.</summary>
    internal Picture(string option, string description) =>
        Option = new TextOption(option, "FILE", $"{description}, .png or .svg");

    /// <summary>The option that names the file.</summary>
    internal TextOption Option { get; }

    /// <summary>Refuses a file that may not or cannot be written, before any work is done.</summary>
    internal void Check(ParsedLine parsed)
    {
        if (parsed.Text(Option) is { } path)
        {
            InputException.About(Option.Name, () => ChartFile.FormatOf(path));
            WholeFile.Check(Option.Name, path, parsed.ForceWrite);
        }
    }

    /// <summary>Draws and writes it, if it was asked for.</summary>
    internal void Write(ParsedLine parsed, Func<Chart> draw)
    {
        if (parsed.Text(Option) is { } path)
        {
            byte[] bytes = draw().Bytes(ChartFile.FormatOf(path));
            WholeFile.Write(Option.Name, path, parsed.ForceWrite, stream => stream.Write(bytes));
        }
    }
}
