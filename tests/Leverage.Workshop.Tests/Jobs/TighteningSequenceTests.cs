using Leverage.Workshop.Jobs;

namespace Leverage.Workshop.Tests.Jobs;

public static class TighteningSequenceTests
{
    [Theory]
    [InlineData(4, "1 3 2 4")]
    [InlineData(5, "1 3 5 2 4")]
    [InlineData(6, "1 4 3 6 2 5")]
    [InlineData(8, "1 5 3 7 2 6 4 8")]
    public static void On_a_circle_each_next_one_lies_across(int count, string order) =>
        Assert.Equal(order.Split(' ').Select(int.Parse), TighteningSequence.Of(count, TighteningPattern.Circle));

    [Fact]
    public static void In_a_row_the_middle_comes_first() =>
        Assert.Equal([3, 4, 2, 5, 1, 6], TighteningSequence.Of(6, TighteningPattern.Row));

    [Fact]
    public static void Every_one_is_tightened_once_whatever_the_count_and_pattern()
    {
        for (int count = 1; count <= 200; count++)
        {
            foreach (TighteningPattern pattern in Enum.GetValues<TighteningPattern>())
            {
                Assert.Equal(Enumerable.Range(1, count), TighteningSequence.Of(count, pattern).Order());
            }
        }
    }

    [Fact]
    public static void On_a_circle_of_four_or_more_no_next_one_is_a_neighbour_but_between_pairs_of_an_even_count()
    {
        for (int count = 5; count <= 51; count += 2)
        {
            IReadOnlyList<int> order = TighteningSequence.Of(count, TighteningPattern.Circle);
            Assert.All(order.Zip(order.Skip(1)), pair => Assert.True(
                Math.Min(Math.Abs(pair.First - pair.Second), count - Math.Abs(pair.First - pair.Second)) >= count / 2));
        }

        for (int count = 4; count <= 50; count += 2)
        {
            IReadOnlyList<int> order = TighteningSequence.Of(count, TighteningPattern.Circle);
            Assert.All(order.Chunk(2), pair => Assert.Equal(count / 2, Math.Abs(pair[0] - pair[1])));
        }
    }
}
