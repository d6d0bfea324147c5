using Leverage.Assessments;
using Leverage.Friction;
using Leverage.Grades;
using Leverage.Requests;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Tests.Assessments;

/// <summary>
/// Figures of whole tightenings and checks, worked out from the equations with a calculator apart from this program. All
/// hold to 0.1 %.
/// </summary>
public sealed class PinnedBoltTests
{
    private const double Share = 1e-3;
    private static readonly ScrewThread Thread = ThreadCatalog.Named("M12x1.25");
    private static readonly Grade Grade = GradeCatalog.Bolt("10.9", Thread);

    public static TheoryData<string, double> BoltFigures => new()
    {
        // M12x1.25: d2 11.1881, d0 10.8272, As 92.072; dw 16.63, dh 13.5; class 10.9, 940 MPa, friction 0.12, 90 % of yield.
        { "preload", 70500.4 }, { "torque", 132.738 },
        { "pitch", 14.0256 }, { "thread", 54.9874 }, { "face", 63.7253 }, { "nut factor", 0.156900 }, { "loosening", 104.148 },
        { "stress area", 92.0717 }, { "pitch diameter", 11.1881 },

        // T·450/(450 + 60·cos 45°); T/(82·9.80665).
        { "adapter", 121.302 }, { "hang", 165.067 },
    };

    [Theory]
    [MemberData(nameof(BoltFigures))]
    public void A_fine_thread_bolt_has_the_figures_worked_out_by_hand(string figure, double expected)
    {
        TighteningAssessment bolt = TighteningAssessor.Assess(new JointSetup(new() { ByWeight = Mass.FromKilograms(82) }, Thread)
        {
            Grade = Grade,
            Friction = FrictionRange.Stated(0.12),
            Adapter = new AdapterFitting(Length.FromMillimeters(60), Length.FromMillimeters(450), Angle.FromDegrees(45)),
        });
        Near.Equal(expected, BoltFigure(bolt, figure), Share);
    }

    [Fact]
    public void Older_tables_of_the_same_bolt_took_torsion_as_elastic()
    {
        TighteningAssessment bolt = TighteningAssessor.Assess(new JointSetup(new() { Torsion = 2 }, Thread)
        {
            Grade = Grade,
            Friction = FrictionRange.Stated(0.12),
        });
        Near.Equal(66_011.7, bolt.Result.End.Likely.Newtons, Share);
    }

    [Fact]
    public void A_quoted_torque_uses_the_shares_of_yield_worked_out_by_hand()
    {
        // 130 N·m on M12x1.25 10.9 at friction 0.196, 0.14 and 0.10: preload by the arm, over the preload at full yield.
        CheckingAssessment check = CheckingAssessor.Assess(new JointSetup(new() { Torque = Torque.FromNewtonMeters(130) }, Thread)
        {
            Grade = Grade,
        });
        Near.Equal(0.62341, check.End.YieldShare.Low, Share);
        Near.Equal(0.78633, check.End.YieldShare.Likely, Share);
        Near.Equal(1.01259, check.End.YieldShare.High, Share);
        Assert.Equal(TorqueVerdict.Fits, check.Quote);
    }

    [Fact]
    public void A_bolt_known_by_its_thread_alone_was_tightened_to_half_to_all_of_its_set_torque()
    {
        // M12 8.8, 640 MPa, dw 16.63, dh 13.5: 93.04 N·m at 90 % of yield and 0.14, 81.64 at yield and 0.10; over √2 from half to all.
        var setup = LooseningDefaults.Complete(new LooseningRequest { Thread = ThreadCatalog.Named("M12") });
        Near.Equal(81.637 / 2, setup.Start.LowNmm / 1000, Share);
        Near.Equal(57.726, setup.Fastener.BookTorque.NewtonMeters, Share);
        Near.Equal(81.637, setup.Start.HighNmm / 1000, Share);
    }

    private static double BoltFigure(TighteningAssessment bolt, string figure) => figure switch
    {
        "preload" => bolt.Result.End.Likely.Newtons,
        "torque" => bolt.Torque.NewtonMeters,
        "pitch" => bolt.Split.Pitch.NewtonMeters,
        "thread" => bolt.Split.Thread.NewtonMeters,
        "face" => bolt.Split.Face.NewtonMeters,
        "nut factor" => bolt.NutFactor,
        "loosening" => bolt.Result.Loosening.NewtonMeters,
        "stress area" => bolt.StressArea.SquareMillimeters,
        "pitch diameter" => bolt.PitchDiameter.Millimeters,
        "adapter" => bolt.AdapterSetting!.Value.NewtonMeters,
        "hang" => bolt.HangAt!.Value.Millimeters,
        _ => throw new ArgumentException("No such figure.", nameof(figure)),
    };
}
