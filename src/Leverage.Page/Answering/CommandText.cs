using System.Text;
using Leverage.Page.Asking;
using Leverage.Requests;

namespace Leverage.Page.Answering;

/// <summary>The command line that asks the same as an address.</summary>
internal static class CommandText
{
    /// <summary>The command.</summary>
    internal static string Of(Query asked)
    {
        var text = new StringBuilder("leverage loosen");
        foreach (var (name, value) in asked.All())
        {
            Field<LooseningRequest> field = LooseningFields.All.Named(name);
            if (field.Kind.IsFlag)
            {
                text.Append(field.Text(field.Read(new LooseningRequest(), value)) is not null ? $" --{name}" : "");
                continue;
            }

            text.Append(field.InPlace ? " " : $" --{name} ").Append(Quoted(value));
        }

        return text.Append(asked.Units.IsUs ? " --units us" : "").ToString();
    }

    private static string Quoted(string value) =>
        value.All(letter => char.IsAsciiLetterOrDigit(letter) || ".,-+/%:".Contains(letter, StringComparison.Ordinal))
            ? value
            : $"\"{value.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
}
