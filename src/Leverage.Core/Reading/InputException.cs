namespace Leverage.Reading;

/// <summary>A value that would cure a refusal, and the field it belongs to.</summary>
/// <param name="Field">Name of the field, such as <c>tube-yield</c>.</param>
/// <param name="Example">A value that is accepted there, such as <c>235MPa</c>; empty for a field that is only there or not.</param>
public readonly record struct Cure(string Field, string Example);

/// <summary>Something a person said cannot be used: what it is about, what is wrong, and what would cure it.</summary>
/// <remarks>
/// A refusal names the field; the door it came in by adds the dress: <c>--tube</c> on the command line, <c>tube = "…"</c> in a file.
/// </remarks>
public sealed class InputException : Exception
{
    private readonly string _problem;
    private readonly Cure[] _cures;
    private readonly string[]? _lines;

    /// <summary>A refusal of a thing the caller will name.</summary>
    /// <param name="problem">What is wrong, and what to write instead.</param>
    public InputException(string problem)
        : this(null, problem)
    {
    }

    /// <summary>A refusal of a field.</summary>
    /// <param name="field">Name of the field.</param>
    /// <param name="problem">What is wrong, a whole sentence.</param>
    /// <param name="cures">Values that would cure it, all of them together.</param>
    public InputException(string? field, string problem, params ReadOnlySpan<Cure> cures)
        : this(field, PlainText.OneLine(problem), cures.ToArray(), placed: false)
    {
    }

    private InputException(string? subject, string problem, Cure[] cures, bool placed)
        : base(Told(problem, cures, Plain)) =>
        (Subject, _problem, _cures, IsPlaced) = (subject is null ? null : PlainText.OneLine(subject), problem, cures, placed);

    private InputException(IReadOnlyList<InputException> all)
        : this(all[0].Subject, all[0].Message, [], all[0].IsPlaced) => _lines = [.. all.Select(each => each.Line).Distinct(StringComparer.Ordinal)];

    /// <summary>Several errors as one, such as all those of a file: the first speaks for it where only one can be told.</summary>
    /// <param name="errors">The errors, one or more, in the order they are to be told.</param>
    /// <returns>The only one of them, or one that holds them all.</returns>
    public static InputException All(IReadOnlyList<InputException> errors)
    {
        ArgumentNullException.ThrowIfNull(errors);
        return errors.Count == 1 ? errors[0] : new InputException(errors);
    }

    /// <summary>The lines of all errors it stands for, one each.</summary>
    public IReadOnlyList<string> Lines => _lines ?? [Line];

    /// <summary>What it is about: a field, or where it stands in a file, <c>job.toml(12,3): torque</c>; null if not yet known.</summary>
    public string? Subject { get; }

    /// <summary>Values that would cure it, all of them together; may be empty.</summary>
    public IReadOnlyList<Cure> Cures => _cures;

    /// <summary>Whether the subject is a place in a file and no field.</summary>
    internal bool IsPlaced { get; }

    /// <summary>The whole line: subject, then message.</summary>
    public string Line => Subject is null ? Message : $"{Subject}: {Message}";

    /// <summary>The same refusal of a named field, unless it names something already.</summary>
    /// <param name="field">Name of the field.</param>
    /// <returns>The refusal with its subject.</returns>
    public InputException About(string field) =>
        Subject is null ? new InputException(field, _problem, _cures, placed: false) : this;

    /// <summary>What a reader reads, its refusal being about a field.</summary>
    internal static T About<T>(string field, Func<T> read)
    {
        try
        {
            return read();
        }
        catch (InputException e)
        {
            throw e.About(field);
        }
    }

    /// <summary>A refusal of what stands at a place of a file.</summary>
    internal static InputException At(string place, string message) =>
        new(place, PlainText.OneLine(message), [], placed: true);

    /// <summary>The message with its cures in a door's dress.</summary>
    internal string MessageIn(Func<Cure, string> dress) => Told(_problem, _cures, dress);

    private static string Told(string problem, Cure[] cures, Func<Cure, string> dress) => cures.Length == 0
        ? problem
        : $"{problem} Write: {string.Join(' ', cures.Select(dress))}";

    private static string Plain(Cure cure) => $"{cure.Field} {cure.Example}".TrimEnd();
}
