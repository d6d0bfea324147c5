
namespace Leverage.Cli.Tests.Commands;

/// <summary>Words of loosen that stand beside each other.</summary>
public sealed class LoosenWordsTests
{
    [Fact]
    public void Why_a_pull_falls_short_stands_beside_whether_it_comes_and_not_beside_whether_it_is_safe()
    {
        Ran ran = Ran.Here(Ran.Words("loosen 35Nm --thread M8 --hex 13mm --tool ring --bar 180mm --stance one-hand --on brake --more"));
        string[] answers = string.Join(' ', ran.Answer.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries)).Split("Is it safe?");

        Assert.Contains("stays tight 56. The nut likely needs", answers[0], StringComparison.Ordinal);
        Assert.DoesNotContain("likely needs", answers[1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_ring_is_named_with_its_width_and_length_whatever_the_number() => Assert.Contains(
        "Take a ring spanner of 18 mm, 265 mm long",
        Ran.Here(Ran.Words("loosen 60Nm --thread M12 --condition rusted --hex 18mm --tool open --bar 400mm --worn rounded --engaged 0.4")).Answer,
        StringComparison.Ordinal);
}
