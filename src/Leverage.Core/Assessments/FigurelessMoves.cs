using Leverage.Requests;

namespace Leverage.Assessments;

/// <summary>What helps by all accounts though nobody published how much: at most three, where the rest leaves something to wish for.</summary>
/// <param name="moves">The moves that fit joint and place.</param>
/// <param name="request">The set-up last pulled.</param>
/// <param name="setup">The set-up as asked.</param>
/// <param name="nut">What the nut takes by now.</param>
internal sealed class FigurelessMoves(IReadOnlyList<Move> moves, LooseningRequest request, LooseningSetup setup, NutFigures nut)
{
    /// <summary>Most of them that are worth reading, special joints and the last resort aside.</summary>
    private const int Most = 3;

    /// <summary>Steps that still fit on a screen.</summary>
    private const int MostSteps = 6;

    /// <summary>Least hexagon an impact wrench is taken to, mm (judgement): smaller bolts twist off.</summary>
    private const double LeastForBlowsMm = 17;

    /// <summary>Likely torque from which a torque multiplier is worth fetching, N·mm (judgement).</summary>
    private const double WorthMultiplyingNmm = 500e3;

    /// <summary>The more useful first.</summary>
    private static readonly string[] Keys = ["one-size-under", "weld-nut", "rock", "heat-nut", "impact-wrench", "torque-multiplier", "tap"];

    /// <summary>Those worth reading after steps with figures: where it may stay tight, or damage calls for care; what costs nothing on rust always.</summary>
    /// <param name="steps">The steps with figures.</param>
    /// <param name="prepared">Steps that stand before them.</param>
    internal IEnumerable<LadderStep> After(IReadOnlyList<LadderStep> steps, int prepared)
    {
        LadderStep? first = steps.FirstOrDefault(step => step.ComesLooseBy is not null);
        LadderStep? last = steps.LastOrDefault(step => step.ComesLooseBy is not null);
        bool all = last is not { ComesLooseBy: > LadderRank.Enough, BreaksBy: < VerdictOf.DamageCare };
        bool rock = setup.Fastener.Condition.IsRusty && first is { ComesLooseBy: < VerdictOf.LikelyShare };
        return Keys.Where(key => all || rock && key == "rock")
            .Select(key => moves.FirstOrDefault(move => move.Key == key))
            .OfType<Move>().Where(Helps)
            .Take(Math.Clamp(MostSteps - 1 - steps.Count - prepared, 2, Most))
            .Select(move => new LadderStep(move.Key, move, null));
    }

    private bool Helps(Move move) => move.Key switch
    {
        "impact-wrench" => request.Tool is null or ToolKind.Socket
            && setup is { Place: not { Key: "drain-plug" }, Fastener: { Grade: not { IsStainless: true }, AcrossFlats.Millimeters: >= LeastForBlowsMm } },
        "heat-nut" => setup.Fastener.Condition.IsRusty,
        "torque-multiplier" => nut.LikelyNmm >= WorthMultiplyingNmm,
        _ => true,
    };
}
