using System.Text.Json.Nodes;
using Leverage.Reading;
using Leverage.Workshop.Chest;
using Leverage.Workshop.Jobs;

namespace Leverage.Workshop.Tests.Jobs;

/// <summary>The schemas of chest and job files say what their readers take: the keys, and which of them must be there.</summary>
public static class FileSchemaTests
{
    private static readonly JsonObject Chest = FileSchema.Chest();
    private static readonly JsonObject Job = FileSchema.Job();

    public static TheoryData<string> Files => [.. FileSchema.All.Select(file => file.Name)];

    public static TheoryData<string> ChestTables => [.. Keys(Chest)];

    [Theory]
    [MemberData(nameof(Files))]
    public static void The_published_one_is_what_the_program_says(string name) => Assert.True(
        JsonNode.DeepEquals(
            JsonNode.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "schemas", $"{name}.schema.json"))),
            FileSchema.All.Single(file => file.Name == name).Of()),
        $"leverage --schema {name} > shared/schemas/{name}.schema.json");

    [Theory]
    [MemberData(nameof(ChestTables))]
    public static void A_table_of_a_chest_takes_the_keys_of_the_schema_and_needs_those_it_requires(string table)
    {
        JsonObject schema = Chest["properties"]![table]!["items"]!.AsObject();
        foreach (string[] set in Sets(schema))
        {
            string[] lines = [.. set.Select(key => $"{key} = \"{Example(schema["properties"]![key]!)}\"")];
            _ = ToolChest.Parse("chest.toml", Table(lines));
            Assert.Equal(Keys(schema).Order(StringComparer.Ordinal), Known(() => ToolChest.Parse("chest.toml", Table([.. lines, "zzz = \"1\""]))));
            Assert.All(lines, line => Assert.Throws<InputException>(() => ToolChest.Parse("chest.toml", Table([.. lines.Where(other => other != line)]))));
        }

        string Table(string[] lines) => $"[[{table}]]\n{string.Join('\n', lines)}\n";
    }

    [Fact]
    public static void The_chest_takes_the_tables_of_the_schema() =>
        Assert.Equal(Keys(Chest).Order(StringComparer.Ordinal), Known(() => ToolChest.Parse("chest.toml", "zzz = \"1\"")));

    [Theory]
    [InlineData("", "zzz = \"1\"\ntitle = \"x\"\n[[fasteners]]\nname = \"a\"\ntorque = \"10Nm\"\n")]
    [InlineData("vehicle", "title = \"x\"\n[vehicle]\nzzz = \"1\"\n[[fasteners]]\nname = \"a\"\ntorque = \"10Nm\"\n")]
    [InlineData("fasteners", "title = \"x\"\n[[fasteners]]\nname = \"a\"\ntorque = \"10Nm\"\nzzz = \"1\"\n")]
    [InlineData("tasks", "title = \"x\"\n[[fasteners]]\nname = \"a\"\ntorque = \"10Nm\"\n[[tasks]]\nname = \"b\"\nzzz = \"1\"\n")]
    public static void A_job_takes_the_keys_of_the_schema(string table, string text)
    {
        JsonNode schema = table.Length == 0 ? Job : Job["properties"]![table]!;
        Assert.Equal(Keys((schema["items"] ?? schema).AsObject()).Order(StringComparer.Ordinal), Known(() => JobText.Read(text)));
    }

    [Fact]
    public static void Keys_of_a_fastener_are_explained_as_everywhere_else()
    {
        JsonObject properties = Job["properties"]!["fasteners"]!["items"]!["properties"]!.AsObject();

        Assert.All(FastenerKey.All, key => Assert.Equal(key.Help, (string?)properties[key.Name]!["description"]));
    }

    private static IEnumerable<string> Keys(JsonObject schema) => schema["properties"]!.AsObject().Select(property => property.Key);

    private static IEnumerable<string[]> Sets(JsonObject schema) =>
        schema["anyOf"]!.AsArray().Select(set => set!["required"]!.AsArray().Select(key => key!.GetValue<string>()).ToArray());

    private static string Example(JsonNode property) => (property["examples"] ?? property["enum"] ?? property["anyOf"]![0]!["examples"]!)[0]!.GetValue<string>();

    /// <summary>The keys a refusal of an unknown one lists.</summary>
    private static IEnumerable<string> Known(Action read)
    {
        string line = Assert.Throws<InputException>(read).Line;
        return line[(line.IndexOf("Known: ", StringComparison.Ordinal) + 7)..].TrimEnd('.').Split(", ").Order(StringComparer.Ordinal);
    }
}
