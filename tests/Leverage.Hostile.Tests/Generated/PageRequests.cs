using System.Text.Json;
using FsCheck;
using FsCheck.Fluent;
using Leverage.Page.Asking;
using Leverage.Page.Pack;
using Leverage.Requests;

namespace Leverage.Hostile.Tests.Generated;

/// <summary>Requests to the page: addresses of its own fields, and opened files.</summary>
internal static class PageRequests
{
    private static readonly (string Name, string Text)[] Example =
        [.. FieldList.Example.Split('&').Select(pair => pair.Split('=')).Select(pair => (pair[0], pair[1]))];

    /// <summary>An address whose answer has to be drawn, mostly.</summary>
    internal static Gen<HostileInput> Whole { get; } =
        from kept in Gen.SubListOf(Example)
        from more in Gen.Choose(0, 2).SelectMany(n => Gen.ArrayOf(Field, n))
        from units in Gen.Elements("", "us", "metric")
        from path in Gen.Elements("loosen", "sketch", "lesson")
        select Get(path, [.. kept, .. more, .. units is "" ? [] : (IEnumerable<(string, string)>)[("units", units)]]);

    /// <summary>An address nobody meant: refused before anything is drawn, mostly.</summary>
    internal static Gen<HostileInput> Refused { get; } =
        from path in Gen.Frequency((6, Gen.Constant("loosen")), (2, Gen.Elements("lesson", "tighten", "check", "code", "table")))
        from good in Gen.Choose(0, 3).SelectMany(n => Gen.ArrayOf(Field, n))
        from bad in from name in Gen.OneOf(Gen.Elements<string>([.. LooseningFields.All.Select(field => field.Name)]), AnyText.Any) from text in AnyText.Any select (name, text)
        select Get(path, [.. good, bad]);

    /// <summary>Files sent to be opened.</summary>
    internal static Gen<HostileInput> Opened { get; } =
        from chest in FileTexts.Chest(4)
        from job in Gen.OneOf(FileTexts.Job, FileTexts.JobWithList)
        from list in FileTexts.List
        from which in Gen.Choose(0, 3)
        from name in Gen.Elements("chest.toml", "job.toml", "", "\u0000", "../../x.toml", "a/b.toml", "x.csv")
        from body in Gen.Frequency(
            (8, Gen.Constant(Body(which switch
            {
                0 => [(name, chest)],
                1 => [(name, job)],
                2 => [("job.toml", job), (HostileInput.BesideName, list)],
                _ => [("job.toml", job), (name, list), ("chest.toml", chest)],
            }))),
            (1, AnyText.Any),
            (1, Gen.Elements("null", "[]", "[null]", "[{}]", "{}", "[{\"name\":1}]", "[[]]", "[{\"name\":null,\"text\":null}]")))
        from mark in Gen.Elements("", Marked("done", "true"), Marked("held", "250Nm"), Marked("held", "\"\n[["), Marked("came_loose", "90Nm", "x"), "null", "{}")
        select new HostileInput(Door.Page, [which == 0 ? "open" : mark.Length > 0 ? "mark" : "job", mark], body);

    private static string Marked(string key, params string[] values) => JsonSerializer.Serialize(new { table = "fasteners", name = "wheel nuts, left", key, values });

    private static Gen<(string Name, string Text)> Field { get; } =
        from name in Gen.Elements<string>([.. LooseningFields.All.Select(field => field.Name)])
        from text in Gen.Frequency((4, Value(name)), (1, AnyText.Any))
        select (name, text);

    private static Gen<string> Value(string name) => name switch
    {
        "torque" or "prevailing" => Values.Torque,
        "thread" => Values.Thread,
        "grade" => Values.Grade,
        "tube" => Values.Tube,
        "friction" or "surface-friction" => Values.Of("NUMBER")!,
        "by" => Values.Of("RISE")!,
        "bar-yield" or "tube-yield" => Values.Of("STRESS")!,
        "past-square" or "bar-taper" => Values.Of("ANGLE")!,
        "body" or "mass" => Values.Of("MASS")!,
        "force" or "wheel-load" => Values.Of("FORCE")!,
        "held-by" => Values.Of("LIST")!,
        "condition" or "stance" or "surface" or "ground" or "drive" or "person" or "tool" or "side" or "heat" or "half-shafts"
            => Values.Name(["used", "rusted", "stand-push", "dry", "oily", "dry-concrete", "1/2", "3/4", "man", "woman", "socket", "key", "left", "nut", "one"]),
        _ => Values.Length,
    };

    private static HostileInput Get(string path, IEnumerable<(string Name, string Text)> fields) => new(
        Door.Page,
        [path, string.Join('&', fields.Select(field => $"{Escaped(field.Name)}={Escaped(field.Text)}"))]);

    /// <summary>Half a surrogate pair cannot be sent at all: it goes as what stands for a letter that is none.</summary>
    private static string Escaped(string text) => string.Concat(text.EnumerateRunes().Select(rune => Uri.EscapeDataString(rune.ToString())));

    private static string Body((string Name, string Text)[] files) =>
        JsonSerializer.Serialize(files.Select(file => new { name = file.Name, text = file.Text }));
}
