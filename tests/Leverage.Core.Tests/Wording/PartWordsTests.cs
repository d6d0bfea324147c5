using Leverage.LoadPath;
using Leverage.Wording;

namespace Leverage.Tests.Wording;

/// <summary>Parts by the names a shop knows them by.</summary>
public sealed class PartWordsTests
{
    [Theory]
    [InlineData(LinkKind.Socket, 36, "36 mm socket", "36 mm socket")]
    [InlineData(LinkKind.Socket, 28.575, "1-1/8 in socket", "1-1/8 in socket")]
    [InlineData(LinkKind.Ring, 23.8125, "15/16 in ring spanner", "15/16 in ring spanner")]
    [InlineData(LinkKind.Open, 25.4, "1 in open spanner", "1 in open spanner")]
    [InlineData(LinkKind.Key, 9.525, "3/8 in hexagon key", "3/8 in hexagon key")]
    [InlineData(LinkKind.Bar, 15.5, "15.5 mm bar", "0.61 in bar")]
    [InlineData(LinkKind.FlexPin, 8, "8 mm flex pin", "0.315 in flex pin")]
    public void A_part_is_named_by_its_size(LinkKind kind, double sizeMm, string metric, string us)
    {
        LinkLimit link = LinkLimit.Least(kind, 1, LimitSource.TestTorque, true) with { SizeMm = sizeMm };
        Assert.Equal((metric, us), (PartWords.Name(link, UnitStyle.Metric), PartWords.Name(link, UnitStyle.Us)));
    }

    [Theory]
    [InlineData(LinkKind.Square, "1/2", "1/2 in square")]
    [InlineData(LinkKind.Adapter, "3/4", "3/4 in adapter")]
    [InlineData(LinkKind.Extension, "1/2", "1/2 in extension")]
    [InlineData(LinkKind.Stud, "M24x1.5 8.8", "M24x1.5 8.8 bolt or stud")]
    [InlineData(LinkKind.TubeDentMouth, null, "tube at its mouth")]
    public void A_part_without_a_size_is_named_by_its_name(LinkKind kind, string? name, string words)
    {
        LinkLimit link = LinkLimit.Least(kind, 1, LimitSource.TestTorque, true) with { Name = name };
        Assert.Equal(words, PartWords.Name(link, UnitStyle.Us));
    }

    [Fact]
    public void Every_kind_has_a_name_a_verb_and_every_source_words_of_its_own()
    {
        LinkKind[] kinds = Enum.GetValues<LinkKind>();
        Assert.Equal(kinds.Length, kinds.Select(PartWords.Name).Distinct(StringComparer.Ordinal).Count());
        Assert.All(kinds, kind => Assert.NotEmpty(PartWords.Breaks(kind)));
        string[] sources = [.. Enum.GetValues<LimitSource>()
            .Select(source => PartWords.Source(LinkLimit.Least(LinkKind.Socket, 1, source, true)))];
        Assert.Equal(sources.Length, sources.Distinct(StringComparer.Ordinal).Count());
    }
}
