namespace Leverage.Reading;

/// <summary>Something a person wrote cannot be used: one line that says what, why and the cure.</summary>
public sealed class InputException : Exception
{
    private readonly string[]? _lines;

    /// <summary>An error about a thing the caller will name.</summary>
    /// <param name="message">What is wrong, why, and what to write instead.</param>
    public InputException(string message)
        : this(null, message)
    {
    }

    /// <summary>An error about a named thing.</summary>
    /// <param name="subject">What it is about: an option, or a file with its line and column.</param>
    /// <param name="message">What is wrong, why, and what to write instead.</param>
    public InputException(string? subject, string message)
        : base(PlainText.OneLine(message)) => Subject = subject is null ? null : PlainText.OneLine(subject);

    private InputException(IReadOnlyList<InputException> all)
        : this(all[0].Subject, all[0].Message) => _lines = [.. all.Select(each => each.Line).Distinct(StringComparer.Ordinal)];

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

    /// <summary>What it is about: an option such as <c>--torque</c>, or <c>job.toml(12,3): torque</c>; null if not yet known.</summary>
    public string? Subject { get; }

    /// <summary>The same error about a named thing, unless it names one already.</summary>
    /// <param name="subject">What it is about.</param>
    /// <returns>The error with its subject.</returns>
    public InputException About(string subject) => Subject is null ? new InputException(subject, Message) : this;

    /// <summary>The whole line: subject, then message.</summary>
    public string Line => Subject is null ? Message : $"{Subject}: {Message}";
}
