using Leverage.Requests;

namespace Leverage.Assessments;

/// <summary>
/// What to do about a nut, one step after another in the trade's order: special joints, the pull as asked or what clears its
/// stop, then what gains, then what helps without a figure, last what destroys it. Advice and picking share it.
/// </summary>
public sealed class Ladder
{
    /// <summary>Most steps without a figure that are worth reading, special joints and the last resort aside.</summary>
    private const int MostUnknown = 3;

    /// <summary>Steps that still fit on a screen.</summary>
    private const int MostSteps = 6;

    /// <summary>Set-ups judged at most for one rung.</summary>
    private const int Tries = 6;

    /// <summary>Steps without a figure, the more useful first.</summary>
    private static readonly string[] Unknown = ["one-size-under", "weld-nut", "rock", "heat-nut", "second-person", "tap"];

    private readonly IReadOnlyList<Move> _moves;
    private readonly IReadOnlyList<ToolOption> _tools;
    private readonly IReadOnlyList<HoldOption> _holds;
    private readonly LooseningAssessment _asked;
    private readonly string? _name;
    private readonly List<LadderStep> _prepared = [];
    private readonly List<(LadderStep Step, TriedSetup Tried)> _pulled = [];
    private LooseningRequest _request;
    private NutFigures _nut;

    private Ladder(LooseningRequest request, LooseningAssessment asked, IReadOnlyList<ToolOption> tools, IReadOnlyList<HoldOption> holds, string? name)
    {
        (_request, _asked, _nut, _tools, _holds, _name) = (request, asked, asked.Nut, tools, holds, name);
        _moves = Move.For(asked.Setup.Place, LadderCures.Joints(request, asked.Setup));
    }

    private double Best => _pulled.Count == 0 ? 0 : _pulled.Max(pull => pull.Tried.Judgement.ComesLoose);

    private double Breaks => _pulled.Count == 0 ? 0 : _pulled.Max(pull => pull.Tried.Judgement.Breaks);

