using Leverage.Reading;

namespace Leverage.Requests;

/// <summary>A question as one line of words: <c>460Nm --thread M24x1.5 --bar 600mm</c>, a value with spaces in double quotes.</summary>
internal static class ArgumentLine
{
    /// <summary>The request a line asks.</summary>
    /// <param name="fields">The fields it may name.</param>
    /// <param name="empty">A request that says nothing.</param>
    /// <param name="line">The line.</param>
    /// <exception cref="InputException">A name is no field, a value is missing or cannot be read.</exception>
    internal static TRequest Read<TRequest>(IReadOnlyList<Field<TRequest>> fields, TRequest empty, string line)
    {
        TRequest request = empty;
        using IEnumerator<string> words = Words(line).GetEnumerator();
        while (words.MoveNext())
        {
            bool named = words.Current.StartsWith("--", StringComparison.Ordinal);
            Field<TRequest> field = named
                ? fields.Named(words.Current[2..])
                : fields.FirstOrDefault(one => one.InPlace) ?? throw new InputException($"'{words.Current}' is one word too many.");
            string value = !named ? words.Current
                : field.Kind.IsFlag ? field.Kind.Example
                : words.MoveNext() ? words.Current
                : throw new InputException(field.Name, "its value is missing.", field.Cure);
            request = field.Read(request, field.Kind.IsList && field.Text(request) is { } before ? $"{before},{value}" : value);
        }

        return request;
    }

    private static IEnumerable<string> Words(string line)
    {
        foreach (var (part, quoted) in line.Split('"').Select((part, i) => (part, i % 2 == 1)))
        {
            foreach (string word in quoted ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                yield return word;
            }
        }
    }
}
