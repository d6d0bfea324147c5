using Leverage.Assessments;
using Leverage.Reading;
using Leverage.Requests;
using UnitsNet;

namespace Leverage.Tests.Requests;

/// <summary>What holds for every field there is, and what the library refuses because a field does.</summary>
public sealed class FieldListTests
{
    private static readonly LooseningRequest Nut = new()
    {
        BookTorque = Torque.FromNewtonMeters(100),
        Bar = Length.FromMillimeters(600),
        BarDiameter = Length.FromMillimeters(20),
    };

    public static TheoryData<string> Names => [.. LooseningFields.All.Concat(LooseningFields.Slip).Select(one => one.Name).Distinct()];

    public static TheoryData<string> TighteningNames => [.. TighteningFields.All.Select(one => one.Name)];

    public static TheoryData<string, LooseningRequest> Refused => new()
    {
        { "torque: cannot use '0Nm': accepted is 0.01Nm to 50000Nm.", Nut with { BookTorque = Torque.Zero } },
        { "prevailing: cannot use '-100Nm': accepted is 0.01Nm to 50000Nm.", Nut with { Prevailing = Torque.FromNewtonMeters(-100) } },
        { "hex: cannot use '0mm': accepted is 1mm to 200mm.", Nut with { AcrossFlats = Length.FromMillimeters(0) } },
        { "past-square: cannot use '120deg': accepted is 0deg to 80deg.", Nut with { PastSquare = Angle.FromDegrees(120) } },
        { "bar-taper: cannot use '120deg': accepted is 0deg to 20deg.", Nut with { Taper = Angle.FromDegrees(120) } },
        { "heat: is of no use without thread. Write: thread M24x1.5", Nut with { Heat = Leverage.BreakLoose.HeatedPart.Nut, HeatedBy = TemperatureDelta.FromKelvins(100) } },
        { "by: is of no use without heat. Write: heat stud", Nut with { HeatedBy = TemperatureDelta.FromKelvins(100) } },
        { "friction: cannot use '-0.1': accepted is 0.02 to 1.", Nut with { Friction = -0.1 } },
        { "surface-friction: cannot use '0': accepted is 0.01 to 1.", Nut with { SurfaceFriction = 0 } },
        { "body: cannot use '300kg': accepted is 30kg to 250kg.", Nut with { Body = Mass.FromKilograms(300) } },
        { "mass: is of no use without held by or on stands. Write: held-by brake,chock", Nut with { VehicleMass = Mass.FromKilograms(1000) } },
        { "mass: cannot use '100t': accepted is 1kg to 60000kg.", Nut with { VehicleMass = Mass.FromTonnes(100), HeldBy = [] } },
        { "tool: '' is not accepted here. Write: socket or ring or open or key", Nut with { Tool = (ToolKind)7 } },
        { "overlap: is of no use without tube. Write: tube 33.7x3.2x1000mm", Nut with { Overlap = Length.FromMillimeters(100) } },
        { "tube: is of no use without bar. Write: bar 600mm", new LooseningRequest { BookTorque = Nut.BookTorque, Tube = new TubeText(Length.FromMeters(1)) } },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public void The_library_refuses_what_the_command_line_refuses_and_names_field_and_cure(string line, LooseningRequest request) =>
        Assert.Equal(line, Assert.Throws<InputException>(() => Loosening.Assess(request)).Line);

    [Theory]
    [MemberData(nameof(Names))]
    public void The_example_of_a_field_is_read_set_written_and_read_back_the_same(string name) =>
        ReadBack([.. LooseningFields.All, .. LooseningFields.Slip], name, new LooseningRequest { Tube = name == "bore" ? new TubeText(Length.FromMeters(1)) : null });

    [Theory]
    [MemberData(nameof(TighteningNames))]
    public void The_example_of_a_field_of_tightening_is_read_set_written_and_read_back_the_same(string name) =>
        ReadBack(TighteningFields.All, name, new TighteningRequest());

    [Fact]
    public void Every_name_is_there_once_in_small_letters_with_hyphens()
    {
        Assert.All(LooseningFields.All, field => Assert.Matches("^[a-z]+(-[a-z]+)*$", field.Name));
        Assert.Equal(LooseningFields.All.Count, LooseningFields.All.DistinctBy(field => field.Name).Count());
        Assert.Equal(TighteningFields.All.Count, TighteningFields.All.DistinctBy(field => field.Name).Count());
        Assert.Equal(("tube_yield", "tube yield"), (LooseningFields.TubeYield.Key, LooseningFields.TubeYield.Label));
    }

    [Fact]
    public void Every_property_of_a_request_is_asked_by_a_field_and_a_turn_with_its_torque()
    {
        int fields = LooseningFields.All.Concat(LooseningFields.Slip).Where(field => field != LooseningFields.Bore).Distinct().Count();
        Assert.Equal(typeof(LooseningRequest).GetProperties().Length, fields + 1);
        Assert.Equal(typeof(TighteningRequest).GetProperties().Length, TighteningFields.All.Count);
    }

    [Fact]
    public void Tightening_needs_its_thread_and_checking_its_torque()
    {
        Assert.Equal("thread: is needed here. Write: thread M12x1.25", Assert.Throws<InputException>(() => Tightening.Assess(new TighteningRequest())).Line);
        TighteningRequest joint = new() { Thread = Leverage.Threads.ThreadCatalog.Named("M12") };
        Assert.Equal("torque: is missing: the torque quoted. Write: torque 130Nm", Assert.Throws<InputException>(() => Checking.Assess(joint)).Line);
        Assert.Equal(
            "adapter: is of no use without the wrench, from its square to the middle of its grip. Write: wrench 450mm",
            Assert.Throws<InputException>(() => Tightening.Assess(joint with { Adapter = Length.FromMillimeters(60) })).Line);
        Assert.Equal(
            "yield-share: cannot use '150%': accepted is 0.1% to 100%.",
            Assert.Throws<InputException>(() => Tightening.Assess(joint with { YieldShare = 1.5 })).Line);
    }

    private static void ReadBack<TRequest>(IReadOnlyList<Field<TRequest>> fields, string name, TRequest empty)
    {
        Field<TRequest> field = fields.Named(name);
        Assert.False(field.IsSet(empty));
        TRequest said = field.Read(empty, field.Kind.Example);
        Assert.True(field.IsSet(said));
        string text = field.Text(said)!;
        Assert.Equal(text, field.Text(field.Read(empty, text)));
        Assert.Equal(text, field.Text(field.Filled(empty, said)));
        Assert.True(field.Kind.IsFlag || field.Kind.Takes(text));
        Assert.False(field.Kind is not { IsFlag: true } && field.Kind.Range is not null && field.Kind.Takes("red"));
    }
}
