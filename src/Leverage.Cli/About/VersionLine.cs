using System.CommandLine;
using System.CommandLine.Invocation;
using System.Reflection;
using Leverage.Cli.Input;
using Leverage.Cli.Output;

namespace Leverage.Cli.About;

/// <summary><c>leverage --version</c>: which one this is.</summary>
internal sealed class VersionLine : SynchronousCommandLineAction
{
    private readonly Terminal _terminal;

    private VersionLine(Terminal terminal) => _terminal = terminal;

    /// <summary>The version of this program, as its assembly says it.</summary>
    internal static string Text =>
        typeof(VersionLine).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;

    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <summary>The option that asks for it.</summary>
    internal static Flag Option(Terminal terminal) => new("--version", "show the version") { Action = new VersionLine(terminal) };

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        _terminal.Answers.Write(Text + "\n");
        return ExitCode.Answered;
    }
}
