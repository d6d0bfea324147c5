using System.Text;
using Leverage.Page.Asking;

namespace Leverage.Page.Answering;

/// <summary>The command line that asks the same as an address.</summary>
internal static class CommandText
{
    private static readonly string[] Flags = ["left-hand", "soaked", "on-stands"];

    /// <summary>The command; empty where a bar out of a chest says what the command line has no option for.</summary>
    internal static string Of(Said said)
    {
        var text = new StringBuilder("leverage loosen");
        foreach (var (name, value) in said.All())
        {
            if (name is "bar-straight" or "bar-pin" or "bar-pin-planes")
            {
                return "";
            }

            if (Flags.Contains(name))
            {
                text.Append(Words.Flag(value) ? $" --{name}" : "");
                continue;
            }

            text.Append(name == "book-torque" ? " " : $" --{name} ").Append(Quoted(value));
        }

        return text.Append(said.Units.IsUs ? " --units us" : "").ToString();
    }

    private static string Quoted(string value) =>
        value.All(letter => char.IsAsciiLetterOrDigit(letter) || ".,-+/%:".Contains(letter, StringComparison.Ordinal))
            ? value
            : $"\"{value.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
}
