using Microsoft.CodeAnalysis.Text;

namespace Leverage.Mutation;

/// <summary>One change of one place in the sources.</summary>
/// <param name="Id">Its number.</param>
/// <param name="Folder">Room the file stands in.</param>
/// <param name="File">Path below the sources of the core.</param>
/// <param name="Line">Line, counted from 1.</param>
/// <param name="Change">The text change.</param>
/// <param name="Whole">The smallest expression around the change.</param>
/// <param name="Was">What stood there.</param>
/// <param name="AtStart">Whether it works when the program starts, in a static value, so that it cannot be woken later.</param>
internal sealed record Mutant(int Id, string Folder, string File, int Line, TextChange Change, TextSpan Whole, string Was, bool AtStart)
{
    /// <summary>File, line and change in one line.</summary>
    public override string ToString() => $"{File}({Line}): {Was} -> {Change.NewText}";
}

/// <summary>How a mutant ended.</summary>
internal enum Fate
{
    /// <summary>Not known yet.</summary>
    Open,

    /// <summary>It does not compile: no mutant at all.</summary>
    NotCompiled,

    /// <summary>A published check fails.</summary>
    KilledByCheck,

    /// <summary>A test fails.</summary>
    KilledByTest,

    /// <summary>It runs on without end: noticed.</summary>
    NeverEnds,

    /// <summary>It takes the tests' program down: noticed.</summary>
    Crashed,

    /// <summary>No test notices it.</summary>
    Survived,
}
