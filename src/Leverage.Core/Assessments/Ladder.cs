using Leverage.Requests;

namespace Leverage.Assessments;

/// <summary>
/// What to do about a nut, one step after another in the trade's order: special joints, the pull as assessment or what clears its
/// stop, then what gains, then what helps without a figure, last what destroys it. Advice and picking share it.
/// </summary>
public sealed partial class Ladder
{
    /// <summary>Set-ups judged at most for one rung.</summary>
    private const int Tries = 6;

    /// <summary>Shortest lever with room for two people's hands, mm (judgement).</summary>
    private const double RoomForTwoMm = 500;

    private readonly IReadOnlyList<Move> _moves;
    private readonly IReadOnlyList<ToolOption> _tools;
    private readonly IReadOnlyList<HoldOption> _holds;
    private readonly LooseningAssessment _assessment;
    private readonly string? _name;
    private readonly List<LadderStep> _prepared = [];
    private readonly List<(LadderStep Step, TriedSetup Tried)> _pulled = [];
    private readonly LooseningRequest _start;
    private LadderStep? _soak;
    private LooseningRequest _request;
    private NutFigures _nut;

    private Ladder(
        LooseningRequest request, LooseningAssessment assessment, IReadOnlyList<ToolOption> tools, IReadOnlyList<HoldOption> holds, string? name)
    {
        (_start, _request, _assessment, _nut, _tools, _holds, _name) = (request, request, assessment, assessment.Nut, tools, holds, name);
        _moves = Move.For(assessment.Setup.Place, SpecialJoints.Of(request, assessment.Setup));
    }

    private double Best => _pulled.Count == 0 ? 0 : _pulled.Max(pull => pull.Tried.Judgement.ComesLoose);

    private double Breaks => _pulled.Count == 0 ? 0 : _pulled.Max(pull => pull.Tried.Judgement.Breaks);

    /// <summary>The steps for a nut.</summary>
    /// <param name="request">What was said.</param>
    /// <param name="assessment">What that means.</param>
    /// <param name="tools">Tools that could be taken instead; null for those a shop sells.</param>
    /// <param name="holds">What there is to hold the wheel with; null for what anybody has.</param>
    /// <param name="name">What the tools of the first pull are called; null where they have no names.</param>
    /// <returns>The steps, in order.</returns>
    public static IReadOnlyList<LadderStep> Of(
        LooseningRequest request, LooseningAssessment assessment, IReadOnlyList<ToolOption>? tools = null, IReadOnlyList<HoldOption>? holds = null, string? name = null)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(assessment);
        return new Ladder(request, assessment, tools ?? [.. ShopTools.For(request)], holds ?? [], name).Climb();
    }

    private List<LadderStep> Climb()
    {
        Start();
        Soak();
        if (_request.HandsIn is not null)
        {
            Try("hands-out", null, _request with { HandsIn = null });
        }

        Stand();
        Take("longer-lever", option => option.Request.Drive == _request.Drive);
        Bigger();
        bool comes = Best >= LadderRank.LeastWorth;
        _pulled.RemoveAll(pull => pull.Step.Key is "longer-lever" or "bigger-drive" && comes && pull.Tried.Judgement.ComesLoose < LadderRank.LeastWorth);
        _request = _pulled.Count > 0 ? _pulled[^1].Tried.Request : _request;
        Second();
        List<LadderStep> steps = TriedSetup.Figured(_pulled);
        LadderStep? first = steps.FirstOrDefault();
        steps.AddRange(_soak is { } soak && !steps.Exists(step => step.Key == soak.Key) ? [soak] : []);
        steps.AddRange(new FigurelessMoves(_moves, _request, _assessment.Setup, _nut).After(steps, _prepared.Count));
        Move? last = (_request.Tool == ToolKind.Key ? Named("cut-off") : null) ?? Named("split-nut") ?? Named("drill-plug");
        return
        [
            .. _moves.Where(move => move.IsOfJoint).Select(move => new LadderStep(move.Key, move, null)),
            .. SpecialJoints.WantSixPoints(_start) && !_prepared.Concat(_pulled.Select(pull => pull.Step)).Any(step => step.Key is "seat-socket" or "ring") && Named("seat-socket") is { } seat ? [new LadderStep(seat.Key, seat, null)] : (LadderStep[])[],
            .. _prepared,
            .. steps.OrderBy(step => step == first && !steps.Contains(_soak!) ? 0 : step.Move?.Order ?? 0),
            .. last is null ? [] : new[] { new LadderStep(last.Key, last, null) },
        ];
    }

    private Move? Named(string key) => _moves.FirstOrDefault(move => move.Key == key);
}
