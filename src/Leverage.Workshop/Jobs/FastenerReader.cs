using System.Globalization;
using Leverage.Grades;
using Leverage.Holding;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Threads;
using Leverage.Workshop.Files;

namespace Leverage.Workshop.Jobs;

/// <summary>Reads a fastener out of a table of a job file, or a row of a spreadsheet's list.</summary>
internal static class FastenerReader
{
    private static readonly FieldKind<int> HowMany = Kinds.Count("8", new AcceptedRange(1, 200, ""));
    private static readonly FieldKind<IReadOnlyList<string>> Ways = Kinds.Rows("stances", "a stance", "stand-push");

    /// <summary>The fastener; its refusals are thrown one by one, or gathered where the section gathers them.</summary>
    internal static JobFastener Read(TomlSection section)
    {
        string? name = section.OneLine("name");
        if (name is null && !section.Has("name"))
        {
            section.Refuse(section.Missing("name", "axle-shaft nut, left"));
        }

        ScrewThread? thread = section.Named(LooseningFields.Thread);
        TorqueAndTurn? torque = section.Quantity(LooseningFields.Torque);
        var fastener = new JobFastener
        {
            Name = name ?? "",
            Place = section.Text("place"),
            Thread = thread,
            Grade = Grade(section, thread),
            AcrossFlats = section.Quantity(LooseningFields.Hex),
            BookTorque = torque?.Torque,
            Then = torque?.Turn,
            Grip = section.Quantity(LooseningFields.ClampedLength),
            Clamped = section.Named(LooseningFields.Clamped),
            Condition = section.Named(LooseningFields.Condition),
            On = section.Named(LooseningFields.On),
            Prevailing = section.Quantity(LooseningFields.Prevailing),
            Count = section.Quantity("count", HowMany) ?? 1,
            NewPart = section.Text("new_part"),
            Lubricant = section.Named(TighteningFields.Lubrication),
            LeftHand = section.Flag(LooseningFields.LeftHand),
            Soaked = section.Flag(LooseningFields.Soaked),
            Tool = section.Quantity(LooseningFields.Tool),
            Worn = section.Named(LooseningFields.Worn),
            Engaged = section.Quantity(LooseningFields.Engaged),
            NutClass = section.Named(LooseningFields.NutClass),
            Stances = Stances(section),
            Recess = section.Quantity("recess", Kinds.Length("80mm")) ?? UnitsNet.Length.Zero,
            Room = section.Quantity("room", Kinds.Length("900mm")),
            Wheel = section.Value("wheel", Wheel),
            HeldBy = section.Text("held_by"),
            Adapter = section.Quantity(TighteningFields.Adapter),
            Castle = section.Flag("castle"),
            Staked = section.Flag("staked"),
            Adjustable = section.Flag(TighteningFields.Adjustable.Key),
            RideHeight = section.Flag("ride_height"),
            RetorqueAfter = section.Text("retorque_after"),
            RefitNote = section.Text("refit_note"),
            Note = section.Text("note"),
            Done = section.Flag("done"),
            Held = section.Quantity("held", LooseningFields.Held.Values),
            CameLoose = [.. section.Values("came_loose", LooseningFields.Held.Values.Read).Select(each => each.Value)],
            Rounded = section.Flag("rounded"),
            Sheared = section.Flag("sheared"),
            At = section.Place,
        };
        fastener = fastener with
        {
            Pattern = Pattern(section, fastener.Count),
            NewPartCount = section.Quantity("new_part_count", HowMany) ?? fastener.Count,
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
                + "Give torque or thread. Write: torque = \"85Nm\""));
        }

        if (fastener.CameLoose.Count > fastener.Count)
        {
            section.Refuse(section.PlaceOf("came_loose").Error("came_loose", string.Create(
                CultureInfo.InvariantCulture, $"{fastener.CameLoose.Count} came loose where there are {fastener.Count}. Give count, or take some out.")));
        }
    }

    /// <summary>The grade; of one behind a thread that cannot be read nothing is said.</summary>
    private static string? Grade(TomlSection section, ScrewThread? thread) => section.Value("grade", text => thread is null
        ? section.Has("thread") ? null : throw new InputException("grade", "is of no use without thread.", LooseningFields.Thread.Cure)
        : GradeCatalog.Bolt(text, thread).Name);

    private static string[] Stances(TomlSection section) =>
        [.. section.Values("stances", Ways.Read).SelectMany(list => list.Value).Distinct(StringComparer.Ordinal)];

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
    private static TighteningPattern Pattern(TomlSection section, int count) => section.Quantity(
        "pattern", Kinds.Choice(("circle", TighteningPattern.Circle), ("row", TighteningPattern.Row), ("two-rows", TighteningPattern.TwoRows), ("none", TighteningPattern.None)))
            ?? (count >= 4 ? TighteningPattern.Circle : TighteningPattern.None);
}
