using System.Text.Json;

namespace Leverage.Cli.Tests.Commands;

public sealed class SlipTests : IDisposable
{
    private const string Line = "slip --bar 600mm --bar-diameter 20mm --tube 33.7x3.2x1000mm --overlap 250mm";

    private readonly string _folder = Directory.CreateTempSubdirectory("leverage-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_words_teach_three_states_then_what_worsens_then_what_helps()
    {
        string words = Ran.Here(Ran.Words(Line)).Answer;
        string[] parts = ["while it holds", "at break-loose", "if something snaps", "Makes it worse", "Helps", "overlap   tilt", "Before you pull"];
        int[] places = [.. parts.Select(part => words.IndexOf(part, StringComparison.Ordinal))];
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
    }

    [Fact]
    public void The_jam_is_the_statics_of_two_contacts()
    {
        JsonElement json = Ran.Here(Ran.Words($"{Line} --json")).Json();
        double a = json.GetProperty("handToTipMm").GetDouble();
        Assert.Equal(1000 - 250 - 95, a, 9);
        Assert.Equal((2 * a + 250) / 250, json.GetProperty("jamRatio").GetDouble(), 9);
        Assert.Equal(double.RadiansToDegrees(Math.Atan((27.3 - 20) / 250)), json.GetProperty("tiltDeg").GetDouble(), 3);
        Assert.Equal((27.3 - 20) / 20, json.GetProperty("playShare").GetDouble(), 9);
    }

    [Fact]
    public void It_lets_go_sooner_at_break_loose_and_at_once_if_something_snaps()
    {
        JsonElement json = Ran.Here(Ran.Words($"{Line} --json")).Json();
        string[] states = ["holding", "atRelease", "snapped"];
        double[] angles = [.. states.Select(state => json.GetProperty(state).GetProperty("slipAngleDeg").GetDouble())];
        Assert.Equal(angles.OrderDescending(), angles);
        Assert.True(angles[2] < 0);
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
    [InlineData("--surface dry", "go")]
    [InlineData("--surface greasy", "stop")]
    public void The_state_of_the_handle_decides(string handle, string verdict)
    {
        Ran ran = Ran.Here(Ran.Words($"{Line} {handle} --strict"));
        Assert.Equal(verdict == "go" ? 0 : 3, ran.Code);
        Assert.Contains($"  {verdict.ToUpperInvariant()}   ", ran.Answer, StringComparison.Ordinal);
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
