using System.CommandLine;
using Leverage.Assessments;
using Leverage.Cli.Input;
using Leverage.Cli.Output;
using Leverage.Proof;

namespace Leverage.Cli.Commands;

/// <summary><c>leverage prove</c>: do the published checks hold on this machine.</summary>
internal sealed class ProveCommand : LeverageCommand
{
    private readonly Func<ProofReport> _report;
    private readonly Flag _all = new("--all", "every row, with its source");

    /// <summary>The command on the checks the program carries.</summary>
    internal ProveCommand()
        : this(Prover.Report)
    {
    }

    /// <summary>The command on any report.</summary>
    internal ProveCommand(Func<ProofReport> report) => _report = report;

    /// <inheritdoc/>
    internal override string[] Examples =>
    [
        "prove",
        "prove --all",
    ];

    /// <inheritdoc/>
    internal override IEnumerable<Symbol> Symbols => [_all];

    /// <inheritdoc/>
    internal override string Remarks =>
        """
        Works every check of shared/checks out again: published in print, another
        engine's result, derived by hand, recalled from memory (consistency only).
        Exits 1 if any fails.
        """;

    /// <inheritdoc/>
    internal override CommandAnswer Answer(ParsedLine parsed)
    {
        ProofReport report = _report();
        bool all = parsed.Get(_all);
        return new CommandAnswer(
            Verdict.Go,
            () => ProofAnswer.Of(report, all).ToJson(),
            page => new ProveWords(report, all).Write(page))
        {
            Failed = !report.Holds,
        };
    }
}
