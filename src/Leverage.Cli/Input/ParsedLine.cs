using System.CommandLine;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Wording;

namespace Leverage.Cli.Input;

/// <summary>What was given on the command line.</summary>
internal sealed class ParsedLine
{
    private readonly ParseResult _result;
    private readonly CommonOptions _common;

    /// <summary>The texts of a parse without errors.</summary>
    internal ParsedLine(ParseResult result, CommonOptions common) => (_result, _common) = (result, common);

    /// <summary>Whether files may be replaced.</summary>
    internal bool ForceWrite => _common.ForceWrite.IsIn(_result);

    /// <summary>Whether the answer is wanted as JSON.</summary>
    internal bool Json => _common.Json.IsIn(_result);

    /// <summary>Units of the words.</summary>
    internal UnitStyle Units => Read(_common.Units, CommonOptions.UnitStyles) ?? UnitStyle.Metric;

    /// <summary>The text of an option or an argument, or null when it was left out; of a flag, what says that it is there.</summary>
    internal string? Text(Symbol symbol) => symbol switch
    {
        Flag flag => flag.IsIn(_result) ? "true" : null,
        TextOption option => _result.GetValue(option),
        TextArgument argument when _result.GetValue(argument) is { } text => !ErrorLine.LooksLikeOption(text)
            ? text
            : throw new InputException(argument.Name, $"'{text}' is not an option here."),
        _ => null,
    };

    /// <summary>Whether a flag was given.</summary>
    internal bool Get(Flag flag) => flag.IsIn(_result);

    /// <summary>The words of an argument that takes several.</summary>
    internal string[] Get(Argument<string[]> argument) => _result.GetValue(argument) ?? [];

    /// <summary>What a kind reads of an option, or null when it was left out.</summary>
    internal T? Read<T>(TextOption option, FieldKind<T> kind)
        where T : class => Text(option) is { } text ? InputException.About(option.Name, () => kind.Read(text)) : null;

    /// <summary>What a kind reads of an option, or what stands for it when it was left out.</summary>
    internal T Read<T>(TextOption option, FieldKind<T> kind, T leftOut)
        where T : struct => Text(option) is { } text ? InputException.About(option.Name, () => kind.Read(text)) : leftOut;
}
