using Leverage.Assessments;
using Leverage.Levers;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Threads;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Charts.Tests;

/// <summary>Set-ups from everyday to absurd, by name.</summary>
internal static class Cases
{
    internal static LooseningRequest AxleNut { get; } = new()
    {
        BookTorque = Torque.FromNewtonMeters(460),
        Thread = ThreadCatalog.Named("M24x1.5"),
        Condition = "rusted",
        AcrossFlats = Length.FromMillimeters(36),
        Drive = "1/2",
        Bar = Length.FromMillimeters(600),
        Stance = "stand-push",
        Body = Mass.FromKilograms(82),
    };

    internal static LooseningRequest Tubed { get; } = AxleNut with
    {
        BarDiameter = Length.FromMillimeters(20),
        Tube = Tube(33.7, 3.2, 1000),
        Overlap = Length.FromMillimeters(250),
    };

    internal static LooseningRequest Heavy { get; } = Tubed with
    {
        Condition = "used",
        Drive = "3/4",
        Bar = Length.FromMillimeters(900),
        BarDiameter = Length.FromMillimeters(24),
        Tube = Tube(42.4, 3.2, 1200),
        Overlap = Length.FromMillimeters(400),
    };

    internal static IReadOnlyDictionary<string, LooseningRequest> Loosening { get; } = new Dictionary<string, LooseningRequest>(StringComparer.Ordinal)
    {
        ["axle nut"] = AxleNut,
        ["tubed"] = Tubed,
        ["heavy"] = Heavy,
        ["lifted"] = Tubed with { Stance = "lift-legs", Drive = "3/4", Condition = "used" },
        ["across, left-hand"] = Tubed with { Stance = "stand-pull", LeftHand = true },
        ["held before"] = AxleNut with { Held = Torque.FromNewtonMeters(300) },
        ["open spanner, rounded"] = new()
        {
            BookTorque = Torque.FromNewtonMeters(60),
            Thread = ThreadCatalog.Named("M12"),
            AcrossFlats = Length.FromMillimeters(18),
            Tool = ToolKind.Open,
            Condition = "rusted",
            Worn = "rounded",
            Bar = Length.FromMillimeters(250),
            Stance = "one-hand",
        },
        ["no bar"] = AxleNut with { Bar = null, BarDiameter = null },
        ["nothing known"] = new() { BookTorque = Torque.FromNewtonMeters(460) },
        ["tiny bolt"] = new() { Thread = ThreadCatalog.Named("M6"), Drive = "1/4", Bar = Length.FromMillimeters(150) },
        ["two hands, tiny bolt"] = new() { Thread = ThreadCatalog.Named("M6"), Drive = "1/4", Bar = Length.FromMillimeters(150), Stance = "stand-push" },
        ["big nut, tiny bar"] = AxleNut with { Bar = Length.FromMillimeters(80) },
        ["tiny bolt, long bar"] = new() { Thread = ThreadCatalog.Named("M6"), Drive = "1/4", Bar = Length.FromMillimeters(600) },
        ["three metres"] = AxleNut with { Drive = "1", Bar = Length.FromMillimeters(3000) },
        ["hopeless"] = AxleNut with { BookTorque = Torque.FromNewtonMeters(5000), Thread = null },
        ["measured force"] = Heavy with { Force = Force.FromNewtons(600) },
        ["everything at once"] = Heavy with
        {
            Adapters = ["1/2", "1", "3/8"],
            BarPin = Length.FromMillimeters(12),
            BarPinPlanes = Length.FromMillimeters(20),
        },
    };

    internal static TheoryData<string> Names => [.. Loosening.Keys];

    internal static LooseningAssessment Assess(string name) =>
        LooseningAssessor.WithoutAdvice(LooseningDefaults.Complete(Loosening[name]));

    internal static ForceWindow Window(string name) => WindowMaker.Of(Assess(name));

    internal static IReadOnlyDictionary<string, LooseningRequest> Slipping { get; } = new Dictionary<string, LooseningRequest>(StringComparer.Ordinal)
    {
        ["dry"] = OnBar(33.7, 3.2, 250),
        ["greasy"] = OnBar(33.7, 3.2, 250) with { Surface = "greasy" },
        ["snug and rusty"] = OnBar(26.9, 3.2, 250) with { Surface = "rusty" },
        ["friction given"] = OnBar(33.7, 3.2, 250) with { SurfaceFriction = 0.17 },
        ["slides at square"] = OnBar(48.3, 3.2, 60) with { Surface = "greasy", Taper = Angle.FromDegrees(1) },
        ["short overlap"] = OnBar(33.7, 3.2, 20),
        ["all the handle"] = OnBar(33.7, 3.2, 450),
        ["weak tube"] = OnBar(26.9, 1, 100),
        ["jack handle"] = OnBar(33.7, 3.2, 250) with { Tube = new TubeText(Length.FromMillimeters(1100), Bore: Length.FromMillimeters(30)) },
        ["no room"] = OnBar(33.7, 3.2, 100) with { Tube = Tube(33.7, 3.2, 210) },
        ["steep swing"] = OnBar(33.7, 3.2, 250) with { PastSquare = Angle.FromDegrees(80) },
        ["lifted"] = OnBar(33.7, 3.2, 250) with { Stance = "lift-legs", Surface = "oily" },
        ["across"] = OnBar(33.7, 3.2, 250) with { Stance = "stand-pull", BookTorque = Torque.FromNewtonMeters(460), Thread = ThreadCatalog.Named("M24x1.5") },
        ["level only"] = OnBar(33.7, 3.2, 250) with { PastSquare = Angle.Zero },
    };

    internal static SlipAssessment Slip(string name) => SlipAssessor.Assess(SlipDefaults.Complete(Slipping[name]));

    internal static string Words(Chart chart) => string.Join(' ', chart.Texts.Select(text => text.Text));

    private static LooseningRequest OnBar(double outsideMm, double wallMm, double overlapMm) => new()
    {
        Bar = Length.FromMillimeters(600),
        BarDiameter = Length.FromMillimeters(20),
        Tube = Tube(outsideMm, wallMm, 1000),
        Overlap = Length.FromMillimeters(overlapMm),
    };

    internal static UnitStyle Units(bool us) => us ? UnitStyle.Us : UnitStyle.Metric;

    internal static TubeText Tube(double outsideMm, double wallMm, double lengthMm) =>
        new(Length.FromMillimeters(lengthMm), Length.FromMillimeters(outsideMm), Length.FromMillimeters(wallMm));
}
