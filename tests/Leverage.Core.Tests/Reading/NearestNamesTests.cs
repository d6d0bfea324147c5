using FsCheck.Xunit;
using Leverage.Reading;

namespace Leverage.Tests.Reading;

public sealed class NearestNamesTests
{
    private static readonly string[] Conditions = ["clean", "used", "rusted", "salted", "heat-rusted", "locked-medium", "locked-high", "staked"];

    [Theory]
    [InlineData("rustd", "rusted")]
    [InlineData("RUSTED", "rusted")]
    [InlineData("rutsed", "rusted")]
    [InlineData("locked", "locked-medium locked-high")]
    [InlineData("heat-rust", "heat-rusted")]
    public void A_mistyped_name_gets_the_names_spelt_most_like_it_first(string text, string names) =>
        Assert.StartsWith(names, string.Join(" ", NearestNames.Of(text, Conditions, 3)), StringComparison.Ordinal);

    [Fact]
    public void A_name_like_none_gets_none() => Assert.Empty(NearestNames.Of("galvanised", Conditions, 3));

    [Fact]
    public void No_more_names_than_asked_for_are_given() =>
        Assert.Single(NearestNames.Of("locked", Conditions, 1));

    [Theory]
    [InlineData("", "abc", 3)]
    [InlineData("abc", "abc", 0)]
    [InlineData("abc", "acb", 1)]
    [InlineData("abc", "ab", 1)]
    [InlineData("kitten", "sitting", 3)]
    public void Distance_counts_letters_to_insert_drop_change_or_swap(string from, string to, int distance) =>
        Assert.Equal(distance, NearestNames.Distance(from, to));

    [Property]
    public bool Distance_is_the_same_both_ways_and_zero_only_for_equal_texts(string? from, string? to)
    {
        var (a, b) = (from ?? "", to ?? "");
        var distance = NearestNames.Distance(a, b);
        return distance == NearestNames.Distance(b, a) && (distance == 0) == string.Equals(a, b, StringComparison.Ordinal);
    }

    [Fact]
    public void Asking_for_no_names_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => NearestNames.Of("x", Conditions, 0));
}
