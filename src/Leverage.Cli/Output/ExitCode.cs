using Leverage.Assessments;

namespace Leverage.Cli.Output;

/// <summary>How the program ended.</summary>
internal static class ExitCode
{
    /// <summary>Answered, whatever the verdict.</summary>
    internal const int Answered = 0;

    /// <summary>The program failed.</summary>
    internal const int Failed = 1;

    /// <summary>What was given cannot be used.</summary>
    internal const int BadInput = 2;

    /// <summary>With --strict: stop 3, care 4; short is 5 and not judged 6.</summary>
    internal static int Strict(Verdict verdict) => verdict switch
    {
        Verdict.Stop => 3,
        Verdict.Care => 4,
        Verdict.Short => 5,
        Verdict.NotJudged => 6,
        _ => Answered,
    };
}
