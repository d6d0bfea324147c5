using System.Text.Json;

namespace Leverage.Cli.Tests.Commands;

public sealed class SlipTests : IDisposable
{
    private const string Line = "slip --bar 600mm --bar-diameter 20mm --tube 33.7x3.2x1000mm --overlap 250mm";

    /// <summary>What one screen says, in order.</summary>
    private static readonly string[] Screen = ["Stays on?", "Safe angle", "Least overlap", "Comes first", "Why it slides", "Best overlap", "Your swing"];

    private readonly string _folder = Directory.CreateTempSubdirectory("leverage-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_words_teach_three_states_then_what_worsens_then_what_helps()
    {
        string words = Ran.Here(Ran.Words($"{Line} --more")).Answer;
        string[] parts = ["GO  Tube of", .. Screen, "Nut holds", "Nut turns", "Something snaps", "Makes it worse", "Helps", "overlap   tilt", "Before you pull"];
        int[] places = [.. parts.Select(part => words.IndexOf(part, StringComparison.Ordinal))];
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
    }

    [Theory]
    [InlineData(Line)]
    [InlineData(Line + " --surface greasy --start-past-square 35deg --units us --stance lift-legs")]
    [InlineData("slip 460Nm --thread M24x1.5 --condition rusted --bar 600mm --drive 3/4 --tube jack:1100mm --bore 30mm --past-square 75deg")]
    [InlineData("slip --bar 250mm --bar-diameter 15mm --tube 26.9x2.6x800mm --overlap 80mm --surface greasy --stance stand-pull")]
    public void One_screen_says_whether_it_stays_on_how_far_what_comes_first_and_why(string line)
    {
        string words = Ran.Here(Ran.Words(line)).Answer;
        Assert.InRange(words.Count(letter => letter == '\n'), 1, 24);
        int[] places = [.. Screen.Select(label => words.IndexOf($"\n  {label}", StringComparison.Ordinal))];
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
        Assert.DoesNotContain("Makes it worse", words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_jam_is_the_statics_of_two_contacts()
    {
        JsonElement answer = Ran.Here(Ran.Words($"{Line} --force 500N --json")).Json();
        Assert.Equal(["tube", "overlaps", "verdict", "reasons", "assumed"], Ran.Names(answer));
        JsonElement json = answer.GetProperty("tube");
        double a = json.GetProperty("handToTipMm").GetDouble();
        Assert.Equal(1000 - 250 - 95, a, 9);
        Assert.Equal("down", json.GetProperty("pushes").GetString());
        Assert.Equal(
            250 / (a + 250), (json.GetProperty("tipReactionN").GetDouble() - json.GetProperty("mouthReactionN").GetDouble()) / json.GetProperty("tipReactionN").GetDouble(), 9);
        JsonElement row = answer.GetProperty("overlaps")[0];
        Assert.Equal((2 * row.GetProperty("handToTipMm").GetDouble() + 20) / 20, row.GetProperty("jamRatio").GetDouble(), 9);
        Assert.Equal(double.RadiansToDegrees(Math.Atan((27.3 - 20) / 250)), json.GetProperty("tiltDeg").GetDouble(), 3);
    }

    [Fact]
    public void It_slides_sooner_as_the_nut_turns_and_sooner_still_once_the_clamp_is_gone()
    {
        double[] Angles(string nut)
        {
            JsonElement tube = Ran.Here(Ran.Words($"slip {nut} {Line["slip ".Length..]} --json")).Json().GetProperty("tube");
            return [tube.GetProperty("slipAngleDeg").GetDouble(), tube.GetProperty("slipAngleAtEndDeg").GetDouble()];
        }

        double[] alone = Angles("--condition rusted");
        double[] nut = Angles("460Nm --thread M24x1.5 --condition rusted");
        Assert.Equal(alone[0], nut[0], 9);
        Assert.True(nut[1] < alone[1] && alone[1] < alone[0]);
    }

    [Fact]
    public void A_lift_is_told_above_level_and_no_line_passes_eighty_columns()
    {
        string words = Ran.Here(Ran.Words($"{Line} --stance lift-legs --surface oily")).Answer;
        Assert.Contains("above level", words, StringComparison.Ordinal);
        Assert.All(words.Split('\n'), line => Assert.InRange(line.Length, 0, 80));
        Assert.All(["gives first", "walks", "buys", "sleeve"], word => Assert.DoesNotContain(word, words, StringComparison.Ordinal));
    }

    [Fact]
    public void Chart_and_side_view_are_written_and_say_their_words()
    {
        string chart = Path.Combine(_folder, "slip.svg");
        string sketch = Path.Combine(_folder, "side.svg");
        Ran ran = Ran.Here([.. Ran.Words(Line), "--chart", chart, "--sketch", sketch]);
        Assert.Equal((0, ""), (ran.Code, ran.Errors));
        Assert.All(
            ["dry", "oily", "greasy", "tip dents it", "mouth dents", "bends", "overlap, mm"],
            word => Assert.Contains(word, File.ReadAllText(chart), StringComparison.Ordinal));
        Assert.Contains("friction holds up to", File.ReadAllText(sketch), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Line, "go", 0)]
    [InlineData(Line + " --past-square 45deg", "care", 4)]
    [InlineData(Line + " --surface greasy --start-past-square 35deg", "stop", 3)]
    [InlineData("slip --bar 250mm --bar-diameter 15mm --tube 26.9x2.6x800mm --overlap 80mm --surface greasy", "stop", 3)]
    public void Sliding_and_the_tube_against_the_push_decide(string line, string verdict, int code)
    {
        Ran ran = Ran.Here(Ran.Words($"{line} --strict"));
        Assert.Equal(code, ran.Code);
        Assert.StartsWith($"{verdict.ToUpperInvariant()}  ", ran.Answer, StringComparison.Ordinal);
        Assert.Equal(verdict, Ran.Here(Ran.Words($"{line} --json")).Json().GetProperty("verdict").GetString());
    }

    [Theory]
    [InlineData("--tube 20x3x1000mm", "--tube")]
    [InlineData("--tube 33.7x3.2x1000mm --overlap 1200mm", "--overlap")]
    public void A_tube_that_does_not_go_on_is_refused_by_name(string rest, string option)
    {
        Ran ran = Ran.Here(Ran.Words($"slip --bar 600mm --bar-diameter 20mm {rest}"));
        Assert.Equal((2, ""), (ran.Code, ran.Answer));
        Assert.StartsWith($"leverage: {option}: ", ran.Errors, StringComparison.Ordinal);
    }
}
