using Leverage.Cli.Tests.Running;
using Leverage.Tables;

namespace Leverage.Cli.Tests.Output;

/// <summary>What a person reads bears the star wherever the row behind it is recalled or judged: every row that can be named.</summary>
public sealed class UnconfirmedMarkTests
{
    private const string Nut = "loosen 460Nm --thread M24x1.5 --hex 36mm --bar 600mm ";

    public static TheoryData<string> Conditions => Keys("conditions");

    public static TheoryData<string> Stances => Keys("stances");

    public static TheoryData<string> Drives => Keys("drive-squares");

    public static TheoryData<string> Handles => Keys("handle-friction");

    public static TheoryData<string> Lubricants => Keys("friction");

    [Theory]
    [MemberData(nameof(Conditions))]
    public void The_torque_it_takes_is_marked_as_its_condition_is(string condition) =>
        Marked("conditions", condition, Line($"{Nut}--condition {condition}", "Nut takes"));

    [Theory]
    [MemberData(nameof(Stances))]
    public void What_you_can_give_is_marked_as_its_stance_is(string stance) =>
        Marked("stances", stance, Line($"{Nut}--stance {stance}", "You make"));

    [Theory]
    [MemberData(nameof(Drives))]
    public void A_square_is_marked_and_so_is_the_bar_that_goes_with_it(string drive)
    {
        Assert.Matches(@" in square +[0-9.]+\*", Answer($"{Nut}--drive {drive} --more"));
        Assert.Matches(@" mm bar +[0-9.]+\*", Answer($"{Nut}--drive {drive} --more"));
    }

    [Theory]
    [MemberData(nameof(Handles))]
    public void A_slip_answer_names_the_handle_whose_friction_nobody_measured(string handle)
    {
        string line = $"slip --bar 600mm --bar-diameter 20mm --tube 33.7x3.2x1000mm --overlap 250mm --more --surface {handle}";
        Marked("handle-friction", handle, Line(line, "  Friction").Split(' ')[0]);
        Assert.Contains($"surface {handle}", Flat(line), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Lubricants))]
    public void A_friction_out_of_a_table_is_marked_when_it_tightens_and_when_it_checks(string lubricant)
    {
        Assert.Contains("\n  friction* ", Answer($"tighten --thread M12 --lubrication {lubricant}"), StringComparison.Ordinal);
        Assert.Contains("\n  friction* ", Answer($"check 80Nm --thread M12 --lubrication {lubricant}"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Nut + "--condition rusted")]
    [InlineData("tighten --thread M12")]
    [InlineData("check 80Nm --thread M12")]
    [InlineData("slip --bar 600mm --bar-diameter 20mm --tube 33.7x3.2x1000mm")]
    public void Every_answer_with_a_star_says_what_the_star_means(string line)
    {
        string answer = Flat(line);
        Assert.Matches(@"\*\s+(unconfirmed|assumed or not confirmed)", answer);
    }

    private static TheoryData<string> Keys(string table) => [.. TableCatalog.Tables[table].Rows.Select(row => row.Key).Distinct()];

    private static void Marked(string table, string key, string line)
    {
        bool unconfirmed = TableCatalog.Tables[table].Rows.Any(row => row.Key == key && row.Status.IsUnconfirmed());
        Assert.Equal(unconfirmed, line.EndsWith('*'));
    }

    private static string Line(string command, string with) => Answer(command).Split('\n')
        .First(line => line.Contains(with, StringComparison.Ordinal) && !line.StartsWith("Tighten", StringComparison.Ordinal)).Trim();

    private static string Flat(string command) => string.Join(' ', Answer(command).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static string Answer(string command)
    {
        Ran ran = Ran.Here(Ran.Words(command));
        Assert.Equal("", ran.Errors);
        return ran.Answer;
    }
}
