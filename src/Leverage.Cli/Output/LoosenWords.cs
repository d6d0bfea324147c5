using System.Globalization;
using Leverage.Assessments;
using Leverage.LoadPath;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Cli.Output;

/// <summary>The answer of <c>leverage loosen</c> in words: on one screen, or with every part, source and assumption.</summary>
internal sealed class LoosenWords
{
    /// <summary>What is shown, from the most: weakest parts, moves without a figure, empty lines in between.</summary>
    private static readonly (int Parts, int Figureless, bool Airy)[] Fits =
        [(3, 3, true), (2, 3, true), (2, 3, false), (1, 3, false), (1, 2, false), (1, 1, false), (1, 0, false), (0, 0, false)];

    private readonly LooseningAssessment _a;
    private readonly CrossCheck? _drawn;
    private readonly UnitStyle _units;
    private readonly bool _more;

    /// <summary>Words for an assessment.</summary>
    internal LoosenWords(LooseningAssessment assessment, CrossCheck? drawn, UnitStyle units, bool more) =>
        (_a, _drawn, _units, _more) = (assessment, drawn, units, more);

    /// <summary>Lays the answer out: whole with more, else as much as fits on one screen.</summary>
    internal void Write(TextPage page)
    {
        if (_more)
        {
            Write(page, (int.MaxValue, int.MaxValue, true));
            return;
        }

        Write(page, Fits.FirstOrDefault(shown => !TextPage.Overflows(trial => Write(trial, shown)), Fits[^1]));
    }

    private void Write(TextPage page, (int Parts, int Figureless, bool Airy) shown)
    {
        page.Headline(_a.Verdict, LooseningTitle.Of(_a.Setup, _units));
        Answers(page);
        int without = 0;
        MoveTable.Write(
            page,
            [.. _a.Moves.Where(step => step is { ComesLooseBy: not null } or not { Move: { Joint: null, Effect: not MoveEffect.Cut } } || ++without <= shown.Figureless)],
            _units);
        foreach (string watch in WatchWords.Of(_a, _units).Take(_more ? int.MaxValue : 1))
        {
            page.Note("Watch", watch);
        }

        if (shown.Airy)
        {
            page.Space();
        }

        Figures(page, LooseningFigures.Takes(_a, _units));
        if (_more)
        {
            Figures(page, LooseningFigures.Tube(_a, _units));
            Figures(page, LooseningFigures.Around(_a, _units));
        }

        if (shown.Airy)
        {
            page.Space();
        }

        Parts(page, shown.Parts);
        Close(page);
    }

    private static void Figures(TextPage page, IReadOnlyList<FigureLine> lines)
    {
        foreach (FigureLine line in lines)
        {
            page.Figure(line.Label, line.Value, line.Note);
        }
    }

    /// <summary>Will it come, and is it safe.</summary>
    private void Answers(TextPage page)
    {
        Ruling ruling = _a.Judgement.Ruling;
        string chances = _a.Lever is null ? Reasons.NoBar : ChanceWords.Of(_a);
        string shortBy = _more ? string.Concat(Reasons.Short(_a, _units).Select(reason => $". {reason}")) : "";
        page.Note("Will it come?", $"{VerdictWords.Capitals(ruling.Comes)}: {chances}{shortBy}");
        string safe = VerdictWords.Capitals(ruling.Safe);
        string why = _more ? Reasons.AllWhy(_a, _units) : Reasons.Why(_a, _units);
        page.Note("Is it safe?", $"{safe}: {why}");
        if (LooseningAnswers.Counted(_a) is { } alike)
        {
            page.Note("All alike", $"of 100 jobs all come loose in {Range(alike.AllComeLow, alike.AllComeHigh)}, some break in {Range(alike.OneBreaksLow, alike.OneBreaksHigh)}");
        }

        if (_drawn is { } drawn)
        {
            page.Note("By drawing", string.Create(CultureInfo.InvariantCulture,
                $"comes loose {Drawn(drawn.Shares.ComesLoose)}, stays tight {Drawn(drawn.Shares.StaysTight)}, something breaks {Drawn(drawn.Breaks)} in 100 ({drawn.Samples} draws from {drawn.Seed})"));
        }
    }

    private void Parts(TextPage page, int most)
    {
        JudgedLink[] links = [.. _a.Links.OrderBy(link => link.Limit.LimitNmm).Take(most)];
        if (links.Length > 0)
        {
            string[] head = [$"part (weakest first), {_units.TorqueUnit}", "gives at", "load on it", "margin"];
            var table = new Columns(_more ? "lrrrl" : "lrrr").Row(_more ? [.. head, ""] : head);
            foreach (LinkLimit limit in links.Select(link => link.Limit))
            {
                string sets = limit.SetsNmm is { } set ? $"stays bent from {Number(set)}; " : "";
                string[] cells =
                [
                    PartWords.Name(limit, _units), _units.LimitNumber(Nm(limit.LimitNmm)) + (limit.Confirmed ? "" : UnconfirmedWords.Mark),
                    Number(_a.Judgement.StrongPullNmm), UnitStyle.Fixed(limit.LimitNmm / _a.Judgement.StrongPullNmm, 1),
                ];
                table.Row(_more ? [.. cells, sets + PartWords.Source(limit)] : cells);
            }

            page.Table(table);
        }
    }

    private void Close(TextPage page)
    {
        IReadOnlyList<string> missing = NotJudgedWords.Of(_a);
        if (missing.Count > 0)
        {
            page.Note("Not judged", string.Join(", ", missing));
        }

        if (_more)
        {
            page.Note("Assumed", string.Join("; ", AssumedWords.Of(_a.Setup.Assumed, _units)));
        }

        page.Line(_more ? $"{UnconfirmedWords.Mark} {UnconfirmedWords.Meaning}" : UnconfirmedWords.Listed);
        page.Note("Before you pull", Cautions.Of(_a));
    }

    private static string Range(double low, double high) => (UnitStyle.Fixed(100 * low, 0), UnitStyle.Fixed(100 * high, 0)) is var (from, to) && from == to
        ? from
        : $"{from} to {to}";

    private string Drawn(double share) =>
        $"{UnitStyle.Fixed(100 * share, 2)} ± {UnitStyle.Fixed(100 * _drawn!.Error(share), 2)}";

    private string Number(double torqueNmm) => _units.TorqueNumber(Nm(torqueNmm));

    private static Torque Nm(double torqueNmm) => Torque.FromNewtonMillimeters(torqueNmm);
}