    /// <summary>The steps for a nut.</summary>
    /// <param name="request">What was said.</param>
    /// <param name="asked">What that means.</param>
    /// <param name="tools">Tools that could be taken instead; null for those a shop sells.</param>
    /// <param name="holds">What there is to hold the wheel with; null for what anybody has.</param>
    /// <param name="name">What the tools of the first pull are called; null where they have no names.</param>
    /// <returns>The steps, in order.</returns>
    public static IReadOnlyList<LadderStep> Of(
        LooseningRequest request, LooseningAssessment asked, IReadOnlyList<ToolOption>? tools = null, IReadOnlyList<HoldOption>? holds = null, string? name = null)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(asked);
        return new Ladder(request, asked, tools ?? [.. ShopTools.For(request)], holds ?? [], name).Climb();
    }

    private List<LadderStep> Climb()
    {
        Start();
        Soak();
        Stand();
        Take("longer-lever", option => option.Request.Drive == _request.Drive);
        Take("bigger-drive", option => option.Request.Drive != _request.Drive);
        bool comes = Best >= LadderRank.LeastWorth;
        _pulled.RemoveAll(pull => pull.Step.Key is "longer-lever" or "bigger-drive" && comes && pull.Tried.Judgement.ComesLoose < LadderRank.LeastWorth);
        List<LadderStep> steps = TriedSetup.Figured(_pulled);
        LadderStep? first = steps.FirstOrDefault();
        if (1 - (steps.LastOrDefault()?.ComesLooseBy ?? 0) >= LadderRank.LeastWorth)
        {
            steps.AddRange(Unknown.Select(Named).OfType<Move>().Where(Helps).Take(Math.Clamp(MostSteps - 1 - steps.Count - _prepared.Count, 1, MostUnknown)).Select(move => new LadderStep(move.Key, move, null)));
        }

        Move? last = (_request.Tool == ToolKind.Key ? Named("cut-off") : null) ?? Named("split-nut");
        return
        [
            .. _moves.Where(move => move.Joint is not (null or "rounded")).Select(move => new LadderStep(move.Key, move, null)),
            .. _prepared,
            .. steps.OrderBy(step => step == first ? 0 : step.Move?.Order ?? 0),
            .. last is null ? [] : new[] { new LadderStep(last.Key, last, null) },
        ];
    }

    private Move? Named(string key) => _moves.FirstOrDefault(move => move.Key == key);

    /// <summary>A second person helps where the hands end before the nut turns.</summary>
    private bool Helps(Move move) => move.Key != "second-person" || _pulled.Count > 0 && _pulled[^1].Tried.Judgement.StaysTight >= LadderRank.LeastWorth;

    /// <summary>The pull as asked, or what clears its stop.</summary>
    private void Start()
    {
        if (TriedSetup.Of(_request, _nut) is not { } now)
        {
            return;
        }

        if (!now.IsStop)
        {
            Pull("now", _name is null ? null : new LadderTool { Name = _name }, now);
            return;
        }

        // Each on top of those before, and past the stop as long as it gains: a wheel that just holds may hold better.
        var waiting = new List<LadderStep>();
        bool cures = false;
        foreach (var (key, tool, request) in LadderCures.Of(_request, _asked, _holds))
        {
            waiting.Add(new LadderStep(key, Named(key), tool));
            if (TriedSetup.Of(request, _nut) is { } cured && (now.IsStop || cured.Judgement.ComesLoose >= now.Judgement.ComesLoose + LadderRank.Alike))
            {
                _prepared.AddRange(waiting);
                waiting.Clear();
                (_request, now, cures) = (request, cured, true);
            }
        }

        if (cures && !now.IsStop)
        {
            LadderStep last = _prepared[^1];
            _prepared.RemoveAt(_prepared.Count - 1);
            Pull(last.Key, last.Tool, now);
        }
    }

    private void Soak()
    {
        if (!_request.Soaked && Named("soak") is { } soak && _asked.Setup.Fastener.Condition.LockerNm == 0)
        {
            // What it held, it held before the soak.
            NutFigures before = _nut;
            _nut = NutFigures.Of(_asked.Setup.Fastener with { Soaked = true, HeldNmm = 0 });
            _nut = Try(soak.Key, null, _request with { Soaked = true }) ? _nut : before;
        }
    }

    private void Stand()
    {
        if (LadderCures.BetterStance(_request) is { } stance && Named("better-stance") is { } move)
        {
            Try(move.Key, new LadderTool { Stance = stance }, _request with { Stance = stance });
        }
    }

    /// <summary>Of the tools of one rung the first in rank that is safe and gains enough.</summary>
    private void Take(string key, Func<ToolOption, bool> belongs)
    {
        double now = LadderRank.Reaches(_nut, _request);
        List<(ToolOption Option, double Chance)> left =
        [
            .. _tools.Where(belongs)
                .Select(option => option with { Request = LadderCures.Carried(_request, option.Request) })
                .Select(option => (option, LadderRank.Reaches(_nut, option.Request)))
                .Where(one => one.Item2 >= Best + LadderRank.Alike),
        ];
        for (int tries = 0; tries < Tries && left.Count > 0; tries++)
        {
            var (option, chance) = LadderRank.First(left, one => one.Chance, one => one.Option.Size);
            LadderTool tool = option.InPlaceOf(_request, _asked.Setup.Fastener.AcrossFlats);
            if (Try(key, tool, option.Request, lever: true, weaker: chance < now))
            {
                return;
            }

            // What breaks or slides on this lever does so on a longer one of as many pieces and the same square too.
            double? reach = LeverDefaults.ToolMm(option.Request);
            left.RemoveAll(one => one.Option == option || one.Option.Request.Drive == option.Request.Drive
                && one.Option.Pieces >= option.Pieces && LeverDefaults.ToolMm(one.Option.Request) >= reach);
        }
    }

    /// <summary>
    /// Adds a pull that is no stop and gains enough; a weaker lever only where it likely comes all the same, and none that
    /// breaks more than its share of what it gains.
    /// </summary>
    private bool Try(string key, LadderTool? tool, LooseningRequest request, bool lever = false, bool weaker = false)
    {
        if (TriedSetup.Of(request, _nut) is not { IsStop: false } then
            || lever && then.Judgement.Breaks - Breaks > LadderRank.MostHarm * (then.Judgement.ComesLoose - Best)
            || then.Judgement.ComesLoose < (weaker ? Math.Max(VerdictOf.LikelyShare, Best + LadderRank.Alike) : Best + LadderRank.Alike))
        {
            return false;
        }

        Pull(key, tool, then);
        return true;
    }

    private void Pull(string key, LadderTool? tool, TriedSetup tried)
    {
        _request = tried.Request;
        _pulled.Add((new LadderStep(key, Named(key), tool, Request: tried.Request, Setup: tried.Setup, Alone: tried.Judgement), tried));
    }
}
