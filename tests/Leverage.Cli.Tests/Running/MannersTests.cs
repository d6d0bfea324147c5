using System.Diagnostics;
using System.Globalization;

namespace Leverage.Cli.Tests.Running;

public sealed class MannersTests
{
    private static readonly string[] Tighten = Ran.Words("tighten --thread M12x1.25 --grade 10.9 --friction 0.12");

    [Fact]
    public void A_German_machine_gives_the_same_bytes_as_any_other()
    {
        (string, string)[] german = [("LANG", "de_DE.UTF-8"), ("LC_ALL", "de_DE.UTF-8")];
        (string, string)[] plain = [("LANG", "C"), ("LC_ALL", "C")];
        Ran there = Ran.ForReal([.. Tighten, "--json"], null, german);
        Ran here = Ran.ForReal([.. Tighten, "--json"], null, plain);
        Assert.Equal(here, there);
        Assert.Equal(Ran.Here([.. Tighten, "--json"]), there);
    }

    [Theory]
    [InlineData("tighten --thread M12x1.25 --friction 0.12 --torque 96.5ft-lb --by-weight 82.5kg")]
    [InlineData("check 130.5Nm --thread M12x1.25 --grade 10.9 --json")]
    [InlineData("table threads M24")]
    [InlineData("tighten --thread M12 --torque 1.5kN")]
    public void A_culture_with_a_decimal_comma_changes_nothing(string line)
    {
        Ran plain = Ran.Here(Ran.Words(line));
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Assert.Equal("1,5", 1.5.ToString(CultureInfo.CurrentCulture));
            Assert.Equal(plain, Ran.Here(Ran.Words(line)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public async Task A_closed_pipe_ends_it_quietly()
    {
        using Process process = Ran.Start(["table", "loads"]);
        process.StandardOutput.Close();
        string errors = await process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal((0, ""), (process.ExitCode, errors));
    }

    [Fact]
    public void Nothing_is_coloured_when_it_is_not_a_terminal()
    {
        Ran ran = Ran.ForReal(["tighten", "--thread", "M12"]);
        Assert.Equal((0, ""), (ran.Code, ran.Errors));
        Assert.DoesNotContain("\e", ran.Answer, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tighten --thread M12 --torque 200Nm")]
    [InlineData("check 96Nm --thread M12x1.25 --grade 12.9")]
    public void Colour_adds_nothing_but_colour(string line)
    {
        Ran coloured = Ran.Here(colour: true, Ran.Words(line));
        Assert.Contains("\e[1", coloured.Answer, StringComparison.Ordinal);
        string bare = coloured.Answer.Replace("\e[0m", "", StringComparison.Ordinal);
        foreach (string code in (string[])["\e[1;31m", "\e[1;32m", "\e[1;33m", "\e[1m"])
        {
            bare = bare.Replace(code, "", StringComparison.Ordinal);
        }

        Assert.Equal(Ran.Here(Ran.Words(line)).Answer, bare);
    }

    [Theory]
    [InlineData("tighten --thread M12 --grade 8.8 --torque 200Nm", 3)]
    [InlineData("tighten --thread M12 --grade 8.8 --torque 93Nm", 4)]
    [InlineData("tighten --thread M12 --grade 8.8 --torque 60Nm", 0)]
    [InlineData("tighten --thread M12 --grade 10.9 --engagement 6mm --tapped cast-aluminium --torque 100Nm", 3)]
    [InlineData("tighten --thread M12 --grade 10.9 --engagement 6mm --tapped cast-aluminium", 4)]
    [InlineData("check 200Nm --thread M12 --grade 8.8", 3)]
    [InlineData("check 20Nm --thread M12 --grade 8.8", 4)]
    [InlineData("check 60Nm --thread M12 --grade 8.8", 0)]
    [InlineData("table friction", 0)]
    public void Only_strict_turns_a_stop_into_3_and_a_care_into_4(string line, int code)
    {
        Assert.Equal(0, Ran.Here(Ran.Words(line)).Code);
        Ran strict = Ran.Here([.. Ran.Words(line), "--strict"]);
        Assert.Equal((code, ""), (strict.Code, strict.Errors));
        Assert.Equal(Ran.Here(Ran.Words(line)).Answer, strict.Answer);
    }

    [Fact]
    public void A_fault_of_the_program_is_one_line_and_exit_1()
    {
        using var answers = new BrokenWriter();
        using var errors = new StringWriter();
        int code = CommandLine.Run(["tighten", "--thread", "M12"], new Leverage.Cli.Output.Terminal(answers, errors, false));
        Assert.Equal(1, code);
        Assert.StartsWith("leverage: the program failed (InvalidOperationException): first second\n", errors.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_shell_can_complete_options_and_names()
    {
        Assert.Contains("--torsion\n", Ran.ForReal(["[suggest:10]", "tighten --"]).Answer, StringComparison.Ordinal);
        Assert.Contains("M24x1.5\n", Ran.Here("[suggest:18]", "tighten --thread M2").Answer, StringComparison.Ordinal);
        Assert.Contains("tighten\n", Ran.Here("[suggest:1]", "t").Answer, StringComparison.Ordinal);
    }

    private sealed class BrokenWriter : StringWriter
    {
        public override void Write(string? value) => throw new InvalidOperationException("first\nsecond");
    }
}
