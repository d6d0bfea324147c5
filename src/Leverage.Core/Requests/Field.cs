using Leverage.Reading;

namespace Leverage.Requests;

/// <summary>A question that can be asked of a request, and all that any door needs to ask it.</summary>
/// <param name="name">Name in small letters with hyphens: <c>tube-yield</c>.</param>
/// <param name="kind">What its values are.</param>
/// <param name="help">One line: what it is.</param>
internal abstract class Field(string name, FieldKind kind, string help)
{
    /// <summary>Its name: <c>--tube-yield</c> on the command line.</summary>
    internal string Name { get; } = name;

    /// <summary>What its values are.</summary>
    internal FieldKind Kind { get; } = kind;

    /// <summary>One line: what it is.</summary>
    internal string Help { get; } = help;

    /// <summary>What is taken when it is left out, in words; null where nothing is.</summary>
    internal string? LeftOut { get; init; }

    /// <summary>Fields without any of which it says nothing.</summary>
    internal IReadOnlyList<Field> Needs { get; init; } = [];

    /// <summary>Whether the command line takes it in its place, without its name.</summary>
    internal bool InPlace { get; init; }

    /// <summary>Its key in a file: <c>tube_yield</c>.</summary>
    internal string Key => Name.Replace('-', '_');

    /// <summary>Its name in words, for a form and for refusals: <c>tube yield</c>.</summary>
    internal string Label => Name.Replace('-', ' ');

    /// <summary>Help and what is taken when it is left out, as one line.</summary>
    internal string Described => LeftOut is null ? Help : $"{Help} ({LeftOut})";

    /// <summary>The value that cures a refusal for want of it.</summary>
    internal Cure Cure => new(Name, Kind.IsFlag ? "" : Kind.Example);
}

/// <summary>A question of one kind of request.</summary>
/// <typeparam name="TRequest">The request, an immutable record.</typeparam>
internal abstract class Field<TRequest>(string name, FieldKind kind, string help) : Field(name, kind, help)
{
    /// <summary>A field whose value is a struct.</summary>
    /// <param name="name">Name in small letters with hyphens.</param>
    /// <param name="kind">What its values are.</param>
    /// <param name="help">One line: what it is.</param>
    /// <param name="get">Its value in a request; null where it was not said.</param>
    /// <param name="set">The request with a value.</param>
    /// <param name="leftOut">What is taken when it is left out, in words.</param>
    /// <param name="needs">Fields without any of which it says nothing.</param>
    /// <param name="inPlace">Whether the command line takes it in its place, without its name.</param>
    internal static Field<TRequest, T> Of<T>(
        string name, FieldKind<T> kind, string help, Func<TRequest, T?> get, Func<TRequest, T, TRequest> set,
        string? leftOut = null, IReadOnlyList<Field>? needs = null, bool inPlace = false)
        where T : struct => new(name, kind, help, request => get(request) is { } value ? (true, value) : default, set)
        {
            LeftOut = leftOut,
            Needs = needs ?? [],
            InPlace = inPlace,
        };

    /// <summary>A field whose value is a class.</summary>
    /// <param name="name">Name in small letters with hyphens.</param>
    /// <param name="kind">What its values are.</param>
    /// <param name="help">One line: what it is.</param>
    /// <param name="get">Its value in a request; null where it was not said.</param>
    /// <param name="set">The request with a value.</param>
    /// <param name="leftOut">What is taken when it is left out, in words.</param>
    /// <param name="needs">Fields without any of which it says nothing.</param>
    /// <param name="inPlace">Whether the command line takes it in its place, without its name.</param>
    internal static Field<TRequest, T> Of<T>(
        string name, FieldKind<T> kind, string help, Func<TRequest, T?> get, Func<TRequest, T, TRequest> set,
        string? leftOut = null, IReadOnlyList<Field>? needs = null, bool inPlace = false)
        where T : class => new(name, kind, help, request => get(request) is { } value ? (true, value) : default, set)
        {
            LeftOut = leftOut,
            Needs = needs ?? [],
            InPlace = inPlace,
        };

