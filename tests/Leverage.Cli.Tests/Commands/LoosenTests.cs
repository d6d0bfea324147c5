using System.Text.Json;

namespace Leverage.Cli.Tests.Commands;

public sealed class LoosenTests : IDisposable
{
    private const string Tubed = "loosen 460Nm --thread M24x1.5 --condition rusted --hex 36mm --drive 1/2 --bar 600mm "
        + "--tube 33.7x3.2x1000mm --overlap 250mm --stance stand-push --body 82kg";

    private const string Whole = Tubed + " --held-by brake,chock --mass 1250kg --wheel-load 3200N --tyre-radius 310mm --chock 100mm";

    private readonly string _folder = Directory.CreateTempSubdirectory("leverage-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_fields_of_the_answer_are_the_promised_ones_and_none_is_empty()
    {
        JsonElement json = Ran.Here(Ran.Words($"{Whole} --json")).Json();
        Assert.Equal(
            ["bookTorqueNm", "breakaway", "hand", "lever", "loadPath", "weakestLink", "tube", "hold", "release", "outcomes",
                "verdict", "reasons", "advice", "assumed", "unconfirmed"],
            Ran.Names(json));
        Assert.Equal(["lowNm", "likelyNm", "highNm"], Ran.Names(json.GetProperty("breakaway")));
        Assert.Equal(["stance", "lowN", "likelyN", "highN"], Ran.Names(json.GetProperty("hand")));
        Assert.Equal(
            ["reachMm", "neededLikelyMm", "neededHighMm", "handForceLikelyN", "handForceHighN"], Ran.Names(json.GetProperty("lever")));
        Assert.All(json.GetProperty("loadPath").EnumerateArray(), link => Assert.Equal(
            ["link", "demandLikelyNm", "demandHighNm", "limitNm", "safety", "source"], Ran.Names(link)));
        Assert.Equal(
            ["overlapMm", "handToTipMm", "tipReactionN", "mouthReactionN", "bendingNm", "tiltDeg", "friction", "slipAngleDeg",
                "slipAngleAtReleaseDeg", "bestOverlapMm"],
            Ran.Names(json.GetProperty("tube")));
        Assert.Equal(["demandNm", "capacityNm", "safety", "by"], Ran.Names(json.GetProperty("hold")));
        Assert.Equal(["energyJ", "handSpeedMs"], Ran.Names(json.GetProperty("release")));
        Assert.Equal(["comesLoose", "staysTight", "gives"], Ran.Names(json.GetProperty("outcomes")));
        Assert.DoesNotContain(Leaves(json), leaf => leaf.ValueKind == JsonValueKind.Null);
    }

    [Fact]
    public void The_answer_balances()
    {
        JsonElement json = Ran.Here(Ran.Words($"{Whole} --json")).Json();
        double reach = At(json, "lever", "reachMm");
        double likely = At(json, "breakaway", "likelyNm");
        double hand = likely * 1000 / reach;
        Assert.Equal(hand, At(json, "lever", "handForceLikelyN"), 6);
        Assert.Equal(hand, At(json, "tube", "tipReactionN") - At(json, "tube", "mouthReactionN"), 6);
        Assert.Equal(
            At(json, "tube", "mouthReactionN") * At(json, "tube", "overlapMm"), hand * At(json, "tube", "handToTipMm"), 3);
        Assert.Equal(hand * At(json, "tube", "handToTipMm") / 1000, At(json, "tube", "bendingNm"), 6);
        Assert.Equal(reach, 600 - 250 + 250 + At(json, "tube", "handToTipMm"), 9);
        Assert.Equal(1, At(json, "outcomes", "comesLoose") + At(json, "outcomes", "staysTight") + At(json, "outcomes", "gives"), 9);
        double cap = At(json, "hand", "highN") * reach / 1000;
        JsonElement[] links = [.. json.GetProperty("loadPath").EnumerateArray()];
        Assert.All(links, link =>
        {
            Assert.Equal(Math.Min(likely, cap), At(link, "demandLikelyNm"), 6);
            Assert.Equal(Math.Min(At(json, "breakaway", "highNm"), cap), At(link, "demandHighNm"), 6);
            Assert.Equal(At(link, "limitNm") / At(link, "demandHighNm"), At(link, "safety"), 9);
        });
        Assert.Equal(links.MinBy(link => At(link, "safety")).GetProperty("link").GetString(), json.GetProperty("weakestLink").GetString());
    }

    [Fact]
    public void The_first_example_is_no_go_and_draws_its_chart_and_side_view()
    {
        string chart = Path.Combine(_folder, "window.png");
        string sketch = Path.Combine(_folder, "side.svg");
        Ran ran = Ran.Here([.. Ran.Words(Tubed), "--chart", chart, "--sketch", sketch]);
        Assert.Equal((0, ""), (ran.Code, ran.Errors));
        Assert.Contains("  STOP   The ", ran.Answer, StringComparison.Ordinal);
        Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], File.ReadAllBytes(chart)[..4]);
        string drawn = File.ReadAllText(sketch);
        Assert.All(
            ["hands push", "tip lifts", "mouth is pressed", "pull along the tube", "friction holds"],
            force => Assert.Contains(force, drawn, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("", 0)]
    [InlineData(" --drive 3/4 --bar 1500mm --bar-diameter 30mm --grade 10.9 --condition clean", 0)]
    [InlineData(" --drive 1/2 --bar 600mm --condition rusted", 3)]
    [InlineData(" --drive 3/4 --bar 900mm --bar-diameter 24mm --condition used", 4)]
    public void Strict_turns_a_stop_into_3_and_care_into_4(string rest, int code)
    {
        string line = $"loosen 460Nm --thread M24x1.5 --hex 36mm --body 82kg{rest}";
        Ran ran = Ran.Here(Ran.Words($"{line} --strict --json"));
        string verdict = JsonDocument.Parse(ran.Answer).RootElement.GetProperty("verdict").GetString()!;
        Assert.Equal(code, ran.Code);
        Assert.Equal(code switch { 3 => "stop", 4 => "care", _ => "go" }, verdict);
        Assert.Equal(0, Ran.Here(Ran.Words(line)).Code);
    }

    [Fact]
    public void With_no_bar_it_answers_the_lever_it_takes()
    {
        JsonElement json = Ran.Here(Ran.Words("loosen 460Nm --thread M24x1.5 --json")).Json();
        Assert.Equal(
            At(json, "breakaway", "likelyNm") / At(json, "hand", "likelyN") * 1000, At(json, "lever", "neededLikelyMm"), 6);
        Assert.Equal(JsonValueKind.Null, json.GetProperty("lever").GetProperty("reachMm").ValueKind);
    }

    [Fact]
    public void A_half_shaft_out_leaves_gear_nothing_to_hold()
    {
        string line = Whole.Replace("brake,chock", "gear", StringComparison.Ordinal);
        JsonElement both = Ran.Here(Ran.Words($"{line} --json")).Json();
        JsonElement one = Ran.Here(Ran.Words($"{line} --half-shafts one --json")).Json();
        Assert.True(At(both, "hold", "capacityNm") > 0);
        Assert.Equal(0, At(one, "hold", "capacityNm"));
        Assert.Equal("stop", one.GetProperty("verdict").GetString());
        Assert.Contains(one.GetProperty("advice").EnumerateArray(), advice =>
            advice.GetString()!.StartsWith("in gear holds nothing once a half shaft is out", StringComparison.Ordinal));
    }

    [Fact]
    public void Drawing_lots_agrees_with_the_integral_and_a_seed_repeats_itself()
    {
        JsonElement json = Ran.Here(Ran.Words($"{Whole} --draws 400000 --start-number 11 --json")).Json();
        foreach (string outcome in new[] { "comesLoose", "staysTight", "gives" })
        {
            double chance = At(json, "outcomes", outcome);
            double error = Math.Sqrt(chance * (1 - chance) / 400_000);
            Assert.InRange(At(json, "crossCheck", outcome), chance - 4 * error, chance + 4 * error);
        }

        string again = Ran.Here(Ran.Words($"{Whole} --draws 400000 --start-number 11 --json")).Answer;
        Assert.Equal(again, Ran.Here(Ran.Words($"{Whole} --draws 400000 --start-number 11 --json")).Answer);
    }

    [Fact]
    public void Us_units_change_the_words_and_never_the_json()
    {
        Assert.Equal(Ran.Here(Ran.Words($"{Whole} --json")).Json().GetProperty("breakaway").GetRawText(),
            Ran.Here(Ran.Words($"{Whole} --json --units us")).Json().GetProperty("breakaway").GetRawText());
        string words = Ran.Here(Ran.Words($"{Whole} --units us")).Answer;
        Assert.Contains("lbf·ft", words, StringComparison.Ordinal);
        Assert.DoesNotContain("N·m", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Heating_the_nut_counts_nothing_and_says_what_is_near()
    {
        string line = Tubed + " --heat nut --by 150K";
        Assert.Equal(
            Ran.Here(Ran.Words($"{Tubed} --json")).Json().GetProperty("breakaway").GetRawText(),
            Ran.Here(Ran.Words($"{line} --json")).Json().GetProperty("breakaway").GetRawText());
        string words = Ran.Here(Ran.Words(line)).Answer;
        Assert.Contains("none is counted here", words, StringComparison.Ordinal);
        Assert.Contains("what is near minds it", words, StringComparison.Ordinal);
    }

    private static double At(JsonElement json, params string[] path) =>
        path.Aggregate(json, (element, name) => element.GetProperty(name)).GetDouble();

    private static IEnumerable<JsonElement> Leaves(JsonElement json) => json.ValueKind switch
    {
        JsonValueKind.Object => json.EnumerateObject().SelectMany(field => Leaves(field.Value)),
        JsonValueKind.Array => json.EnumerateArray().SelectMany(Leaves),
        _ => [json],
    };
}
