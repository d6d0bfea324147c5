using Leverage.Hostile.Tests.Running;

namespace Leverage.Hostile.Tests.Faults;

/// <summary>What becomes of an answer and of files where they cannot be written.</summary>
public sealed class OutputFaultTests : IDisposable
{
    private const string Tighten = "tighten --thread M12";
    private readonly RealProgram _program = new();

    public void Dispose() => _program.Dispose();

    [Theory]
    [InlineData("tighten --thread M12")]
    [InlineData("table loads")]
    [InlineData("--help")]
    public void A_full_disk_behind_standard_output_is_a_failure_that_says_so(string words)
    {
        Ended ended = _program.Shell($"$leverage {words} >/dev/full");
        Assert.Equal((1, "leverage: the answer cannot be written: the disk is full.\n"), (ended.Code, ended.Errors));
    }

    [Fact]
    public void A_closed_standard_output_is_a_failure_of_one_line()
    {
        Ended ended = _program.Shell($"$leverage {Tighten} >&-");
        Assert.Equal((1, "leverage: the answer cannot be written: standard output is closed or refuses it.\n"), (ended.Code, ended.Errors));
    }

    [Theory]
    [InlineData("2>&-")]
    [InlineData("2>/dev/full")]
    public void A_refusal_that_cannot_be_written_is_still_told_by_the_exit_code(string redirection)
    {
        Ended ended = _program.Shell($"$leverage tighten {redirection}");
        Assert.Equal((2, 0), (ended.Code, ended.Answer.Length));
    }

    [Theory]
    [InlineData("<&-")]
    [InlineData("</dev/null")]
    public void Nothing_is_asked_of_standard_input(string redirection) =>
        Assert.Equal(_program.Run(Tighten).Text, _program.Shell($"$leverage {Tighten} {redirection}").Text);

    [Theory]
    [InlineData("--new /dev/full --force-write", "/dev/full")]
    [InlineData("--new /dev/null --force-write", "/dev/null")]
    public void A_device_is_never_replaced_by_a_file(string words, string device)
    {
        // Asked first whether it would be refused at all, without leave to replace it.
        Assert.Equal(2, _program.Run($"job --new {device}").Code);
        Ended ended = _program.Run($"job {words}");
        Assert.Equal((2, $"leverage: --new: cannot write '{device}': no ordinary file can stand there. Name another place.\n"), (ended.Code, ended.Errors));
        Assert.Equal("character special file", _program.Shell($"stat -L -c %F {device}").Text.TrimEnd());
    }

    [Fact]
    public void A_folder_that_may_not_be_written_refuses_in_one_line_and_stays_as_it_is()
    {
        string folder = Directory.CreateDirectory(Path.Combine(_program.Folder, "kept")).FullName;
        string rootOnly = Environment.UserName == "root" ? "setpriv --bounding-set=-all --inh-caps=-all " : "";
        Ended ended = _program.Shell($"chmod 555 '{folder}'; {rootOnly}$leverage job --new '{folder}/x.toml'; code=$?; chmod 755 '{folder}'; exit $code");
        Assert.Equal((2, 0), (ended.Code, ended.Answer.Length));
        Assert.Equal($"leverage: --new: cannot write '{folder}/x.toml': no permission there.\n", ended.Errors);
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder));
    }

    [Theory]
    [InlineData("job --new gone/x.toml")]
    [InlineData("tighten --thread M12 --chart gone/x.svg")]
    public void A_folder_that_is_not_there_is_refused_in_one_line(string words)
    {
        Ended ended = _program.Run(words);
        Assert.Equal(2, ended.Code);
        Assert.Null(Manners.BrokenLine(ended.Errors));
    }

    [Fact]
    public void The_folder_deleted_under_it_is_no_fault_of_an_answer_and_one_line_for_a_file()
    {
        Ended answered = _program.Shell($"mkdir here && cd here && rmdir ../here && $leverage {Tighten}");
        Assert.Equal((0, "", _program.Run(Tighten).Text), (answered.Code, answered.Errors, answered.Text));
        Ended written = _program.Shell("mkdir here && cd here && rmdir ../here && $leverage job --new x.toml");
        Assert.Equal((2, 0), (written.Code, written.Answer.Length));
        Assert.Null(Manners.BrokenLine(written.Errors));
    }

    [Fact]
    public void A_file_larger_than_is_allowed_is_refused_and_the_old_one_kept()
    {
        string old = _program.Put("x.svg", "old");
        Ended ended = _program.Shell("trap '' XFSZ; ulimit -f 4; $leverage tighten --thread M12 --chart x.svg --force-write", ("DOTNET_EnableWriteXorExecute", "0"));
        Assert.Equal((2, 0), (ended.Code, ended.Answer.Length));
        Assert.Null(Manners.BrokenLine(ended.Errors));
        Assert.Equal("old", File.ReadAllText(old));
        Assert.Single(Directory.EnumerateFileSystemEntries(_program.Folder));
    }
}
