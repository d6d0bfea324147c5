using FsCheck;
using FsCheck.Fluent;
using Leverage.Tables;
using Leverage.Workshop.Jobs;

namespace Leverage.Hostile.Tests.Generated;

/// <summary>Keys written below the blocks of a job, or as columns of its list: every key a fastener or a task can have, mostly with a value of its kind.</summary>
internal static class JobKeys
{
    private const string Fasteners = "[[fasteners]]\n";
    private const string Tasks = "[[tasks]]\n";

    private static readonly Gen<string> Words = Gen.Frequency((4, Gen.Elements("50 km", "clean the flange", "both sides", "rags")), (1, AnyText.Any));
    private static readonly Gen<string> Flag = Gen.Frequency((8, Gen.Elements("true", "false")), (1, AnyText.Any.Select(Quoted)));
    private static readonly string[] TaskTexts = ["refit", "supplies", "photograph", "note", "needs", "gives", "ends", "after"];

    /// <summary>A job with up to four keys more.</summary>
    internal static Gen<string> Below(string text) => Gen.Choose(0, 4).SelectMany(times => Below(text, times));

    /// <summary>A list with up to three columns more.</summary>
    internal static Gen<string> Columns(string text, string separator) => Gen.Choose(0, 3).SelectMany(times => Columns(text, separator, times));

    private static Gen<string> Below(string text, int times) => times == 0
        ? Gen.Constant(text)
        : (from line in Gen.Frequency((3, FastenerLine), (1, TaskLine))
           from at in Gen.Choose(0, 7)
           select Put(text, line.Head, line.Line, at)).SelectMany(more => Below(more, times - 1));

    private static Gen<(string Head, string Line)> FastenerLine =>
        from key in Gen.Elements<FastenerKey>([.. FastenerKey.All])
        from value in Toml(key)
        select (Fasteners, $"{key.Name} = {value}");

    private static Gen<(string Head, string Line)> TaskLine => Gen.OneOf(
        Flag.Select(value => (Tasks, $"done = {value}")),
        from key in Gen.Elements<string>(TaskTexts) from value in Words select (Tasks, $"{key} = {Quoted(value)}"));

    /// <summary>The line below one of the heads, in place of a line of the same key there.</summary>
    private static string Put(string text, string head, string line, int at)
    {
        string[] parts = text.Split(head);
        if (parts.Length < 2)
        {
            return text;
        }

        int which = 1 + at % (parts.Length - 1);
        int end = parts[which].IndexOf("\n[", StringComparison.Ordinal) is var found and >= 0 ? found : parts[which].Length;
        string start = line[..(line.IndexOf('=', StringComparison.Ordinal) + 1)];
        string block = string.Join('\n', parts[which][..end].Split('\n').Where(one => !one.StartsWith(start, StringComparison.Ordinal)));
        parts[which] = $"{line}\n{block}{parts[which][end..]}";
        return string.Join(head, parts);
    }

    private static Gen<string> Columns(string text, string separator, int times) => times == 0
        ? Gen.Constant(text)
        : (from key in Gen.Elements<FastenerKey>([.. FastenerKey.All])
           from unit in Gen.Frequency((2, Gen.Constant("")), (1, Gen.Elements(" [Nm]", " [mm]", " (N·m)", " / in")))
           from cells in Gen.ArrayOf(Gen.Frequency((1, Gen.Constant("")), (3, Cell(key))), 8)
           select string.Join('\n', text.Split('\n').Select((row, i) => $"{row.TrimEnd('\r')}{separator}{(i == 0 ? key.Name + unit : cells[i % 8])}")))
            .SelectMany(more => Columns(more, separator, times - 1));

    private static Gen<string> Cell(FastenerKey key) => key.Kind switch
    {
        KeyKind.Flag => Gen.Elements("WAHR", "TRUE", "x", "no", "0", "perhaps"),
        KeyKind.Quantities => Gen.ListOf(Quantity(key), 3).Select(all => string.Join(" / ", all)),
        _ => Value(key),
    };

    private static Gen<string> Toml(FastenerKey key) => key.Kind switch
    {
        KeyKind.Flag => Flag,
        KeyKind.Count => Gen.Frequency((8, Gen.Choose(-1, 201).Select(count => count.ToString(null, null))), (1, AnyText.Any.Select(Quoted))),
        KeyKind.Quantities => Gen.Choose(0, 5).SelectMany(count => Gen.ArrayOf(Quantity(key), count)).Select(all => $"[{string.Join(", ", all.Select(Quoted))}]"),
        _ => Value(key).Select(Quoted),
    };

    private static Gen<string> Value(FastenerKey key) => key.Kind switch
    {
        KeyKind.Quantity => Quantity(key),
        KeyKind.Count => Gen.Choose(0, 9).Select(count => count.ToString(null, null)),
        KeyKind.Designation => key.Name == "grade" ? Values.Grade : Values.Thread,
        KeyKind.Names => Values.Name(Names(key.Name)),
        _ => Words,
    };

    private static string[] Names(string key) => key switch
    {
        "wheel" => ["rear left", "rear right", "front left", "front right"],
        "pattern" => ["circle", "row", "two-rows", "none"],
        "tool" => ["socket", "ring", "open", "key"],
        "stances" => Rows("stances"),
        "condition" => Rows("conditions"),
        "clamped" => Rows("clamped-materials"),
        _ => Rows("friction"),
    };

    private static string[] Rows(string table) => [.. TableCatalog.Tables[table].Rows.Select(row => row.Key)];

    private static Gen<string> Quantity(FastenerKey key) => key.Unit == "Nm" ? Values.Torque : Values.Length;

    private static string Quoted(string text) =>
        $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
}
