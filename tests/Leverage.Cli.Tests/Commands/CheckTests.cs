using System.Text.Json;

namespace Leverage.Cli.Tests.Commands;

public sealed class CheckTests
{
    [Fact]
    public void The_fields_of_the_answer_are_the_promised_ones()
    {
        JsonElement json = Ran.Here(Ran.Words("check 130Nm --thread M12x1.25 --grade 10.9 --json")).Json();
        Assert.Equal(["quotedNm", "torqueNm", "preloadN", "yieldShare", "angle", "alphaA", "verdict", "readsBetterAs", "usualFor", "unconfirmed"], Ran.Names(json));
        Assert.Equal(["low", "likely", "high"], Ran.Names(json.GetProperty("yieldShare")));
        Assert.Equal(JsonValueKind.Null, json.GetProperty("readsBetterAs").ValueKind);
    }

    /// <summary>The rule, on both sides of each of its ends, at one stated friction.</summary>
    [Theory]
    [InlineData(0.448, "low")]
    [InlineData(0.452, "fits")]
    [InlineData(0.948, "fits")]
    [InlineData(0.952, "high")]
    [InlineData(0.999, "high")]
    public void A_quote_fits_from_45_to_95_percent_of_yield(double share, string verdict)
    {
        string percent = FormattableString.Invariant($"{share * 100}%");
        JsonElement tight = Ran.Here("tighten", "--thread", "M12", "--friction", "0.14", "--yield-share", percent, "--json").Json();
        JsonElement json = Ran.Here(
            "check", tight.GetProperty("torqueNm").GetRawText() + "Nm", "--thread", "M12", "--friction", "0.14", "--json").Json();
        Assert.Equal(share, json.GetProperty("yieldShare").GetProperty("likely").GetDouble(), 9);
        Assert.Equal(verdict, json.GetProperty("verdict").GetString());
    }

    [Theory]
    [InlineData("check 60Nm --thread M12", "fits", null)]
    [InlineData("check 45Nm --thread M12x1.25", "low", "ft-lb")]
    [InlineData("check 30Nm --thread M12", "low", null)]
    [InlineData("check 60Nm --thread M14 --grade 8.8", "low", "ft-lb")]
    [InlineData("check 9Nm --thread M12 --grade 10.9", "low", "kgf-m")]
    [InlineData("check 90ft-lb --thread M12x1.25 --grade 10.9", "fits", null)]
    [InlineData("check 100ft-lb --thread M12x1.25 --grade 10.9", "high", "Nm")]
    public void Another_unit_is_named_only_when_it_fits_and_the_quoted_one_does_not(string line, string verdict, string? unit)
    {
        JsonElement json = Ran.Here([.. Ran.Words(line), "--json"]).Json();
        Assert.Equal((verdict, unit), (json.GetProperty("verdict").GetString(), json.GetProperty("readsBetterAs").GetString()));
    }

    [Fact]
    public void Low_is_at_high_friction_and_high_at_low_friction()
    {
        JsonElement share = Ran.Here(Ran.Words("check 60Nm --thread M12 --lubrication oiled --json")).Json().GetProperty("yieldShare");
        foreach (var (name, friction) in ((string, string)[])[("low", "0.16"), ("likely", "0.113"), ("high", "0.08")])
        {
            JsonElement one = Ran.Here("check", "60Nm", "--thread", "M12", "--friction", friction, "--json").Json();
            Assert.Equal(one.GetProperty("yieldShare").GetProperty("likely").GetDouble(), share.GetProperty(name).GetDouble(), 12);
        }
    }

    [Fact]
    public void At_the_friction_named_the_torque_just_yields_the_bolt()
    {
        string words = Ran.Here(Ran.Words("check 130Nm --thread M12x1.25 --grade 10.9")).Answer;
        string line = Assert.Single(words.Split('\n'), text => text.StartsWith("  Yields ", StringComparison.Ordinal));
        JsonElement json = Ran.Here("check", "130Nm", "--thread", "M12x1.25", "--grade", "10.9", "--friction", line.Split(' ')[^1], "--json").Json();
        Assert.Equal(1, json.GetProperty("yieldShare").GetProperty("likely").GetDouble(), 0.004);
    }

    [Fact]
    public void Every_thread_and_grade_it_would_suit_fits_when_asked()
    {
        var thread = Threads.ThreadCatalog.Named("M12x1.25");
        var assessment = Assessments.CheckingAssessor.Assess(new Assessments.JointSetup(new() { Torque = UnitsNet.Torque.FromNewtonMeters(130) }, thread)
        {
            Grade = Grades.GradeCatalog.Bolt("10.9", thread),
        });
        Assert.NotEmpty(assessment.SuitsThreads);
        Assert.NotEmpty(assessment.SuitsGrades);
        Assert.All(assessment.SuitsThreads, other => Fits("--thread", other.Designation, "--grade", "10.9"));
        Assert.All(assessment.SuitsGrades, other => Fits("--thread", "M12x1.25", "--grade", other.Name));
        Assert.All(assessment.SuitsGrades, other => Assert.StartsWith("ISO", other.Standard, StringComparison.Ordinal));
    }

    private static void Fits(params string[] joint) =>
        Assert.Equal("fits", Ran.Here(["check", "130Nm", .. joint, "--json"]).Json().GetProperty("verdict").GetString());
}
