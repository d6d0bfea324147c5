namespace Leverage.Hostile.Tests.Faults;

/// <summary>Odd machines: other languages, no home, no fonts, dumb terminals.</summary>
public sealed class MachineTests : IDisposable
{
    private readonly RealProgram _program = new();

    public static TheoryData<string> Lines =>
    [
        "loosen 460.5Nm --thread M24x1.5 --condition rusted --hex 36mm --drive 1/2 --bar 600mm --units us",
        "tighten --thread M12x1.25 --grade 10.9 --friction 0.12 --json",
        "slip --bar 600mm --bar-diameter 20mm --tube 33.7x3.2x1000mm --overlap 250mm",
        "table threads M24 --csv",
        "tighten --thread M12 --torque 1,5Nm",
    ];

    public void Dispose() => _program.Dispose();

    [Theory]
    [MemberData(nameof(Lines))]
    public void Any_language_of_the_machine_gives_the_same_bytes(string line)
    {
        Ended plain = _program.Run(line, ("LANG", "C"), ("LC_ALL", "C"));
        foreach (string language in (string[])["de_DE.UTF-8", "tr_TR.UTF-8", "ar_SA.UTF-8", "fa_IR.UTF-8"])
        {
            Ended other = _program.Run(line, ("LANG", language), ("LC_ALL", language), ("LANGUAGE", language));
            Assert.Equal((plain.Code, plain.Text, plain.Errors), (other.Code, other.Text, other.Errors));
        }
    }

    [Fact]
    public void A_picture_is_the_same_bytes_in_any_language_and_without_home_or_fonts()
    {
        const string Line = "slip --bar 600mm --bar-diameter 20mm --tube 33.7x3.2x1000mm --overlap 250mm --chart";
        Assert.Equal(0, _program.Run($"{Line} a.svg").Code);
        Assert.Equal(0, _program.Run($"{Line} a.png").Code);
        (string, string?)[] bare = [("LC_ALL", "fa_IR.UTF-8"), ("HOME", null), ("FONTCONFIG_FILE", "/nowhere"), ("XDG_DATA_HOME", "/nowhere"), ("TERM", "dumb")];
        Assert.Equal(0, _program.Run($"{Line} b.svg", bare).Code);
        Assert.Equal(0, _program.Run($"{Line} b.png", bare).Code);
        Assert.Equal(Bytes("a.svg"), Bytes("b.svg"));
        Assert.Equal(Bytes("a.png"), Bytes("b.png"));
    }

    [Theory]
    [InlineData("HOME")]
    [InlineData("TERM")]
    [InlineData("PATH")]
    [InlineData("TMPDIR")]
    public void A_variable_that_is_not_set_changes_nothing(string name)
    {
        const string Line = "tighten --thread M12";
        Ended bare = _program.Shell($"program=$(command -v dotnet); unset {name}; \"$program\" {Path.Combine(AppContext.BaseDirectory, "leverage.dll")} {Line}");
        Assert.Equal((0, _program.Run(Line).Text), (bare.Code, bare.Text));
    }

    [Fact]
    public void A_dumb_terminal_and_a_wish_for_no_colour_get_none()
    {
        const string Line = "script -qec \"$leverage tighten --thread M12 --torque 200Nm\" /dev/null";
        Assert.SkipWhen(_program.Shell("command -v script").Code != 0, "script, which makes a terminal, is not installed on this machine");
        // The runtime itself tells a terminal how to send its keypad (\e[?1h); colours are \e[1 and \e[0.
        Assert.Contains("\e[0m", _program.Shell(Line, ("TERM", "xterm")).Text, StringComparison.Ordinal);
        Assert.DoesNotContain("\e[0m", _program.Shell(Line, ("TERM", "dumb")).Text, StringComparison.Ordinal);
        Assert.DoesNotContain("\e[0m", _program.Shell(Line, ("TERM", "xterm"), ("NO_COLOR", "1")).Text, StringComparison.Ordinal);
    }

    private byte[] Bytes(string name) => File.ReadAllBytes(Path.Combine(_program.Folder, name));
}