    /// <summary>A field that is there or not.</summary>
    internal static Field<TRequest, bool> Flag(
        string name, string help, Func<TRequest, bool> get, Func<TRequest, bool, TRequest> set, IReadOnlyList<Field>? needs = null) =>
        new(name, Kinds.Flag, help, request => (get(request), true), set) { Needs = needs ?? [] };

    /// <summary>Whether a request says it.</summary>
    internal abstract bool IsSet(TRequest request);

    /// <summary>What a request says of it, as a text that is read back the same; null where it says nothing.</summary>
    internal abstract string? Text(TRequest request);

    /// <summary>The request with what a text says.</summary>
    /// <exception cref="InputException">The text cannot be read or is not accepted; the refusal names the field.</exception>
    internal abstract TRequest Read(TRequest request, string text);

    /// <summary>The request, this blank filled from another request.</summary>
    internal abstract TRequest Filled(TRequest request, TRequest from);

    /// <summary>Refuses a value that is not accepted, and one that says nothing for want of another.</summary>
    internal abstract void Check(TRequest request);
}

/// <summary>A question whose values are of one type.</summary>
/// <typeparam name="TRequest">The request.</typeparam>
/// <typeparam name="T">Type of the value.</typeparam>
internal sealed class Field<TRequest, T>(
    string name, FieldKind<T> kind, string help, Func<TRequest, (bool IsSet, T Value)> get, Func<TRequest, T, TRequest> set)
    : Field<TRequest>(name, kind, help)
{
    /// <summary>What its values are.</summary>
    internal FieldKind<T> Values { get; } = kind;

    /// <inheritdoc/>
    internal override bool IsSet(TRequest request) => get(request).IsSet;

    /// <inheritdoc/>
    internal override string? Text(TRequest request) => get(request) is (true, var value) ? Values.Write(value) : null;

    /// <summary>The value of a text.</summary>
    /// <exception cref="InputException">It cannot be read or is not accepted; the refusal names the field.</exception>
    internal T Value(string text) => InputException.About(Name, () => Values.Read(text));

    /// <inheritdoc/>
    internal override TRequest Read(TRequest request, string text) => set(request, Value(text));

    /// <inheritdoc/>
    internal override TRequest Filled(TRequest request, TRequest from) =>
        !IsSet(request) && get(from) is (true, var value) ? set(request, value) : request;

    /// <inheritdoc/>
    internal override void Check(TRequest request)
    {
        if (get(request) is not (true, var value))
        {
            return;
        }

        try
        {
            Values.CheckValue(value);
        }
        catch (InputException e)
        {
            throw e.About(Name);
        }

        if (Needs.Count > 0 && !Needs.OfType<Field<TRequest>>().Any(field => field.IsSet(request)))
        {
            throw new InputException(Name, $"is of no use without {string.Join(" or ", Needs.Select(field => field.Label))}.", Needs[0].Cure);
        }
    }
}

/// <summary>What is done with all the fields of a request.</summary>
internal static class FieldLists
{
    /// <summary>Refuses whatever a request says that is not accepted.</summary>
    /// <exception cref="InputException">The first such thing.</exception>
    internal static void Check<TRequest>(this IReadOnlyList<Field<TRequest>> fields, TRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        foreach (Field<TRequest> field in fields)
        {
            field.Check(request);
        }
    }

    /// <summary>The request, its blanks filled from another.</summary>
    internal static TRequest Filled<TRequest>(this IReadOnlyList<Field<TRequest>> fields, TRequest request, TRequest from) =>
        fields.Aggregate(request, (filled, field) => field.Filled(filled, from));

    /// <summary>The field of a name.</summary>
    /// <exception cref="InputException">There is none; the nearest are named.</exception>
    internal static Field<TRequest> Named<TRequest>(this IReadOnlyList<Field<TRequest>> fields, string name) =>
        fields.FirstOrDefault(field => field.Name == name) ?? throw Unknown(fields, name);

    private static InputException Unknown<TRequest>(IReadOnlyList<Field<TRequest>> fields, string name)
    {
        IReadOnlyList<string> near = NearestNames.Of(name, fields.Select(field => field.Name), 3);
        return new InputException(near.Count > 0
            ? $"there is no field '{name}'. Nearest: {string.Join(", ", near)}."
            : $"there is no field '{name}'.");
    }
}
