namespace Leverage.Cli.Tests.Shells;

public sealed class CompletionTests
{
    /// <summary>What somebody has typed up to the tab key, and one thing each that must and must not be offered.</summary>
    public static TheoryData<string, string, string> Typed => new()
    {
        { "leverage ti", "tighten", "loosen" },
        { "leverage ", "prove", "/?" },
        { "leverage --c", "--completion", "--json" },
        { "leverage --completion f", "fish", "bash" },
        { "leverage tighten --tors", "--torsion", "--thread" },
        { "leverage loosen 460Nm --hex 36mm --cond", "--condition", "--bar" },
        { "leverage loosen 460Nm --condition r", "rusted", "heat-rusted" },
        { "leverage tighten --thread M24x", "M24x1.5", "M24" },
        { "leverage check 130Nm --thread 1/2-", "1/2-20", "M12" },
        { "leverage table thr", "threads-metric", "tubes" },
        { "leverage loosen 460Nm --units ", "us", "--json" },
    };

    /// <summary>A command, an option and a name, for the shells that are checked more shortly.</summary>
    public static TheoryData<string, string, string> SomeTyped => new()
    {
        { "leverage ti", "tighten", "loosen" },
        { "leverage loosen 460Nm --hex 36mm --cond", "--condition", "--bar" },
        { "leverage tighten --thread M24x", "M24x1.5", "M24" },
    };

    [Theory]
    [MemberData(nameof(Typed))]
    public void Bash_completes_commands_options_and_names(string typed, string offered, string not)
    {
        int last = typed.LastIndexOf(' ') + 1;
        string[] found = Bash(typed[..last], typed[last..]);
        Assert.Contains(offered, found);
        Assert.DoesNotContain(not, found);
    }

    [Theory]
    [InlineData("leverage tighten --grade ", "SAE", @"SAE\ 5")]
    [InlineData("leverage tighten --grade ", @"SAE\ 5.", @"SAE\ 5.2")]
    [InlineData("leverage tighten --grade \"", "SAE 5.", "SAE 5.2")]
    public void Bash_completes_a_name_with_a_blank_so_that_it_stays_one_word(string before, string word, string offered) =>
        Assert.Contains(offered, Bash(before, word));

    [Fact]
    public void Bash_is_left_to_offer_files_where_a_file_is_wanted() =>
        Assert.Equal([], Bash("leverage pick 460Nm --chest ", "sha"));

    [Theory]
    [InlineData("leverage ti", "tighten")]
    [InlineData("leverage tighten --thread M24x", "M24x1.5")]
    [InlineData("leverage tighten --grade ", "SAE 5")]
    [InlineData("leverage pick 460Nm --chest sha", "files")]
    public void Zsh_is_told_what_may_follow_and_offers_files_where_nothing_is_known(string typed, string told)
    {
        Shell.Need("zsh");
        const string Script = """
            compdef() { [[ $1$2 == _leverageleverage ]] }
            compadd() { shift; print -l -- "$@" }
            _files() { print files }
            source <(leverage --completion zsh) || exit 9
            words=("${(@s: :)1}")
            CURRENT=$#words
            _leverage
            """;
        Assert.Contains(told, Lines(Shell.Run("zsh", ["-f", "-c", Script, "zsh", typed])));
    }

    [Theory]
    [MemberData(nameof(SomeTyped))]
    public void Fish_completes_commands_options_and_names(string typed, string offered, string not)
    {
        Shell.Need("fish");
        string script = $"leverage --completion fish | source; complete -C '{typed}'";
        string[] found = Lines(Shell.Run("fish", ["--no-config", "-c", script]));
        Assert.Contains(offered, found);
        Assert.DoesNotContain(not, found);
    }

    [Theory]
    [MemberData(nameof(SomeTyped))]
    public void PowerShell_completes_commands_options_and_names(string typed, string offered, string not)
    {
        Shell.Need("pwsh");
        string script = "leverage --completion powershell | Out-String | Invoke-Expression; "
            + $"(TabExpansion2 '{typed}' {typed.Length}).CompletionMatches.CompletionText";
        string[] found = Lines(Shell.Run("pwsh", ["-NoProfile", "-Command", script]));
        Assert.Contains(offered, found);
        Assert.DoesNotContain(not, found);
    }

    [Theory]
    [InlineData("bash", "bash", "-n")]
    [InlineData("zsh", "zsh", "-n")]
    [InlineData("fish", "fish", "-n")]
    public void The_script_is_in_the_language_of_its_shell(string shell, string program, string check)
    {
        Shell.Need(program);
        string file = Path.Combine(AppContext.BaseDirectory, $"completion.{shell}");
        File.WriteAllText(file, Ran.Here("--completion", shell).Answer);
        Assert.Equal((0, ""), Shell.Run(program, [check, file]));
    }

    [Fact]
    public void A_shell_nobody_wrote_a_script_for_is_refused_by_name() => Assert.Equal(
        new Ran(2, "", "leverage: --completion: 'tcsh' is not accepted here. Write: bash or zsh or fish or powershell\n"),
        Ran.Here("--completion", "tcsh"));

    /// <summary>What bash holds after the tab key: the script is sourced, and its function called with what bash gives it.</summary>
    private static string[] Bash(string before, string word)
    {
        Shell.Need("bash");
        const string Script = """
            source <(leverage --completion bash)
            complete -p leverage | grep -q 'default -F _leverage' || exit 9
            COMP_LINE=$1$2; COMP_POINT=${#COMP_LINE} COMP_WORDS=(leverage)
            _leverage leverage "$2"
            printf '%s\n' "${COMPREPLY[@]}"
            """;
        return Lines(Shell.Run("bash", ["--norc", "-c", Script, "bash", before, word]));
    }

    private static string[] Lines((int Code, string Said) run)
    {
        Assert.Equal(0, run.Code);
        return run.Said.Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }
}
