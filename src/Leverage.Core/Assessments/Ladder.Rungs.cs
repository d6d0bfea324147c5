using Leverage.Requests;

namespace Leverage.Assessments;

/// <content>The rungs, each tried on the nut as it is by then.</content>
public sealed partial class Ladder
{
    /// <summary>The pull as asked, or what clears its stop.</summary>
    private void Start()
    {
        if (TriedSetup.Of(_request, _nut) is not { } now)
        {
            return;
        }

        var named = _name is null ? null : new LadderTool { Name = _name };
        bool jaw = LadderCures.WantsRing(_request, _assessment);
        const VerdictRules Curable = VerdictRules.WheelTurns | VerdictRules.SlidesOff | VerdictRules.SlidesAsItTurns;
        if (!now.IsStop && !jaw && (_assessment.Judgement.Ruling.Cares & Curable) == VerdictRules.None)
        {
            Pull("now", named, now);
            return;
        }

        // Each on top of those before, and past the stop as long as it gains: a wheel that just holds may hold better.
        var waiting = new List<LadderStep>();
        bool cures = false;
        foreach (var (key, tool, request) in LadderCures.Of(_request, _assessment, _holds))
        {
            waiting.Add(new LadderStep(key, Named(key), tool));
            if (TriedSetup.Of(request, _nut) is { } cured && (now.IsStop || !cured.IsStop && LadderCures.Mends(now.Judgement, cured.Judgement, jaw)))
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
        else if (!now.IsStop)
        {
            Pull("now", named, now);
        }
    }

    /// <summary>Soaks what rust holds, unless it is all but sure to come dry: it costs little, hurts nothing, and helps a longer lever too.</summary>
    private void Soak()
    {
        if (Best >= 1 - LadderRank.LeastGain || _request.Soaked || !_assessment.Setup.Fastener.Condition.IsRusty || Named("soak") is not { } soak)
        {
            return;
        }

        _nut = NutFigures.Soaked(_assessment.Setup.Fastener);
        _request = _request with { Soaked = true };
        _soak = new LadderStep(soak.Key, soak, null);
        if (TriedSetup.Of(_request, _nut) is { IsStop: false } then)
        {
            Pull(soak.Key, null, then);
        }
    }

    /// <summary>A second person, where there is room for one's hands and they end before the nut turns.</summary>
    private void Second()
    {
        if (_request.People is not 2 && !LeverDefaults.IsCramped(_request.Stance) && LeverDefaults.ToolMm(_request) >= RoomForTwoMm)
        {
            Try("second-person", null, _request with { People = 2 }, lever: true);
        }
    }

    private void Stand()
    {
        if (LadderCures.BetterStance(_request) is { } stance && Named("better-stance") is { } move)
        {
            Try(move.Key, new LadderTool { Stance = stance }, _request with { Stance = stance });
        }
    }

    /// <summary>Another drive: first the smallest whose bare bar likely brings it, then, if that is not enough, whatever gains.</summary>
    private void Bigger()
    {
        bool Other(ToolOption option) => option.Request.Drive != _request.Drive;
        (ToolOption Option, double Chance)[] bare = [.. Gaining(option => Other(option) && option.Request.Tube is null).Where(one => one.Chance >= VerdictOf.LikelyShare)];
        if (bare.Length > 0)
        {
            string? smallest = bare.MinBy(one => one.Option.Size.DriveNm).Option.Request.Drive;
            Take("bigger-drive", option => Other(option) && option.Request.Tube is null && option.Request.Drive == smallest);
        }

        if (Best < LadderRank.Enough)
        {
            Take("bigger-drive", Other);
        }
    }

    /// <summary>The tools of one rung that swing and gain enough, each with the chance that it reaches what the nut takes.</summary>
    private IEnumerable<(ToolOption Option, double Chance)> Gaining(Func<ToolOption, bool> belongs) => _tools.Where(belongs)
        .Select(option => option with
        {
            // What a shop sells is used as one stands by now; a set of the chest has its own best stance.
            Request = LadderCures.Carried(_request, option.Name is null ? option.Request with { Stance = null } : option.Request),
        })
        .Where(option => LeverDefaults.Swings(option.Request))
        .Select(option => (option, LadderRank.Reaches(_nut, option.Request)))
        .Where(one => one.Item2 >= Best + LadderRank.LeastGain);

    /// <summary>Of the tools of one rung the first in rank that is safe and gains enough.</summary>
    private void Take(string key, Func<ToolOption, bool> belongs)
    {
        double now = LadderRank.Reaches(_nut, _request);
        var left = Gaining(belongs).ToList();
        for (int tries = 0; tries < Tries && left.Count > 0; tries++)
        {
            var (option, chance) = LadderRank.First(left, one => one.Chance, one => one.Option.Size);
            LadderTool tool = option.InPlaceOf(_request, _assessment.Setup.Fastener.AcrossFlats);
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
            || then.Judgement.ComesLoose < (weaker ? Math.Max(VerdictOf.LikelyShare, Best + LadderRank.LeastGain) : Best + LadderRank.LeastGain))
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
