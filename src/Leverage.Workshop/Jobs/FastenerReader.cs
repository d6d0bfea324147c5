using System.Globalization;
using Leverage.Assessments;
using Leverage.Grades;
using Leverage.Holding;
using Leverage.Reading;
using Leverage.Tables;
using Leverage.Threads;
using Leverage.Workshop.Files;

namespace Leverage.Workshop.Jobs;

/// <summary>Reads a fastener out of a table of a job file, or a row of a spreadsheet's list.</summary>
internal static class FastenerReader
{
    private const int MostAlike = 200;

    /// <summary>The fastener; its refusals are thrown one by one, or gathered where the section gathers them.</summary>
    internal static JobFastener Read(TomlSection section)
    {
        string? name = section.OneLine("name");
        if (name is null && !section.Has("name"))
        {
            section.Refuse(section.Missing("name", "axle-shaft nut, left"));
        }

        ScrewThread? thread = section.Value("thread", ThreadCatalog.Named);
        var fastener = new JobFastener
        {
            Name = name ?? "",
            Place = section.Text("place"),
            Thread = thread,
            Grade = Grade(section, thread),
            AcrossFlats = section.Length("across_flats"),
            BookTorque = section.Torque("torque"),
            Condition = section.Row("condition", "conditions", "a condition"),
            Prevailing = section.Torque("prevailing"),
            Count = section.Value("count", Count) is var count and > 0 ? count : 1,
            NewPart = section.Text("new_part"),
            Lubricant = section.Row("lubricant", "friction", "a lubrication"),
            LeftHand = section.Flag("left_hand"),
            Soaked = section.Flag("soaked"),
            Tool = Tool(section),
            Stances = Stances(section),
            Recess = section.Length("recess") ?? UnitsNet.Length.Zero,
            Room = section.Length("room"),
            Wheel = section.Value("wheel", Wheel),
            HeldBy = section.Text("held_by"),
            Adapter = section.Length("adapter"),
            Castle = section.Flag("castle"),
            Staked = section.Flag("staked"),
            RideHeight = section.Flag("ride_height"),
            RetorqueAfter = section.Text("retorque_after"),
            RefitNote = section.Text("refit_note"),
            Note = section.Text("note"),
            Done = section.Flag("done"),
            Held = section.Torque("held"),
            CameLoose = [.. section.Values("came_loose", text => QuantityReader.Torque(text)).Select(each => each.Value)],
            Rounded = section.Flag("rounded"),
            Sheared = section.Flag("sheared"),
        };
        fastener = fastener with
        {
            Pattern = Pattern(section, fastener.Count),
            NewPartCount = section.Value("new_part_count", Count) is var parts and > 0 ? parts : fastener.Count,
        };
        section.Done();
        Check(section, fastener);
        return fastener;
    }

    /// <summary>Refuses what single keys do not show: nothing that says how tight it is, more that came loose than there are.</summary>
    private static void Check(TomlSection section, JobFastener fastener)
    {
        if (!section.Has("torque") && !section.Has("thread"))
        {
            section.Refuse(section.PlaceOf("name").Error(section.Name, $"nothing says how tight '{fastener.Name}' is. "
                + "Give torque, such as torque = \"85Nm\", or thread and grade."));
        }

        if (fastener.CameLoose.Count > fastener.Count)
        {
            section.Refuse(section.PlaceOf("came_loose").Error("came_loose", string.Create(
                CultureInfo.InvariantCulture, $"{fastener.CameLoose.Count} came loose where there are {fastener.Count}. Give count, or take some out.")));
        }
    }

    /// <summary>The key of a row in a table of Core, or null.</summary>
    internal static string? Row(this TomlSection section, string key, string table, string what) =>
        section.Value(key, text => RowLookup.Named(table, text, what).Key);

    /// <summary>The grade; of one behind a thread that cannot be read nothing is said.</summary>
    private static string? Grade(TomlSection section, ScrewThread? thread) => section.Value("grade", text => thread is null
        ? section.Has("thread") ? null : throw new InputException("a grade says nothing without a thread. Give thread too, such as thread = \"M12\".")
        : GradeCatalog.Bolt(text, thread).Name);

    private static int Count(string text) => double.IsInteger(QuantityReader.Number(text, 1, MostAlike))
        ? int.Parse(text.Trim(), NumberStyles.Float, CultureInfo.InvariantCulture)
        : throw new InputException($"'{text}' is no whole number.");

    private static ToolKind? Tool(TomlSection section) => section.Choice<ToolKind?>(
        "tool",
        ("socket", ToolKind.Socket), ("ring", ToolKind.Ring), ("open", ToolKind.Open), ("key", ToolKind.Key));

    private static string[] Stances(TomlSection section) =>
    [
        .. section.Values("stances", text => text.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries)
            .Select(word => RowLookup.Named("stances", word, "a stance").Key).ToList()).SelectMany(list => list.Value).Distinct(StringComparer.Ordinal),
    ];

    private static Wheel Wheel(string text)
    {
        foreach (Axle axle in Enum.GetValues<Axle>())
        {
            foreach (Side side in (ReadOnlySpan<Side>)[Side.Left, Side.Right])
            {
                var wheel = new Wheel(axle, side);
                if (wheel.Words.Equals(text.Trim(), StringComparison.OrdinalIgnoreCase))
                {
                    return wheel;
                }
            }
        }

        throw new InputException($"'{text}' is no wheel. Write rear left, rear right, front left or front right.");
    }

    /// <summary>Four or more alike are taken to stand on a circle unless it is said otherwise (common practice).</summary>
    private static TighteningPattern Pattern(TomlSection section, int count) => section.Choice<TighteningPattern?>(
        "pattern",
        ("circle", TighteningPattern.Circle), ("row", TighteningPattern.Row), ("two-rows", TighteningPattern.TwoRows), ("none", TighteningPattern.None))
            ?? (count >= 4 ? TighteningPattern.Circle : TighteningPattern.None);
}
