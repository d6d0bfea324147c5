using Leverage.Preload;

namespace Leverage.Holding;

/// <summary>What a pull means to a vehicle on support stands.</summary>
public enum StandRisk
{
    /// <summary>The pull is small beside what tips a stand.</summary>
    Small,

    /// <summary>Above a quarter of what tips a stand.</summary>
    Care,

    /// <summary>Above half of what tips a stand, or the fastener turns a wheel: put it on its wheels first.</summary>
    Stop,
}

/// <summary>A vehicle on stands, judged by the pull and not by the place.</summary>
/// <param name="TipsAtN">Sideways force at which a stand tips, N.</param>
/// <param name="PullN">The strong pull, N.</param>
/// <param name="Risk">What that means.</param>
public readonly record struct Stands(double TipsAtN, double PullN, StandRisk Risk)
{
    /// <summary>Half the base of a usual stand, mm (judgement).</summary>
    public const double HalfBaseMm = 150;

    /// <summary>Height of a usual stand, mm (judgement).</summary>
    public const double HeightMm = 400;

    /// <summary>Share of the tipping force above which care is called for (judgement).</summary>
    public const double CareShare = 0.25;

    /// <summary>Share of the tipping force above which it is not done (judgement).</summary>
    public const double StopShare = 0.5;

    /// <summary>Judges a pull.</summary>
    /// <param name="massKg">Mass of the vehicle, kg, above 0. A stand carries a quarter.</param>
    /// <param name="pullN">The strong pull at the hands, N, 0 or more.</param>
    /// <param name="turnsWheel">Whether the fastener turns with a wheel.</param>
    /// <returns>What it means.</returns>
    public static Stands Of(double massKg, double pullN, bool turnsWheel)
    {
        double tips = SupportStand.TippingForce(massKg * HangingWeight.StandardGravity / 4, HalfBaseMm, HeightMm);
        StandRisk risk = turnsWheel || pullN > StopShare * tips
            ? StandRisk.Stop
            : pullN > CareShare * tips ? StandRisk.Care : StandRisk.Small;
        return new Stands(tips, pullN, risk);
    }
}
