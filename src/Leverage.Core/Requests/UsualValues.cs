namespace Leverage.Requests;

/// <summary>What is taken when a field is left out: the one place of each figure that no table and no formula holds.</summary>
internal static class UsualValues
{
    /// <summary>Yield of a tube of unknown steel, MPa: the weakest of the table tube-steels, S195T of EN 10255.</summary>
    internal const double TubeYieldMpa = 195;

    /// <summary>Yield of a bar of no known drive, MPa (judgement, as in the table handles).</summary>
    internal const double BarYieldMpa = 900;

    /// <summary>Straight share of a bar of no known drive (judgement, as in the table handles).</summary>
    internal const double StraightShare = 0.75;

    /// <summary>Share of a nut's height a tool covers (judgement).</summary>
    internal const double Engaged = 0.8;

    /// <summary>End of the swing, past square, degrees (judgement).</summary>
    internal const double PastSquareDeg = 30;

    /// <summary>Mass of a vehicle nobody weighed, kg (judgement).</summary>
    internal const double VehicleMassKg = 1400;

    /// <summary>Loaded radius of a usual car tyre, mm (order of magnitude, tables/holding.csv).</summary>
    internal const double TyreRadiusMm = 300;

    /// <summary>Share of yield to tighten to; the published tables use it too.</summary>
    internal const double YieldShare = 0.9;
}
