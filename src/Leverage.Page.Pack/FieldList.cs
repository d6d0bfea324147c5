using Leverage.Page.Asking;
using Leverage.Requests;
using Leverage.Tables;

namespace Leverage.Page.Pack;

/// <summary>One name that may be chosen, and what it means.</summary>
internal sealed record Choice(string Key, string Words);

/// <summary>A field as the page shows it, made from the core's.</summary>
/// <param name="Name">Its name in the address.</param>
/// <param name="Group">Where it stands.</param>
/// <param name="Label">Its label.</param>
/// <param name="Help">One line: what it is.</param>
/// <param name="LeftOut">What is taken when it is left out; empty where nothing is.</param>
/// <param name="Kind">number, choice, flag, text or list.</param>
/// <param name="Units">Units it may be written in, the usual one first.</param>
/// <param name="Choices">What may be chosen.</param>
/// <param name="Needs">Fields without any of which it says nothing.</param>
/// <param name="Step">What a stepper adds, in the first unit.</param>
/// <param name="Example">Something that can be typed.</param>
internal sealed record FieldLine(
    string Name, string Group, string Label, string Help, string LeftOut, string Kind, IReadOnlyList<string> Units,
    IReadOnlyList<Choice> Choices, IReadOnlyList<string> Needs, double Step, string Example);

/// <summary>Everything the page can ask, with its example.</summary>
internal sealed record PageFields(
    IReadOnlyList<FieldLine> Fields, IReadOnlyList<FieldLine> Tighten, IReadOnlyList<string> Check, string Example, IReadOnlyList<string> Tables);

/// <summary>The fields of the page, out of the core's one list.</summary>
internal static class FieldList
{
    /// <summary>A set-up that a move of the tube, the hands or the swing turns from go to care or stop.</summary>
    internal const string Example = "torque=460Nm&thread=M24x1.5&grade=10.9&condition=used&drive=3/4&bar=600mm&bar-diameter=22mm"
        + "&tube=33.7x3.2x1200mm&overlap=400mm&surface=dry&past-square=10deg&stance=stand-push&body=82kg"
        + "&held-by=brake,chock,helper&mass=1400kg&chock=120mm";

    private static readonly Dictionary<string, (string[] Units, double Step)> Quantities = new(StringComparer.Ordinal)
    {
        ["TORQUE"] = (["Nm", "ft-lb", "kgf-m"], 10),
        ["LENGTH"] = (["mm", "in", "cm", "m"], 10),
        ["FORCE"] = (["N", "kgf", "lbf"], 20),
        ["MASS"] = (["kg", "lb"], 5),
        ["STRESS"] = (["MPa", "ksi"], 10),
        ["ANGLE"] = (["deg"], 5),
        ["RISE"] = (["C", "F"], 10),
        ["SHARE"] = (["%"], 5),
        ["NUMBER"] = ([], 0.01),
    };

    /// <summary>The groups the page shows, each with the fields named first in it; any other field goes behind its "more".</summary>
    private static readonly (string Group, string[] Names)[] Groups =
    [
        ("nut", ["hex", "thread", "on", "torque", "condition"]),
        ("bar", ["bar", "drive", "bar-diameter"]),
        ("bar-more", ["tool", "tool-size", "bar-yield", "bar-straight", "bar-taper", "bar-pin", "bar-pin-planes", "adapters", "extension", "stand-off", "points", "engaged", "worn"]),
        ("tube", ["overlap", "surface"]),
        ("tube-more", ["bore", "tube-yield", "surface-friction"]),
        ("hands", ["stance", "person", "body", "force", "people", "hands-in", "past-square", "start-past-square", "room"]),
        ("hold", ["held-by", "mass", "wheel-load", "tyre-radius", "chock", "ground", "half-shafts", "hold-bar", "side", "on-stands", "engine-running", "ratio"]),
        ("own", ["tube"]),
    ];

    /// <summary>All of it.</summary>
    internal static PageFields All() => new(
        [.. LooseningFields.All.Select(field => Line(field, Group(field.Name))).OrderBy(line => Place(line.Name))],
        [.. TighteningFields.All.Select(field => Line(field, field.Name is "thread" or "grade" or "lubrication" or "torque" ? "tighten" : "tighten-more"))],
        [.. TighteningFields.Check.Select(field => field.Name)],
        Example,
        [.. TableCatalog.Tables.Names]);

    private static FieldLine Line(Field field, string group)
    {
        bool counted = Quantities.TryGetValue(field.Kind.Value, out var quantity);
        Choice[] choices = counted ? [] : Choices(field);
        FieldWords words = FieldWords.All[field.Name];
        return new FieldLine(
            field.Name,
            group,
            words.Label,
            words.Help ?? field.Help,
            words.LeftOut ?? field.LeftOut ?? "",
            field.Kind switch
            {
                { IsFlag: true } => "flag",
                { IsList: true } => choices.Length > 0 ? "list" : "text",
                _ => counted ? "number" : choices.Length is > 0 and <= 40 ? "choice" : "text",
            },
            quantity.Units ?? [],
            choices,
            field.Needs.Count == 0 && group.StartsWith("tube", StringComparison.Ordinal) ? ["tube"] : [.. field.Needs.Select(need => need.Name)],
            quantity.Step,
            field.Kind.Example);
    }

    private static Choice[] Choices(Field field)
    {
        Table? table = field.Kind.Table is { } name ? TableCatalog.Tables[name] : null;
        return [.. field.Kind.Names().Select(key => new Choice(key, FieldWords.Choice(field.Name, key) ?? Words(table, key)))];
    }

    private static string Words(Table? table, string key) =>
        table is not null && table.Has("words") ? table.Rows.First(row => row.Key == key).OptionalText("words") ?? key : key;

    private static string Group(string name) =>
        Array.Find(Groups, group => group.Names.Contains(name, StringComparer.Ordinal)).Group ?? "nut-more";

    private static int Place(string name) => Groups.SelectMany(group => group.Names).ToList().IndexOf(name) is >= 0 and var at ? at : 999;
}
