using System.Globalization;
using Leverage.BreakLoose;
using Leverage.Friction;
using Leverage.Grades;
using Leverage.Outcomes;
using Leverage.Probability;
using Leverage.Tables;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Proof;

/// <summary>
/// The chances from a row's numbers: <c>book</c>, <c>bookSigma</c>, <c>growthMedian</c>, <c>growthSigma</c>, <c>onBook</c>,
/// <c>prevailing</c>; a thread's <c>diameter</c> and <c>pitch</c> with its <c>friction</c>, <c>yield</c>, <c>tensile</c> and
/// <c>grownShare</c>; <c>hand</c>, <c>handSigma</c>, <c>handCap</c>; <c>link1</c>, <c>linkSigma1</c> and so on;
/// <c>cornersTight</c>, <c>cornersLoose</c>, <c>cornersSigma</c>; <c>hold</c>, <c>holdSigma</c>; <c>tube</c> friction with
/// <c>tubeBelow</c>, <c>tubeAbove</c>, <c>leastTube</c>, <c>runningShare</c>, <c>turned</c>. The bearing face is the table's, as in any answer.
/// </summary>
internal static class ChanceInputs
{
    /// <summary>The chances of what happens first.</summary>
    internal static OutcomeShares Chances(CheckInputs inputs) => Setup(inputs).Chances();

    /// <summary>All that decides how the pull of a row ends.</summary>
    internal static ChanceSetup Setup(CheckInputs inputs)
    {
        var risks = new List<Risk>();
        while (inputs.Find(Numbered("link", risks)) is { } median)
        {
            risks.Add(new Risk(RiskKind.ToolGives, new Strength(median, inputs[Numbered("linkSigma", risks)])));
        }

        Fastener fastener = Fastener(inputs);
        if (BreakLooseSpread.Stud(fastener) is { } stud)
        {
            risks.Add(new Risk(RiskKind.StudTwistsOff, stud));
        }

        if (Corners(inputs) is { } corners)
        {
            risks.Add(corners);
        }

        if (inputs.Find("hold") is { } hold)
        {
            risks.Add(new Risk(RiskKind.WheelTurns, new Strength(hold, inputs["holdSigma"])));
        }

        var hand = new Strength(inputs["hand"], inputs["handSigma"], inputs.Find("handCap") ?? double.PositiveInfinity);
        return new ChanceSetup(fastener, hand, [.. risks], Tube(inputs, fastener));
    }

    /// <summary>The corners, their median falling straight with the play; null where the row has none.</summary>
    internal static Risk? Corners(CheckInputs inputs)
    {
        if (inputs.Find("cornersTight") is not { } tight)
        {
            return null;
        }

        double loose = inputs["cornersLoose"];
        return new Risk(RiskKind.CornersRound, new Strength(tight, inputs["cornersSigma"]), play => tight + (loose - tight) * play);
    }

    /// <summary>A tube whose least friction grows in step with the torque that is gone by the end of the swing.</summary>
    private static Sliding? Tube(CheckInputs inputs, Fastener fastener)
    {
        if (inputs.Find("tube") is not { } friction)
        {
            return null;
        }

        double least = inputs["leastTube"];
        double loosening = BreakLooseSpread.Joint(fastener).LooseningNmm;
        return new Sliding(
            new SplitLogNormal(friction, inputs["tubeBelow"], inputs["tubeAbove"]),
            least,
            torque => least / TorqueLeft.Share(inputs["runningShare"], loosening / torque, inputs["turned"], 1));
    }

    private static string Numbered(string name, List<Risk> before) =>
        name + (before.Count + 1).ToString(CultureInfo.InvariantCulture);

    /// <summary>The fastener of a row.</summary>
    internal static Fastener Fastener(CheckInputs inputs)
    {
        ScrewThread? thread = inputs.Find("diameter") is { } diameter ? Thread(diameter, inputs["pitch"]) : null;
        var growth = new Growth(inputs["growthMedian"], inputs["growthSigma"]);
        GrowthBasis basis = thread is null || inputs.Find("onBook") is 1 ? GrowthBasis.Book : GrowthBasis.Loosening;
        return new Fastener
        {
            BookTorque = Torque.FromNewtonMillimeters(inputs["book"]),
            BookTorqueSigma = inputs.Find("bookSigma") ?? 0,
            Condition = new Condition(
                "check", "a check's own", "a check's own", false, basis, growth, 0, 1, inputs.Find("grownShare") ?? 1, LubricantNow.Gone,
                "the row", ValueStatus.Derived),
            Friction = FrictionRange.About(inputs.Find("friction") ?? FrictionRange.Default),
            Thread = thread,
            Grade = inputs.Find("tensile") is { } tensile
                ? new Grade("check", "the row", 0, inputs["yield"], tensile, ValueStatus.Derived)
                : null,
            Prevailing = Torque.FromNewtonMillimeters(inputs.Find("prevailing") ?? 0),
        };
    }

    private static ScrewThread Thread(double diameterMm, double pitchMm) => new(
        FormattableString.Invariant($"M{diameterMm}x{pitchMm}"),
        ThreadFamily.Metric,
        Length.FromMillimeters(diameterMm),
        Length.FromMillimeters(pitchMm));
}
