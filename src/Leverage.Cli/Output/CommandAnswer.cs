using Leverage.Assessments;

namespace Leverage.Cli.Output;

/// <summary>What a command answers; only the form that is asked for is made.</summary>
/// <param name="Verdict">What <c>--strict</c> looks at.</param>
/// <param name="Json">The answer as JSON, without a line feed at its end.</param>
/// <param name="Words">The answer in words.</param>
internal sealed record CommandAnswer(Verdict Verdict, Func<string> Json, Action<TextPage> Words)
{
    /// <summary>Whether what was asked to hold does not: the program then ends as failed, whatever the verdict.</summary>
    internal bool Failed { get; init; }
}
