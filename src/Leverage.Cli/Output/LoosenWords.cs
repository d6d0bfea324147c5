using System.Globalization;
using Leverage.Answers;
using Leverage.Assessments;
using Leverage.Holding;
using Leverage.LoadPath;
using UnitsNet;

namespace Leverage.Cli.Output;

/// <summary>The answer of <c>leverage loosen</c> in words, on one screen.</summary>
internal sealed class LoosenWords
{
    private readonly LooseningAssessment _a;
    private readonly CrossCheck? _drawn;
    private readonly UnitStyle _units;

    /// <summary>Words for an assessment.</summary>
    internal LoosenWords(LooseningAssessment assessment, CrossCheck? drawn, UnitStyle units) =>
        (_a, _drawn, _units) = (assessment, drawn, units);

    /// <summary>Lays the answer out.</summary>
    internal void Write(Page page)
    {
        page.Title(LooseningTitle.Of(_a.Setup, _units));
        Takes(page);
        page.Space();
        Links(page);
        Around(page);
        page.Space();
        Verdict(page);
        if (_drawn is { } drawn)
        {
            page.Note("By drawing", $"undone {Drawn(drawn.Undone)} · stuck {Drawn(drawn.Stuck)} · gives {Drawn(drawn.Gives)} "
                + string.Create(CultureInfo.InvariantCulture, $"({drawn.Samples} draws, seed {drawn.Seed})"));
        }

        page.Space();
        if (_a.Links.Any(link => !link.Limit.Confirmed))
        {
            page.Note("*", "unconfirmed or assumed figure");
        }

        page.Note("Assumed", AssumedWords.Brief(_a.Setup.Assumed, _units));
        page.Note("Before you pull", Cautions.Of(_a));
    }

    private void Takes(Page page)
    {
        page.Figure(
            "It takes",
            $"{Number(_a.Nut.LowNmm)} · {Number(_a.Nut.LikelyNmm)} · {_units.Torque(Nm(_a.Nut.HighNmm))}",
            "easy · likely · hard");
        string stance = $"{_a.Setup.Hands.Stance.Key}, {_units.Mass(_a.Setup.Hands.Body)}";
        if (_a.Lever is not { } lever)
        {
            page.Figure("You can give", _units.Force(Force.FromNewtons(_a.Hand.Quantile(0.5))), stance);
            page.Figure("Lever needed", $"{_units.Reach(_a.NeededLikely)} likely", $"{_units.Reach(_a.NeededHigh)} in the hard case, nut to hands");
            return;
        }

        page.Figure(
            "You can give",
            $"{_units.Torque(Nm(_a.Hand.Quantile(0.5) * lever.ReachMm))} at {_units.Reach(Mm(lever.ReachMm))}",
            stance);
        double more = _a.NeededLikely.Millimeters - lever.ReachMm;
        page.Figure(
            "Lever needed",
            $"{_units.Reach(_a.NeededLikely)} likely",
            more > 0 ? $"{_units.Reach(Mm(more))} more than this one reaches" : "this one reaches that far");
    }

    private void Links(Page page)
    {
        if (_a.Links.Count == 0)
        {
            return;
        }

        var table = new Columns("lrrrrl").Row("what gives", "likely", "hard", "limit", "safety");
        for (int i = 0; i < _a.Links.Count; i++)
        {
            LinkLimit limit = _a.Links[i].Limit;
            double safety = limit.LimitNmm / _a.Judgement.DemandHighNmm;
            string mark = i == _a.Judgement.Weakest && safety < 1 ? "◀ gives first" : limit.Source;
            table.Row(
                limit.Part, Number(_a.Judgement.DemandLikelyNmm), Number(_a.Judgement.DemandHighNmm), _units.LimitNumber(Nm(limit.LimitNmm)),
                UnitStyle.Fixed(safety, 1), limit.Confirmed ? mark : $"{mark}*");
        }

        page.Table(table);
    }

    private void Around(Page page)
    {
        if (_a.Sleeve is { } sleeve)
        {
            page.Space();
            page.Figure("Sleeve stays on", $"to {Below(sleeve.Checked.HeldRad)}", $"held, {Below(sleeve.Checked.ReleaseRad)} at "
                + $"break-loose; best overlap {_units.Length(sleeve.BestOverlap)}");
            page.Figure("It bears", $"{_units.Force(sleeve.TipReaction)} at the tip", $"{_units.Force(sleeve.MouthReaction)} at the mouth"
                + (sleeve.WillMark ? ": it will be marked" : ""));
        }

        if (_a.Hold is { } hold)
        {
            page.Figure("Wheel held to", _units.Torque(Nm(hold.Capacity.TotalNmm)), HoldWords(hold));
        }

        if (_a.Release is { } release)
        {
            page.Figure("When it lets go", $"{UnitStyle.Figures(release.Energy.Joules)} J",
                $"as a 1 kg hammer falls {_units.Reach(release.HammerDrop)}; hands at {UnitStyle.Fixed(release.HandSpeed.MetersPerSecond, 1)} m/s");
        }
    }

    private string HoldWords(HoldAssessment hold)
    {
        string parts = string.Join(", ", hold.Capacity.Parts.Select(
            part => $"{LooseningAnswers.Word(part.Restraint)} {_units.TorqueNumber(Nm(part.CapacityNmm))}"));
        string roll = hold.Roll is { } way ? $"; else it rolls {(way == Roll.Forward ? "forward" : "backward")}" : "";
        return $"{(parts.Length > 0 ? parts : "nothing")}{roll}";
    }

    private void Verdict(Page page)
    {
        IReadOnlyList<string> reasons = Reasons.Of(_a, _units);
        page.Verdict(_a.Verdict, reasons.Count > 0 ? string.Join(' ', reasons) : "Nothing known speaks against it.");
        int count = 0;
        foreach (string advice in AdviceWords.Of(_a, _units))
        {
            count++;
            page.Item(count, advice);
        }

        if (_a.Lever is not null)
        {
            var (undone, stuck, gives) = Shares.Percent(_a.Judgement.Undone, _a.Judgement.Stuck, _a.Judgement.Gives);
            page.Note("Chances", $"undone {undone} % · stuck {stuck} % · something gives first {gives} %");
        }
    }

    private string Drawn(double share) =>
        $"{UnitStyle.Fixed(100 * share, 2)} % ± {UnitStyle.Fixed(100 * _drawn!.Error(share), 2)}";

    private static string Below(double rad) => rad < 0
        ? $"{UnitStyle.Fixed(-double.RadiansToDegrees(rad), 0)}° above level"
        : $"{UnitStyle.Fixed(double.RadiansToDegrees(rad), 0)}° below level";

    private string Number(double torqueNmm) => _units.TorqueNumber(Nm(torqueNmm));

    private static Torque Nm(double torqueNmm) => Torque.FromNewtonMillimeters(torqueNmm);

    private static Length Mm(double lengthMm) => Length.FromMillimeters(lengthMm);
}
