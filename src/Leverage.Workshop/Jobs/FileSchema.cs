using System.Text.Json.Nodes;
using Leverage.Requests;
using Leverage.Workshop.Chest;
using Leverage.Workshop.Files;

namespace Leverage.Workshop.Jobs;

/// <summary>JSON Schemas of chest and job files, for editors that complete and check TOML by them. Values stand as the file has them: quantities with their unit are texts.</summary>
internal static class FileSchema
{
    private const string Dialect = "https://json-schema.org/draft/2020-12/schema";

    /// <summary>The files that have one, by the name of the schema.</summary>
    internal static readonly IReadOnlyList<(string Name, Func<JsonObject> Of)> All = [("chest-file", Chest), ("job-file", Job)];

    /// <summary>A chest file.</summary>
    internal static JsonObject Chest() => Top("A chest of tools", ChestTables());

    /// <summary>A job file.</summary>
    internal static JsonObject Job()
    {
        JsonObject chest = Table(ChestTables());
        return Top("A job", Object(
            ("title", Text("what the job is", "Rear axle shafts out")),
            ("note", Text("what to know of the whole", "invented")),
            ("chest", new JsonObject { ["description"] = "a chest file beside this one, or the chest itself", ["anyOf"] = new JsonArray(Text(null, "chest.toml"), chest) }),
            ("people", Several("who is there: names of people of the chest", "owner")),
            ("hung_mass", Of(TighteningFields.ByWeight)),
            ("at_start", Several("states that hold before the first task", "wheels down")),
            ("vehicle", Table(Object(
                ("name", Text("what it is", "old pick-up")),
                ("mass", Of(LooseningFields.VehicleMass)),
                ("wheel_load_front", Of(LooseningFields.WheelLoad)),
                ("wheel_load_rear", Of(LooseningFields.WheelLoad)),
                ("tyre_radius", Of(LooseningFields.TyreRadius)),
                ("ground", Of(LooseningFields.Ground)),
                ("driven", Several("driven axles: front, rear, both or none", "rear")),
                ("parking_brake_on", Text("the axle the parking brake holds", "rear"))))),
            ("fastener_list", Text("a spreadsheet's list beside this file, in place of [[fasteners]]", "fasteners.csv")),
            ("fasteners", Tables(Object([.. FastenerKey.All.Select(key => (key.Name, Of(key)))]), ["name", "torque"], ["name", "thread"])),
            ("tasks", Tables(Object(
                ("name", Text("its name, unlike any other's", "Lift the rear")),
                ("needs", Several("states that must hold", "wheels down")),
                ("ends", Several("states it puts an end to", "wheels down")),
                ("gives", Several("states that hold afterwards", "on stands")),
                ("after", Several("names of tasks it comes after", "Lift the rear")),
                ("loosens", Several("names of fasteners broken loose", "wheel nuts")),
                ("takes_off", Several("names of fasteners taken off", "wheel nuts")),
                ("photograph", Text("what to take a picture of first", "shoes and springs")),
                ("note", Text("what to mind", "draw it straight")),
                ("refit", Several("what is to be done when it goes back", "bleed the brake")),
                ("supplies", Several("what it uses up", "brake cleaner")),
                ("done", Flag("it has been done"))), ["name"]))), "title");
    }

