using System.CommandLine;
using Leverage.Reading;
using Leverage.Requests;

namespace Leverage.Cli.Input;

/// <summary>The options and arguments of a list of fields.</summary>
/// <typeparam name="TRequest">The request they make.</typeparam>
internal sealed class FieldOptions<TRequest>
{
    private readonly (Field<TRequest> Field, Symbol Symbol)[] _entries;

    /// <summary>An option for each field; an argument for one that stands in its place.</summary>
    /// <param name="fields">The fields, in the order the help shows them.</param>
    /// <param name="required">The field that may not be left out, if any.</param>
    internal FieldOptions(IReadOnlyList<Field<TRequest>> fields, Field<TRequest>? required = null) =>
        _entries = [.. fields.Select(field => (field, Symbol(field, field == required)))];

    /// <summary>They, in the order the help shows them.</summary>
    internal IEnumerable<Symbol> Symbols => _entries.Select(entry => entry.Symbol);

    /// <summary>The request that was written.</summary>
    /// <param name="parsed">What was given.</param>
    /// <param name="request">The request to begin with.</param>
    /// <param name="named">Takes a text that names a thing instead of saying a value; null where it says one.</param>
    /// <exception cref="InputException">A text cannot be read; the refusal names its field.</exception>
    internal TRequest Read(ParsedLine parsed, TRequest request, Func<TRequest, Field<TRequest>, string, TRequest?>? named = null)
    {
        foreach (var (field, symbol) in _entries)
        {
            if (parsed.Text(symbol) is { } text)
            {
                request = named is not null && named(request, field, text) is { } with ? with : field.Read(request, text);
            }
        }

        return request;
    }

    private static Symbol Symbol(Field<TRequest> field, bool required) => field switch
    {
        { Kind.IsFlag: true } => new Flag($"--{field.Name}", field.Described),
        { InPlace: true } => new TextArgument(field.Name.ToUpperInvariant(), field.Described, required),
        _ => new TextOption($"--{field.Name}", field.Kind, field.Described),
    };
}
