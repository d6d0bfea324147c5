using System.Text.Json;

namespace Leverage.Cli.Tests.Commands;

public sealed class PickTests : IDisposable
{
    private const string Nut = "460Nm --thread M24x1.5 --condition rusted --hex 36mm --chest shared/pickup/chest.toml";
    private static readonly string[] Chances = ["comesLoose", "staysTight", "breaks"];
    private static readonly string[] Verdicts = ["go", "care", "short", "notJudged", "stop"];
    private readonly string _folder = Directory.CreateTempSubdirectory("pick").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("")]
    [InlineData(" --units us")]
    [InlineData(" --stance one-hand --person neighbour")]
    [InlineData(" --held-by brake --mass 1250kg")]
    [InlineData(" --held-by brake,chock,helper --mass 1250kg --on-stands")]
    public void The_answer_fits_one_screen_of_80_columns(string more)
    {
        Ran ran = Ran.Here(Ran.Words($"pick {Nut}{more}"));
        Assert.Equal((0, ""), (ran.Code, ran.Errors));
        string[] lines = ran.Answer.TrimEnd('\n').Split('\n');
        Assert.InRange(lines.Length, 12, 24);
        Assert.All(lines, line => Assert.InRange(line.Length, 0, 80));
    }

    [Fact]
    public void The_JSON_holds_every_field_and_its_shares_sum_to_one()
    {
        JsonElement answer = Ran.Here(Ran.Words($"pick {Nut} --json")).Json();
        Assert.Equal(
            "bookTorqueNm breakaway person tried verdict setUps moves assumed", string.Join(' ', Ran.Names(answer)));
        JsonElement first = answer.GetProperty("setUps")[0];
        Assert.Equal(
            "tool adapters bar tube overlapMm stance reachMm verdict comesLoose staysTight breaks margin weakestLink forceShare",
            string.Join(' ', Ran.Names(first)));
        double sum = Chances.Sum(name => first.GetProperty(name).GetDouble());
        Assert.Equal(1, sum, 1e-9);
        JsonElement tried = answer.GetProperty("tried");
        Assert.Equal(
            tried.GetProperty("setups").GetInt32(),
            Verdicts.Sum(name => tried.GetProperty(name).GetInt32()));
    }

    [Fact]
    public void A_place_with_a_tube_answers_loosen_with_the_same_verdict_and_chance()
    {
        JsonElement first = Ran.Here(Ran.Words($"pick {Nut} --json")).Json().GetProperty("setUps")[1];
        string line = FormattableString.Invariant(
            $"loosen {Nut} --bar \"{first.GetProperty("bar").GetString()}\" --tube \"{first.GetProperty("tube").GetString()}\" --overlap {first.GetProperty("overlapMm").GetDouble()}mm --stance {first.GetProperty("stance").GetString()} --person owner --json");
        JsonElement loosened = Ran.Here(Ran.Words(line)).Json();
        Assert.Equal(first.GetProperty("verdict").GetString(), loosened.GetProperty("verdict").GetString());
        Assert.Equal(
            first.GetProperty("comesLoose").GetDouble(), loosened.GetProperty("outcomes").GetProperty("comesLoose").GetDouble(), 1e-6);
    }

    [Fact]
    public void Names_of_the_chest_say_the_same_as_their_figures_written_out()
    {
        string chest = Ran.Here(Ran.Words(
            "loosen 460Nm --thread M24x1.5 --chest shared/pickup/chest.toml --bar \"long bar\" --tube \"fence pipe\" --overlap 200mm "
            + "--held-by \"brake,oak chocks\" --mass 1250kg --person owner --json")).Answer;
        string written = Ran.Here(Ran.Words(
            "loosen 460Nm --thread M24x1.5 --drive 3/4 --bar 1000mm --bar-diameter 25mm --tube 33.7x3.2x1200mm --tube-yield 235MPa --overlap 200mm "
            + "--held-by brake,chock --chock 110mm --mass 1250kg --body 82kg --force 520N --person man --json")).Answer;
        Assert.Equal(Without(written), Without(chest));
    }

    [Fact]
    public void A_new_chest_is_written_whole_and_never_over_another()
    {
        string path = Path.Combine(_folder, "chest.toml");
        Assert.Equal(0, Ran.Here("pick", "--new-chest", path).Code);
        string text = File.ReadAllText(path);
        Assert.Contains("[[bars]]", text, StringComparison.Ordinal);
        File.WriteAllText(path, "mine");
        Ran again = Ran.Here("pick", "--new-chest", path);
        Assert.Equal((2, ""), (again.Code, again.Answer));
        Assert.Equal("mine", File.ReadAllText(path));
        Assert.Equal(0, Ran.Here("pick", "--new-chest", path, "--force-write").Code);
        Assert.Equal(text, File.ReadAllText(path));
        Assert.Equal(path, Path.Combine(_folder, Assert.Single(Directory.GetFileSystemEntries(_folder).Select(Path.GetFileName))!));
    }

    [Theory]
    [InlineData("pick 460Nm --hex 36mm", "leverage: --chest: is needed here")]
    [InlineData("pick 460Nm --chest shared/pickup/chest.toml", "leverage: --hex: nothing says which of the tools fits")]
    [InlineData("pick 460Nm --hex 36mm --chest none.toml", "leverage: none.toml: cannot be read: there is no such file.")]
    [InlineData("pick 460Nm --hex 36mm --chest shared/pickup/chest.toml --person owne", "leverage: --person: 'owne' is not a person of the chest shared/pickup/chest.toml. Nearest: owner.")]
    [InlineData("pick 460Nm --hex 36mm --chest shared/pickup/chest.toml --stance stand-push,stand-pul", "leverage: --stance: 'stand-pul' is not a stance known here. Nearest: stand-pull")]
    [InlineData("pick 460Nm --hex 36mm --chest shared/pickup/chest.toml --force 500N", "leverage: --force: was measured in one stance")]
    [InlineData("loosen 460Nm --bar \"long bar\"", "leverage: --bar: 'long bar' looks like a name out of a chest, and no chest is named. Write: --chest chest.toml --bar 600mm")]
    [InlineData("loosen 460Nm --chest shared/pickup/chest.toml --bar \"lng bar\"", "leverage: --bar: 'lng bar' is not a bar of the chest shared/pickup/chest.toml. Nearest: long bar.")]
    [InlineData("loosen 460Nm --chest shared/pickup/chest.toml --bar \"long bar\" --drive 1/2", "leverage: --drive: the bar 'long bar' has a 3/4 in square, not 1/2.")]
    [InlineData("loosen 460Nm --bar 600mm --held-by wedge", "leverage: --held-by: 'wedge' holds nothing known here.")]
    public void What_cannot_be_answered_is_one_line_and_exit_2(string line, string says)
    {
        Ran ran = Ran.Here(Ran.Words(line));
        Assert.Equal((2, ""), (ran.Code, ran.Answer));
        Assert.StartsWith(says, ran.Errors, StringComparison.Ordinal);
        Assert.Equal(1, ran.Errors.Count(character => character == '\n'));
    }

    /// <summary>The answer without the list of assumptions, which says less where more is given.</summary>
    private static string Without(string json) => json[..json.IndexOf("\"assumed\"", StringComparison.Ordinal)];
}
