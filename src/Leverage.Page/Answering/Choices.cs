using System.Text.Json;
using Leverage.Tables;

namespace Leverage.Page.Answering;

/// <summary>One name that may be chosen, and what it means.</summary>
internal sealed record Choice(string Key, string Words);

/// <summary>Names out of the tables, field by field, and the set-up the page opens with.</summary>
internal sealed record ChoiceLists(
    string Example,
    IReadOnlyList<Choice> Condition,
    IReadOnlyList<Choice> Stance,
    IReadOnlyList<Choice> Handle,
    IReadOnlyList<Choice> Ground,
    IReadOnlyList<Choice> Drive,
    IReadOnlyList<Choice> Thread,
    IReadOnlyList<Choice> Grade);

/// <summary>What the page offers to choose from.</summary>
internal static class Choices
{
    /// <summary>
    /// The set-up the page opens with: a go at 400 mm of overlap that turns to care or stop by any one of its sliders.
    /// </summary>
    internal const string Example = "torque=460Nm&thread=M24x1.5&grade=10.9&condition=used&drive=3/4&bar=600mm&bar-diameter=22mm"
        + "&tube=33.7x3.2x1200mm&overlap=400mm&surface=dry&past-square=20deg&stance=stand-push&body=82kg"
        + "&held-by=brake,chock,helper&mass=1400kg&chock=120mm";

    private static readonly Lazy<byte[]> Bytes = new(() => JsonSerializer.SerializeToUtf8Bytes(All(), PageJson.Shared.ChoiceLists));

    /// <summary>The lists as JSON.</summary>
    internal static byte[] Json => Bytes.Value;

    private static ChoiceLists All() => new(
        Example,
        Worded("conditions"),
        Worded("stances"),
        Worded("handle-friction"),
        Worded("ground"),
        [.. Keys("drive-squares").Select(key => new Choice(key, $"{key} in"))],
        [.. Keys("threads-metric").Concat(Keys("threads-unified")).Select(key => new Choice(key, ""))],
        [.. Keys("grades").Select(key => new Choice(key, ""))]);

    private static Choice[] Worded(string table) =>
        [.. TableCatalog.Tables[table].Rows.Select(row => new Choice(row.Key, row.Text("words")))];

    private static IEnumerable<string> Keys(string table) =>
        TableCatalog.Tables[table].Rows.Select(row => row.Key).Distinct(StringComparer.Ordinal);
}
