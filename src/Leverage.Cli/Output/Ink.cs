using Leverage.Assessments;

namespace Leverage.Cli.Output;

/// <summary>Bold and coloured letters on a terminal; plain ones anywhere else.</summary>
/// <param name="Colour">Whether the terminal shows them.</param>
internal readonly record struct Ink(bool Colour)
{
    internal string Strong(string words) => Colour ? $"\e[1m{words}\e[0m" : words;

    internal string Coloured(string word, Verdict verdict) => !Colour ? word : verdict switch
    {
        Verdict.Stop => $"\e[1;31m{word}\e[0m",
        Verdict.Care or Verdict.Short or Verdict.NotJudged => $"\e[1;33m{word}\e[0m",
        _ => $"\e[1;32m{word}\e[0m",
    };
}
