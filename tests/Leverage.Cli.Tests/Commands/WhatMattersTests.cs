using System.Text.Json;

namespace Leverage.Cli.Tests.Commands;

public sealed class WhatMattersTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("leverage-").FullName;

    private const string Line = "loosen 200Nm --thread M16 --hex 24mm --drive 3/4 --bar 600mm --bar-diameter 20mm";

    private string Chart => Path.Combine(_folder, "t.svg");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Words_give_each_input_s_swing_and_what_to_learn_first()
    {
        string answer = Ran.Here(Ran.Words($"{Line} --what-matters")).Answer;
        Assert.Contains("what matters, from its low to its high end", answer, StringComparison.Ordinal);
        Assert.Matches(@"\n  your own force +\d+ % … \d+ % +\d\.\d\d m … \d\.\d\d m\n", answer);
        Assert.Contains("To learn first  ", answer, StringComparison.Ordinal);
        Assert.DoesNotContain("what matters", Ran.Here(Ran.Words(Line)).Answer, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_gives_the_same_inputs_in_the_same_order()
    {
        JsonElement answer = JsonDocument.Parse(Ran.Here(Ran.Words($"{Line} --what-matters --json")).Answer).RootElement;
        string words = Ran.Here(Ran.Words($"{Line} --what-matters")).Answer;
        int place = words.IndexOf("what matters, from its", StringComparison.Ordinal);
        foreach (JsonElement swing in answer.GetProperty("whatMatters").EnumerateArray())
        {
            int next = words.IndexOf($"\n  {swing.GetProperty("input").GetString()} ", place, StringComparison.Ordinal);
            Assert.True(next > place, swing.ToString());
            place = next;
            Assert.InRange(swing.GetProperty("comesLooseLow").GetDouble(), 0, 1);
            Assert.InRange(swing.GetProperty("comesLooseHigh").GetDouble(), 0, 1);
        }

        Assert.False(JsonDocument.Parse(Ran.Here(Ran.Words($"{Line} --json")).Answer).RootElement.TryGetProperty("whatMatters", out _));
    }

    [Fact]
    public void Without_a_bar_the_words_say_what_is_missing_and_a_tornado_is_refused()
    {
        string line = "loosen 200Nm --thread M16 --hex 24mm --drive 3/4";
        Assert.Contains("Write: --bar 600mm to see", Ran.Here(Ran.Words($"{line} --what-matters")).Answer, StringComparison.Ordinal);
        Ran ran = Ran.Here([.. Ran.Words(line), "--what-matters-chart", Chart]);
        Assert.Equal((2, ""), (ran.Code, ran.Answer));
        Assert.StartsWith("leverage: --what-matters-chart: needs a bar to draw.", ran.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(Chart));
    }

    [Fact]
    public void A_tornado_names_every_input_in_the_file()
    {
        Ran ran = Ran.Here([.. Ran.Words(Line), "--what-matters-chart", Chart]);
        Assert.Equal((0, ""), (ran.Code, ran.Errors));
        string svg = File.ReadAllText(Chart);
        Assert.Contains("your own force", svg, StringComparison.Ordinal);
        Assert.Contains("torque it was tightened to", svg, StringComparison.Ordinal);
        Assert.Equal(2, Ran.Here([.. Ran.Words(Line), "--what-matters-chart", Chart]).Code);
    }
}
