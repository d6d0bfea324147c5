using Leverage.Cli.Tests.Docs;

namespace Leverage.Cli.Tests.Commands;

/// <summary>A person under a vehicle reads one screen: 24 lines of 80 columns, whatever is asked.</summary>
public sealed class OneScreenTests
{
    private static readonly string[] Nuts =
    [
        "--hex 32mm --on hub", "--hex 15/16 --on wheel", "--thread M24x1.5 --grade 10.9 --on trailer --count 5", "\"100Nm + 90deg\" --thread M14x1.5 --grade 10.9 --on suspension",
        "90Nm --thread M12 --hex 19mm --grade A4-70 --joint castle,ball-joint --on suspension", "460Nm --thread M24x1.5 --hex 36mm --left-hand --held 300Nm --came 350Nm,400Nm",
        "22Nm --thread M8 --hex 13mm --on exhaust --worn rounded",
    ];

    private static readonly string[] States = ["used", "rusted", "heat-rusted", "staked", "locked-high"];

    private static readonly string[] Tools =
    [
        "--drive 1/2 --bar 450mm", "--drive 3/4 --bar 600mm --tube 33.7x3.2x1200mm --overlap 300mm --past-square 60deg --surface greasy", "--tool open --bar 250mm --engaged 0.4",
        "--drive 3/4 --adapters 3/4-1/2 --extension 200mm --bar 1000mm --room 800mm --people 2", "",
    ];

    private static readonly string[] Ways =
        ["", "--stance lie-pull", "--held-by brake,chock --mass 1250kg --side left", "--on-stands --mass 1400kg", "--units us --person woman"];

    public static TheoryData<string> Nut => [.. Nuts];

    [Theory]
    [MemberData(nameof(Nut))]
    public void Every_loosening_fits_one_screen(string nut)
    {
        int answered = 0;
        foreach (string state in States)
        {
            foreach (string tool in Tools)
            {
                foreach (string way in Ways)
                {
                    string line = $"loosen {nut} --condition {state} {tool} {way}";
                    Ran ran = Ran.Here(Ran.Words(line.Trim()));
                    if (ran.Code == 0)
                    {
                        answered++;
                        Fits(line, ran.Answer);
                    }
                    else
                    {
                        Assert.Equal((2, ""), (ran.Code, ran.Answer));
                    }
                }
            }
        }

        Assert.InRange(answered, 50, States.Length * Tools.Length * Ways.Length);
    }

    public static TheoryData<string> Shown => [.. ReadmeTests.ShownCommands.Select(row => row.Data)
        .Where(command => command.Split(' ')[0] is "loosen" or "pick" or "slip" or "tighten" or "check" && !command.Contains("--more", StringComparison.Ordinal) && !command.Contains("--json", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(Shown))]
    public void Every_answer_the_pages_show_fits_one_screen(string command) => Fits(command, Ran.Here(Ran.Words(command)).Answer);

    private static void Fits(string line, string answer)
    {
        string[] lines = answer.TrimEnd('\n').Split('\n');
        Assert.True(lines.Length <= 24, $"{lines.Length} lines: {line}\n{answer}");
        Assert.True(lines.Length > 3 && Array.TrueForAll(lines, one => one.Length <= 80), $"over 80 columns: {line}\n{answer}");
    }
}
