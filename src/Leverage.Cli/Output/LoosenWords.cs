using System.Globalization;
using Leverage.Wording;
using Leverage.Assessments;
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
        Figures(page, LooseningFigures.Takes(_a, _units));
        page.Space();
        Links(page);
        Around(page);
        page.Space();
        Verdict(page);
        if (_drawn is { } drawn)
        {
            page.Note("By drawing", $"undone {Drawn(drawn.Shares.ComesLoose)} · stuck {Drawn(drawn.Shares.StaysTight)} · gives {Drawn(drawn.Shares.Gives)} "
                + string.Create(CultureInfo.InvariantCulture, $"({drawn.Samples} draws, seed {drawn.Seed})"));
        }

        page.Space();
        page.Note(UnconfirmedWords.Mark, UnconfirmedWords.Meaning);
        page.Note("Assumed", AssumedWords.Brief(_a.Setup.Assumed, _units));
        page.Note("Before you pull", Cautions.Of(_a));
    }

    private static void Figures(Page page, IReadOnlyList<FigureLine> lines)
    {
        foreach (FigureLine line in lines)
        {
            page.Figure(line.Label, line.Value, line.Note);
        }
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
            string mark = i == _a.Judgement.Weakest && safety < 1 ? "◀ gives first" : PartWords.Source(limit);
            table.Row(
                PartWords.Name(limit, _units), Number(_a.Judgement.DemandLikelyNmm), Number(_a.Judgement.DemandHighNmm), _units.LimitNumber(Nm(limit.LimitNmm)),
                UnitStyle.Fixed(safety, 1), limit.Confirmed ? mark : $"{mark}{UnconfirmedWords.Mark}");
        }

        page.Table(table);
    }

    private void Around(Page page)
    {
        if (_a.Tube is not null)
        {
            page.Space();
            Figures(page, LooseningFigures.Tube(_a, _units));
        }

        Figures(page, LooseningFigures.Around(_a, _units));
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
            var (undone, stuck, gives) = Shares.Percent(_a.Judgement.ComesLoose, _a.Judgement.StaysTight, _a.Judgement.Gives);
            page.Note("Chances", $"undone {undone} % · stuck {stuck} % · something gives first {gives} %");
        }
    }

    private string Drawn(double share) =>
        $"{UnitStyle.Fixed(100 * share, 2)} % ± {UnitStyle.Fixed(100 * _drawn!.Error(share), 2)}";

    private string Number(double torqueNmm) => _units.TorqueNumber(Nm(torqueNmm));

    private static Torque Nm(double torqueNmm) => Torque.FromNewtonMillimeters(torqueNmm);
}
