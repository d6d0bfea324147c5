using Leverage.Assessments;
using Leverage.Holding;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Tests.Assessments;

/// <summary>Requests the tests start from.</summary>
internal static class SampleRequests
{
    /// <summary>The example of the documentation: a rusted axle nut, a tube on the bar, brake and chock.</summary>
    internal static LooseningRequest AxleNut { get; } = new()
    {
        BookTorque = Torque.FromNewtonMeters(460),
        Thread = ThreadCatalog.Named("M24x1.5"),
        Condition = "rusted",
        AcrossFlats = Length.FromMillimeters(36),
        Drive = "1/2",
        Bar = Length.FromMillimeters(600),
        BarDiameter = Length.FromMillimeters(20),
        Tube = new TubeText(Length.FromMillimeters(1000), Length.FromMillimeters(33.7), Length.FromMillimeters(3.2)),
        Overlap = Length.FromMillimeters(250),
        Stance = "stand-push",
        Body = Mass.FromKilograms(82),
        HeldBy = [Restraint.Brake, Restraint.Chock],
        VehicleMass = Mass.FromKilograms(1250),
        WheelLoad = Force.FromNewtons(3200),
        TyreRadius = Length.FromMillimeters(310),
        ChockHeight = Length.FromMillimeters(100),
    };

    /// <summary>A nut and a bar and nothing else that could be judged.</summary>
    internal static LooseningRequest BareBar { get; } = new()
    {
        BookTorque = Torque.FromNewtonMeters(100),
        Condition = "rusted",
        Bar = Length.FromMillimeters(800),
        BarDiameter = Length.FromMillimeters(20),
    };

    internal static LooseningAssessment Judged(LooseningRequest request) =>
        LooseningAssessor.WithoutAdvice(LooseningDefaults.Complete(request));
}
