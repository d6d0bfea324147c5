using System.Text.Json;

namespace Leverage.Cli.Tests.Commands;

public sealed class LoosenTests : IDisposable
{
    private const string Tubed = "loosen 460Nm --thread M24x1.5 --condition rusted --hex 36mm --drive 1/2 --bar 600mm "
        + "--tube 33.7x3.2x1000mm --overlap 250mm --stance stand-push --body 82kg";

    private const string Whole = Tubed + " --held-by brake,chock --mass 1250kg --wheel-load 3200N --tyre-radius 310mm --chock 100mm";

    private static readonly string[] Chances =
        ["comesLoose", "staysTight", "toolGives", "studTwistsOff", "cornersRound", "slidesOff", "wheelTurns"];

    private readonly string _folder = Directory.CreateTempSubdirectory("leverage-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_fields_of_the_answer_are_the_promised_ones_and_none_is_empty()
    {
        JsonElement json = Ran.Here(Ran.Words($"{Whole} --json")).Json();
        Assert.Equal(
            ["breakaway", "start", "hand", "lever", "strongPullNm", "loadPath", "weakestLink", "notJudged", "tube", "hold", "release",
                "outcomes", "safe", "comes", "verdict", "moves", "reasons", "watch", "assumed"],
            Ran.Names(json));
        Assert.Equal(["lowNm", "likelyNm", "highNm"], Ran.Names(json.GetProperty("breakaway")));
        Assert.Equal(["from", "torqueNm"], Ran.Names(json.GetProperty("start")));
        Assert.Equal(["stance", "lowN", "likelyN", "highN"], Ran.Names(json.GetProperty("hand")));
        Assert.Equal(["reachMm", "neededLikelyMm", "neededHighMm"], Ran.Names(json.GetProperty("lever")));
        Assert.All(json.GetProperty("loadPath").EnumerateArray(), link => Assert.Equal(
            ["link", "limitNm", "loadNm", "margin", "source", "confirmed"], Ran.Names(link)));
        Assert.Equal(
            ["overlapMm", "handToTipMm", "tipReactionN", "mouthReactionN", "bendingNm", "tiltDeg", "friction", "pushes", "slipAngleDeg",
                "slipAngleAtEndDeg", "clampGoneDeg", "bestOverlapMm"],
            Ran.Names(json.GetProperty("tube")));
        Assert.Equal(["capacityNm", "by", "engineRunning"], Ran.Names(json.GetProperty("hold")));
        Assert.Equal(["energyJ", "speedTurnsMs", "speedSnapsMs"], Ran.Names(json.GetProperty("release")));
        Assert.Equal(
            ["comesLoose", "staysTight", "toolGives", "studTwistsOff", "cornersRound", "slidesOff", "wheelTurns", "slidesAsItTurns"],
            Ran.Names(json.GetProperty("outcomes")));
        Assert.All(json.GetProperty("moves").EnumerateArray(), move => Assert.Equal(
            ["key", "words", "comesLooseBy", "breaksBy"], Ran.Names(move)));
        Assert.DoesNotContain(json.EnumerateObject().Where(field => field.Name != "moves").SelectMany(field => Leaves(field.Value)), leaf => leaf.ValueKind == JsonValueKind.Null);
    }

    [Fact]
    public void The_answer_balances()
    {
        JsonElement json = Ran.Here(Ran.Words($"{Whole} --json")).Json();
        double reach = At(json, "lever", "reachMm");
        double strong = At(json, "strongPullNm");
        double hand = strong * 1000 / reach;
        Assert.Equal(hand, At(json, "tube", "tipReactionN") - At(json, "tube", "mouthReactionN"), 6);
        Assert.Equal(
            At(json, "tube", "mouthReactionN") * At(json, "tube", "overlapMm"), hand * At(json, "tube", "handToTipMm"), 3);
        Assert.Equal(hand * At(json, "tube", "handToTipMm") / 1000, At(json, "tube", "bendingNm"), 6);
        Assert.Equal(reach, 600 - 250 + 250 + At(json, "tube", "handToTipMm"), 9);
        Assert.Equal(1, Chances.Sum(chance => At(json, "outcomes", chance)), 5e-6);
        JsonElement[] links = [.. json.GetProperty("loadPath").EnumerateArray()];
        Assert.All(links, link =>
        {
            Assert.Equal(strong, At(link, "loadNm"), 9);
            Assert.Equal(At(link, "limitNm") / strong, At(link, "margin"), 9);
        });
        Assert.Equal(links.MinBy(link => At(link, "margin")).GetProperty("link").GetString(), json.GetProperty("weakestLink").GetString());
    }

    [Fact]
    public void The_first_example_is_no_go_and_draws_its_chart_and_side_view()
    {
        string chart = Path.Combine(_folder, "window.png");
        string sketch = Path.Combine(_folder, "side.svg");
        Ran ran = Ran.Here([.. Ran.Words(Tubed), "--chart", chart, "--sketch", sketch]);
        Assert.Equal((0, ""), (ran.Code, ran.Errors));
        Assert.StartsWith("STOP  Loosen ", ran.Answer, StringComparison.Ordinal);
        Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], File.ReadAllBytes(chart)[..4]);
        string drawn = File.ReadAllText(sketch);
        Assert.All(
            ["hands ", "tip bears", "mouth bears", "pull along the tube", "friction holds"],
            force => Assert.Contains(force, drawn, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("", 6)]
    [InlineData(" --drive 3/4 --bar 1500mm --bar-diameter 30mm --grade 10.9 --condition clean", 0)]
    [InlineData(" --drive 1/2 --bar 600mm --condition rusted", 5)]
    [InlineData(" --drive 1/2 --bar 600mm --condition rusted --held-by gear --half-shafts one --mass 1250kg", 3)]
    [InlineData(" --drive 3/4 --bar 900mm --bar-diameter 24mm --condition used", 5)]
    public void Strict_turns_a_stop_into_3_care_into_4_short_into_5_and_not_judged_into_6(string rest, int code)
    {
        string line = $"loosen 460Nm --thread M24x1.5 --hex 36mm --body 82kg{rest}";
        Ran ran = Ran.Here(Ran.Words($"{line} --strict --json"));
        string verdict = JsonDocument.Parse(ran.Answer).RootElement.GetProperty("verdict").GetString()!;
        Assert.Equal(code, ran.Code);
        Assert.Equal(code switch { 3 => "stop", 4 => "care", 5 => "short", 6 => "notJudged", _ => "go" }, verdict);
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
        Assert.Contains("The wheel turns first: nothing holds it.", one.GetProperty("reasons").EnumerateArray().Select(reason => reason.GetString()));
        Assert.Contains("Gear holds nothing once a half shaft is out.", one.GetProperty("watch").EnumerateArray().Select(watch => watch.GetString()));
    }

    [Fact]
    public void Drawing_lots_agrees_with_the_integral_and_a_seed_repeats_itself()
    {
        JsonElement json = Ran.Here(Ran.Words($"{Whole} --draws 400000 --start-number 11 --json")).Json();
        foreach (string outcome in new[] { "comesLoose", "staysTight" })
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
    public void Heating_the_nut_counts_nothing()
    {
        string line = Tubed + " --heat nut --by 150K";
        Assert.Equal(
            Ran.Here(Ran.Words($"{Tubed} --json")).Json().GetProperty("breakaway").GetRawText(),
            Ran.Here(Ran.Words($"{line} --json")).Json().GetProperty("breakaway").GetRawText());
    }

    [Theory]
    [InlineData("")]
    [InlineData(" --units us")]
    [InlineData(" --count 4 --held-by brake,chock --mass 1250kg --chock 100mm --side left")]
    [InlineData(" --held-by gear --half-shafts one --mass 1250kg --draws 20000")]
    [InlineData(" --tube 33.7x3.2x1000mm --overlap 250mm --surface greasy --left-hand")]
    [InlineData(" --tube 60x3x1000mm --overlap 80mm --past-square 60deg")]
    [InlineData(" --on hub --stance one-hand --prevailing 40Nm --units us --held 300Nm")]
    public void Every_answer_is_one_screen_of_24_lines_and_80_columns(string more)
    {
        foreach (string nut in (string[])["460Nm --thread M24x1.5 --hex 36mm --condition salted", "--hex 32mm --thread M22x1.5", "250Nm --hex 1-5/16in"])
        {
            Ran ran = Ran.Here(Ran.Words($"loosen {nut} --drive 1/2 --bar 600mm --bar-diameter 20mm{more}"));
            Assert.Equal((0, ""), (ran.Code, ran.Errors));
            string[] lines = ran.Answer.TrimEnd('\n').Split('\n');
            Assert.InRange(lines.Length, 10, 24);
            Assert.All(lines, line => Assert.InRange(line.Length, 0, 80));
            Assert.DoesNotContain("in the book", ran.Answer, StringComparison.Ordinal);
        }
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
