using System.CommandLine;
using Leverage.Reading;
using Leverage.Tables;
using Leverage.Threads;

namespace Leverage.Cli.Input;

/// <summary>Options that take a name: of a thread, of a row in a table, or one of a few words.</summary>
internal static class NameOption
{
    /// <summary>A thread, such as M24x1.5 or 1/2-20.</summary>
    internal static Asked<ScrewThread?> Thread(string description)
    {
        Asked<ScrewThread?> option = new Asked<ScrewThread?>("--thread", "SIZE", description, ThreadCatalog.Named);
        option.CompletionSources.Add(_ => Keys("threads-metric").Concat(Keys("threads-unified")));
        return option;
    }

    /// <summary>A bolt's grade, kept as text: its strength depends on the thread.</summary>
    internal static Asked<string?> Grade(string description)
    {
        Asked<string?> option = new Asked<string?>("--grade", "GRADE", description, text => text);
        option.CompletionSources.Add(_ => Keys("grades"));
        return option;
    }

    /// <summary>The key of a row in a table, checked against it.</summary>
    /// <param name="name">Name of the option.</param>
    /// <param name="description">One line for the help.</param>
    /// <param name="table">Name of the table.</param>
    /// <param name="what">What the name should be, for the refusal: "a condition".</param>
    internal static Asked<string?> Row(string name, string description, string table, string what)
    {
        Asked<string?> option = new Asked<string?>(
            name, "NAME", description, text => RowLookup.Named(table, text, what).Key);
        option.CompletionSources.Add(_ => Keys(table));
        return option;
    }

    /// <summary>One of a few words, each standing for a value.</summary>
    /// <param name="name">Name of the option.</param>
    /// <param name="description">One line for the help.</param>
    /// <param name="choices">The words with their values, each a <typeparamref name="T"/>.</param>
    internal static Asked<T> Choice<T>(string name, string description, params (string Word, object Value)[] choices)
    {
        string[] words = Words(choices);
        var option = new Asked<T>(name, string.Join('|', words), description, Reader(words, choices));
        option.CompletionSources.Add(words);
        return option;
    }

    private static string[] Words((string Word, object Value)[] choices)
    {
        string[] words = new string[choices.Length];
        for (int i = 0; i < words.Length; i++)
        {
            words[i] = choices[i].Word;
        }

        return words;
    }

    private static Func<string, object> Reader(string[] words, (string Word, object Value)[] choices) => text =>
    {
        int found = Array.FindIndex(words, word => word.Equals(text, StringComparison.OrdinalIgnoreCase));
        return found >= 0
            ? choices[found].Value
            : throw new InputException($"'{text}' is not accepted here: write {string.Join(" or ", words)}.");
    };

    private static IEnumerable<string> Keys(string table) =>
        TableCatalog.Tables[table].Rows.Select(row => row.Key).Distinct(StringComparer.Ordinal);
}
