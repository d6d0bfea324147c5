using System.CommandLine;
using Leverage.Wording;
using Leverage.Reading;

namespace Leverage.Cli.Input;

/// <summary>What was given on the command line, already read.</summary>
internal sealed class Given
{
    private readonly ParseResult _result;
    private readonly CommonOptions _common;

    /// <summary>The values of a parse without errors.</summary>
    internal Given(ParseResult result, CommonOptions common) => (_result, _common) = (result, common);

    /// <summary>Whether files may be replaced.</summary>
    internal bool ForceWrite => _common.ForceWrite.IsIn(_result);

    /// <summary>Whether the answer is wanted as JSON.</summary>
    internal bool Json => _common.Json.IsIn(_result);

    /// <summary>Units of the words.</summary>
    internal UnitStyle Units => Get(_common.Units) ?? UnitStyle.Metric;

    /// <summary>Whether a flag was given.</summary>
    internal bool Get(Flag flag) => flag.IsIn(_result);

    /// <summary>The value of an option, or its type's nothing when it was left out.</summary>
    internal T? Get<T>(Asked<T> option) => (T?)_result.GetValue(option);

    /// <summary>The value of an argument, or its type's nothing when it was left out.</summary>
    internal T? Get<T>(AskedArgument<T> argument) => (T?)_result.GetValue(argument);

    /// <summary>The words of an argument that takes several, or null when it was left out.</summary>
    internal string[]? Get(Argument<string[]> argument) => _result.GetValue(argument);

    /// <summary>The value of an option that this question cannot do without.</summary>
    /// <param name="option">The option.</param>
    /// <param name="cure">What to write, such as "write for example --thread M12x1.25."</param>
    /// <exception cref="InputException">It was left out.</exception>
    internal T Need<T>(Asked<T?> option, string cure)
        where T : class =>
        Get(option) ?? throw new InputException(option.Name, $"is needed here: {cure}");

    /// <summary>Runs a part of Core whose refusals name a thing by its plain name: here that is the option of that name.</summary>
    internal static T Options<T>(Func<T> read)
    {
        try
        {
            return read();
        }
        catch (InputException e) when (e.Subject is { } subject && !subject.StartsWith('-'))
        {
            throw new InputException($"--{subject}", e.Message);
        }
    }

    /// <summary>Runs a reader of Core whose refusal is about an option.</summary>
    internal static T About<T>(Option option, Func<T> read)
    {
        try
        {
            return read();
        }
        catch (InputException e)
        {
            throw e.About(option.Name);
        }
    }
}
