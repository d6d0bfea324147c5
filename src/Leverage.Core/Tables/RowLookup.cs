using Leverage.Reading;

namespace Leverage.Tables;

/// <summary>Finds a table's row by the name a person wrote, or says which names come nearest.</summary>
public static class RowLookup
{
    /// <summary>The row whose first cell is the name; case is ignored.</summary>
    /// <param name="table">Name of the table.</param>
    /// <param name="name">What the person wrote.</param>
    /// <param name="what">What it should be, for the refusal: "a condition", "a stance".</param>
    /// <returns>The row.</returns>
    /// <exception cref="InputException">No row has that name; the message gives the nearest names.</exception>
    public static TableRow Named(string table, string name, string what)
    {
        Table rows = TableCatalog.Tables[table];
        var wanted = name.AsSpan().Trim();
        foreach (TableRow row in rows.Rows)
        {
            if (row.Part(0).Equals(wanted, StringComparison.OrdinalIgnoreCase))
            {
                return row;
            }
        }

        throw Unknown(name, what, rows.Rows.Select(row => row.Key).Distinct(StringComparer.Ordinal), table);
    }

    /// <summary>The refusal of a name that is in no row.</summary>
    /// <param name="name">What the person wrote.</param>
    /// <param name="what">What it should be, with its article.</param>
    /// <param name="known">The names there are.</param>
    /// <param name="table">The table that lists them all.</param>
    /// <returns>The error, with the nearest names.</returns>
    public static InputException Unknown(string name, string what, IEnumerable<string> known, string table)
    {
        var near = NearestNames.Of(name.Trim(), known, 4);
        string cure = near.Count > 0 ? $"Nearest: {string.Join(", ", near)}. " : "";
        return new InputException($"'{name}' is not {what} known here. {cure}All of them: table {table}.");
    }
}
