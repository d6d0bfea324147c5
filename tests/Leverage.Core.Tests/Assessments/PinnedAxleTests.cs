using Leverage.Assessments;
using Leverage.BreakLoose;
using Leverage.LoadPath;
using UnitsNet;

namespace Leverage.Tests.Assessments;

/// <summary>
/// Figures of a whole loosening, worked out from the equations with a calculator apart from this program; the equation
/// stands beside each. All hold to 0.1 %, so that no factor can move by two hundredths unnoticed.
/// </summary>
public sealed class PinnedAxleTests
{
    private const double Share = 1e-3;
    private static readonly LooseningAssessment Axle = SampleRequests.Judged(SampleRequests.AxleNut);

    public static TheoryData<string, double> AxleFigures => new()
    {
        // 460·1.37, and times or over exp(1.2816·ln(2.18/0.86)/2.5631).
        { "low", 395.82 }, { "likely", 630.2 }, { "high", 1003.36 },

        // 500·82/84.6 = 484.63 N; σ = ln(790/310)/3.2897; at 600 + 1000 - 250 - 95 = 1255 mm 608.2 N·m likely. The strong pull T has
        // Φ(ln(630.2/T)/0.36289)·Φ(ln(608.2/T)/0.28436) = 0.1, below what 82·9.80665 N give, 1009 N·m.
        { "reach", 1255 }, { "strong pull", 718.62 },
        { "needed likely", 630.2e3 / 484.63 }, { "needed high", 1003.36e3 / 484.63 },

        // 900·20³/6; 195·(33.7³ - 27.3³)/6·1255/655; R = 195·3.2²/4·√(33.7/3.2)·22·0.01^0.55 = 2830.98 N, R·250/905·1255
        // and 0.7·R·250/655·1255; T_p π/12·22.593³·0.577·830 under 273.6 MPa,
        // 1365.0; T_L 406.3, s 0.4366: T_L + (T_p' - s·T_L)/0.6.
        { "bar", 1200 }, { "tube bending", 1116.29 }, { "tip dent", 981.46 }, { "mouth dent", 949.24 }, { "stud", 2385.66 },
        { "square", 424 }, { "socket", 1165 },

        // N = 718.62e3/1255 = 572.60 N: N·905/250, N·655/250, N·0.655; atan(7.3/250).
        { "tip reaction", 2072.83 }, { "mouth reaction", 1500.22 }, { "bending", 375.06 }, { "tilt", 1.67256 }, { "tube breaks", 949.24e3 / 1255 },

        // tan θ = 0.2·905/250 + tan(atan 0.2 - δ)·655/250; atan(tan θ) - δ; at the end all clamp is gone and 0.6·(1 - 406.25/630.2)
        // = 0.21322 of the torque is left, atan(0.21322·tan θ) - δ; 0.3 for the typical.
        { "held", 47.7802 }, { "end", 12.3222 }, { "snap", -1.67256 }, { "held typical", 59.1281 },

        // 0.196·1250·9.80665·0.31/2 = 372.41; 0.8·3200·√(2·310·100 - 100²) = 583.77, below the grip 0.75·3200·0.31 = 744.
        { "hold", 956.18 },

        // Unit load with F = 572.60 N, the strong pull, E = 205 GPa: 106.65 mm at 337.85 N, so 180.76 mm; F·y/2;
        // √(2·E·(1 - 0.6²)/8.2) and √(2·E/8.2), above F·(1 - 0.6)·0.25/82 = 0.698 and 1.746.
        { "energy", 51.751 }, { "turns", 2.8422 }, { "snaps", 3.5528 },

        // 20 000 steps over the log torque with the exact normal: socket, square and tube at 1.25 times their limit, σ 0.08, bar
        // 0.10, hold 0.15; corners at 0.349·0.8·21.5·36²·330 = 2567 N·m and stud never. As it turns: φ0 = 28.3° is past before
        // 30°, so 0.6·(1 - 406.25/T) of tan θ is left, and the friction that needs is nearly always more than there is.
        { "comesLoose", 0.27306 }, { "staysTight", 0.25785 }, { "breaks", 0.46910 }, { "slides as it turns", 0.99999 },
    };

    [Theory]
    [MemberData(nameof(AxleFigures))]
    public void The_axle_nut_of_the_documentation_has_the_figures_worked_out_by_hand(string figure, double expected) =>
        Near.Equal(expected, AxleFigure(figure), Share);

    [Theory]
    [InlineData(HeatedPart.Stud, 340.00)] // 630.2 - 460·0.88316·100/139.99, release at 273.64 MPa·1.23901/2.4219 = 139.99 K
    [InlineData(HeatedPart.Nut, 630.2)]
    [InlineData(HeatedPart.Housing, 920.40)] // 630.2 + 460·0.88316·0.71434, rise 2.4219·100/1.23901/273.64
    public void Heat_moves_the_likely_torque_by_the_clamp_it_takes_or_adds(HeatedPart part, double nm) =>
        Near.Equal(nm, SampleRequests.Judged(SampleRequests.AxleNut with { Heat = part, HeatedBy = TemperatureDelta.FromKelvins(100) }).Nut.LikelyNmm / 1000, Share);

    private static double AxleFigure(string figure) => figure switch
    {
        "low" => Axle.Nut.LowNmm / 1000,
        "likely" => Axle.Nut.LikelyNmm / 1000,
        "high" => Axle.Nut.HighNmm / 1000,
        "reach" => Axle.Lever!.Value.ReachMm,
        "strong pull" => Axle.Judgement.StrongPullNmm / 1000,
        "needed likely" => Axle.NeededLikely.Millimeters,
        "needed high" => Axle.NeededHigh.Millimeters,
        "hold" => Axle.Hold!.Capacity.TotalNmm / 1000,
        "energy" => Axle.Release!.Energy!.Value.Joules,
        "turns" => Axle.Release!.Turns.MetersPerSecond,
        "snaps" => Axle.Release!.Snaps.MetersPerSecond,
        "comesLoose" => Axle.Judgement.ComesLoose,
        "staysTight" => Axle.Judgement.StaysTight,
        "breaks" => Axle.Judgement.Breaks,
        "slides as it turns" => Axle.Judgement.Shares.SlidesAsItTurns,
        _ => TubeFigure(figure, Axle.Tube!) ?? LinkFigure(figure),
    };

    private static double? TubeFigure(string figure, TubeAssessment tube) => figure switch
    {
        "tip reaction" => tube.TipReaction.Newtons,
        "mouth reaction" => tube.MouthReaction.Newtons,
        "bending" => tube.Bending.NewtonMeters,
        "tube breaks" => tube.BreaksAtN,
        "tilt" => tube.Tilt.Degrees,
        "held" => double.RadiansToDegrees(tube.Checked.HeldRad),
        "end" => double.RadiansToDegrees(tube.Checked.EndRad),
        "snap" => double.RadiansToDegrees(tube.Checked.SnapRad),
        "held typical" => double.RadiansToDegrees(tube.Typical.HeldRad),
        _ => null,
    };

    private static double LinkFigure(string figure)
    {
        LinkKind kind = figure switch
        {
            "bar" => LinkKind.Bar,
            "tube bending" => LinkKind.TubeBending,
            "tip dent" => LinkKind.TubeDentTip,
            "mouth dent" => LinkKind.TubeDentMouth,
            "stud" => LinkKind.Stud,
            "square" => LinkKind.Square,
            "socket" => LinkKind.Socket,
            _ => throw new ArgumentException("No such figure.", nameof(figure)),
        };
        return Axle.Links.Single(link => link.Limit.Kind == kind).Limit.LimitNmm / 1000;
    }
}
