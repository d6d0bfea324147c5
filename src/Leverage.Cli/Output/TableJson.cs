using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Leverage.Tables;

namespace Leverage.Cli.Output;

/// <summary>Tables as JSON: a column of nothing but numbers as numbers, a blank as null; names and grades stay text.</summary>
internal static class TableJson
{
    private static readonly JsonWriterOptions Layout = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>All tables: name, title and count of rows.</summary>
    internal static string List() => Write(json =>
    {
        foreach (string name in TableCatalog.Tables.Names)
        {
            Table table = TableCatalog.Tables[name];
            json.WriteStartObject();
            json.WriteString("name", name);
            json.WriteString("title", table.Title);
            json.WriteNumber("rows", table.Rows.Count);
            json.WriteEndObject();
        }
    });

    /// <summary>Chosen rows of tables, every column under its name in the file.</summary>
    internal static string Of(IReadOnlyList<TableChoice> chosen) => Write(json =>
    {
        foreach (TableChoice choice in chosen)
        {
            json.WriteStartObject();
            json.WriteString("name", choice.Table.Name);
            json.WriteString("title", choice.Table.Title);
            json.WriteStartArray("notes");
            foreach (string note in choice.Table.Notes)
            {
                json.WriteStringValue(note);
            }

            json.WriteEndArray();
            json.WriteStartArray("rows");
            Rows(json, choice);
            json.WriteEndArray();
            json.WriteEndObject();
        }
    });

    private static void Rows(Utf8JsonWriter json, TableChoice choice)
    {
        IReadOnlyList<string> columns = choice.Table.Columns;
        bool[] numbers = [.. columns.Select(column => TableShape.IsNumber(choice.Table, column))];
        foreach (TableRow row in choice.Rows)
        {
            json.WriteStartObject();
            for (int i = 0; i < columns.Count; i++)
            {
                Cell(json, columns[i], row.Cells[i], numbers[i]);
            }

            json.WriteEndObject();
        }
    }

    private static void Cell(Utf8JsonWriter json, string column, string cell, bool number)
    {
        if (cell.Length == 0)
        {
            json.WriteNull(column);
        }
        else if (number && TableRow.TryNumber(cell, out double value))
        {
            json.WriteNumber(column, value);
        }
        else
        {
            json.WriteString(column, cell);
        }
    }

    private static string Write(Action<Utf8JsonWriter> items)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Layout))
        {
            json.WriteStartArray();
            items(json);
            json.WriteEndArray();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }
}

/// <summary>A table in the list of all of them.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Title">What it is.</param>
/// <param name="Rows">How many rows it has.</param>
internal sealed record TableName(string Name, string Title, int Rows);

/// <summary>Rows of a table, each column under its name in the file; <see cref="TableJson"/> writes them cell by cell.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Title">What it is.</param>
/// <param name="Notes">What its file says of it.</param>
/// <param name="Rows">The rows that were wanted.</param>
internal sealed record TableAnswer(string Name, string Title, IReadOnlyList<string> Notes, IReadOnlyList<Dictionary<string, JsonElement>> Rows);

/// <summary>Shapes of the answers of <c>leverage table</c>, without reflection.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(TableName[]))]
[JsonSerializable(typeof(TableAnswer[]))]
internal sealed partial class TableAnswersJson : JsonSerializerContext;