    private static JsonObject ChestTables()
    {
        JsonObject drive = Of(LooseningFields.Drive);
        JsonObject sizes = Several("widths across flats it fits", "17mm");
        JsonObject length = Of(LooseningFields.Bar);
        var points = new JsonObject { ["description"] = "points of a socket or ring; six where it is not said", ["enum"] = new JsonArray(6, 12, "6", "12") };
        (string, JsonObject) Name() => ("name", Text("what its owner calls it, unlike any other's", "long bar"));
        (string, JsonObject) Named(string key, JsonObject value) => (key, value.DeepClone().AsObject());
        (string, JsonObject) Bar(Field field) => (SectionFields.KeyOf("bar", field), Of(field));
        return Object(
            ("bars", Tables(Object(
                Name(), Named("drive", drive), Bar(LooseningFields.Bar), Bar(LooseningFields.BarDiameter), Bar(LooseningFields.BarStraight),
                Bar(LooseningFields.BarTaper), Bar(LooseningFields.BarYield), Bar(LooseningFields.BarPin), Bar(LooseningFields.BarPinPlanes)),
                ["name", "drive", "length"])),
            ("sockets", Tables(Object(Name(), Named("drive", drive), Named("size", sizes), Named("points", points)), ["name", "drive", "size"])),
            ("keys", Tables(Object(Name(), Named("drive", drive), Named("length", length), Named("size", sizes)), ["name", "size", "drive"], ["name", "size", "length"])),
            ("spanners", Tables(Object(Name(), Of(PieceKeys.Spanner), Named("size", sizes), Named("length", length), Named("points", points)), ["name", "kind", "size", "length"])),
            ("adapters", Tables(Object(Name(), Named("from", drive), Named("to", Text("its own square, that goes into the socket", "3/4")), Of(PieceKeys.AdapterLength)), ["name", "from", "to"])),
            ("extensions", Tables(Object(Name(), Named("drive", drive), (SectionFields.KeyOf("extension", LooseningFields.Extension), Of(LooseningFields.Extension))), ["name", "drive", "length"])),
            ("tubes", Tables(Object(
                Name(), Of(PieceKeys.TubeLength), Of(PieceKeys.Outside), Of(PieceKeys.Wall),
                ("bore", Of(LooseningFields.Bore)), ("yield", Of(LooseningFields.TubeYield)), ("material", Text("a name of the table tube-steels, in place of yield", "S235"))),
                ["name", "length", "outside", "wall"], ["name", "length", "bore"])),
            ("torque_wrenches", Tables(Object(
                Name(), Named("drive", drive), ("length", Of(TighteningFields.Wrench)), Of(PieceKeys.From), Of(PieceKeys.To), Of(PieceKeys.Accuracy)),
                ["name", "drive", "length", "from", "to", "accuracy"])),
            ("people", Tables(Object(
                Name(), ("person", Of(LooseningFields.Person)), ("body", Of(LooseningFields.Body)),
                ("forces", new JsonObject { ["description"] = "forces they measured themselves, by stance", ["type"] = "object", ["additionalProperties"] = Of(LooseningFields.Force) })),
                ["name", "person"])),
            ("holds", Tables(Object(
                Name(), Of(PieceKeys.Hold),
                ("height", Of(LooseningFields.Chock)), ("diameter", Of(LooseningFields.HoldBar))), ["name", "kind"])));
    }

    private static (string, JsonObject) Of<T>(PieceKey<T> key)
        where T : struct => (key.Name, key.Values.Names().Any() ? Choice(key.Help, [.. key.Values.Names()]) : Text(key.Help, key.Values.Example));

    private static JsonObject Of(Field field) => Text(field.Help, field.Kind.Example);

    private static JsonObject Of(FastenerKey key) => key.Kind switch
    {
        KeyKind.Flag => Flag(key.Help),
        KeyKind.Count => new JsonObject { ["description"] = key.Help, ["type"] = "integer", ["minimum"] = 1 },
        KeyKind.Quantities => Several(key.Help, null),
        _ => key.Name == "stances" ? Several(key.Help, null) : Text(key.Help, null),
    };

    private static JsonObject Top(string title, JsonObject properties, params string[] required) => new()
    {
        ["$schema"] = Dialect,
        ["title"] = title,
        ["type"] = "object",
        ["properties"] = properties,
        ["required"] = new JsonArray([.. required.Select(name => (JsonNode)name)]),
        ["additionalProperties"] = false,
    };

    /// <summary>Tables of a key, each with at least one of some sets of keys.</summary>
    private static JsonObject Tables(JsonObject properties, params string[][] sets)
    {
        JsonObject table = Table(properties);
        table["anyOf"] = new JsonArray([.. sets.Select(set => (JsonNode)new JsonObject { ["required"] = new JsonArray([.. set.Select(name => (JsonNode)name)]) })]);
        return new JsonObject { ["type"] = "array", ["items"] = table };
    }

    private static JsonObject Table(JsonObject properties) => new() { ["type"] = "object", ["properties"] = properties, ["additionalProperties"] = false };

    private static JsonObject Object(params (string Key, JsonObject Value)[] properties) =>
        new(properties.Select(property => KeyValuePair.Create(property.Key, (JsonNode?)property.Value)));

    private static JsonObject Flag(string help) => new() { ["description"] = help, ["type"] = "boolean" };

    private static JsonObject Choice(string help, params string[] words) =>
        new() { ["description"] = help, ["enum"] = new JsonArray([.. words.Select(word => (JsonNode)word)]) };

    private static JsonObject Text(string? help, string? example)
    {
        JsonObject text = help is null ? [] : new() { ["description"] = help };
        text["type"] = "string";
        if (example is not null)
        {
            text["examples"] = new JsonArray(example);
        }

        return text;
    }

    private static JsonObject Several(string help, string? example)
    {
        JsonObject one = Text(null, example);
        return new JsonObject { ["description"] = help, ["anyOf"] = new JsonArray(one, new JsonObject { ["type"] = "array", ["items"] = one.DeepClone() }) };
    }
}
