using System.Globalization;
using Leverage.Wording;
using Leverage.Workshop.Jobs;
using nietras.SeparatedValues;

namespace Leverage.Workshop.Sheets;

/// <summary>A planned job as a list for a spreadsheet: one line a fastener, in the order of the file; numbers metric.</summary>
public static class JobCsv
{
    /// <summary>Writes the list.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="text">Where to.</param>
    public static void Write(JobPlan plan, TextWriter text)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(text);
        Dictionary<string, PlannedTightening> refit = plan.Refit.ToDictionary(planned => planned.Fastener.Name, StringComparer.OrdinalIgnoreCase);
        using var writer = Sep.New(',').Writer(o => o with { Escape = true, CultureInfo = CultureInfo.InvariantCulture }).To(text, leaveOpen: true);
        foreach (PlannedLoosening planned in plan.Loosening.OrderBy(planned => planned.Task?.Number ?? int.MaxValue))
        {
            using SepWriter.Row row = writer.NewRow();
            Loosening(row, planned);
            Refit(row, refit[planned.Fastener.Name]);
        }
    }

    private static void Loosening(SepWriter.Row row, PlannedLoosening planned)
    {
        row["step"].Set(planned.Task is { } task ? Whole(task.Number) : "");
        row["fastener"].Set(Said(planned.Fastener.Name));
        row["place"].Set(Said(planned.Fastener.Place ?? ""));
        row["thread"].Set(planned.Fastener.Thread?.Designation ?? "");
        row["count"].Set(Whole(planned.Fastener.Count));
        row["takes_likely_nm"].Set(Number(planned.Assessment.Nut.LikelyNmm / 1000));
        row["takes_hard_nm"].Set(Number(planned.Assessment.Nut.HighNmm / 1000));
        row["set_up"].Set(planned.Choice is { } choice ? Said(string.Join(" + ", JobAnswers.Pieces(choice.Place.Set))) : "");
        row["person"].Set(Said(planned.Choice?.Person ?? ""));
        row["stance"].Set(planned.Choice is null ? "" : planned.Assessment.Setup.Hands.Stance.Key);
        row["verdict"].Set(VerdictWords.Word(planned.Verdict));
        row["comes_loose"].Set(planned.Choice is null ? "" : UnitStyle.Fixed(planned.Assessment.Judgement.ComesLoose, 3));
    }

    private static void Refit(SepWriter.Row row, PlannedTightening planned)
    {
        row["refit_nm"].Set(Number(planned.Torque.NewtonMeters));
        row["refit_from"].Set(planned.Basis == TorqueBasis.Book ? "book" : "thread and grade");
        row["lubricant"].Set(planned.Fastener.Lubricant ?? "");
        row["torque_wrench"].Set(Said(planned.Wrench?.Wrench.Name ?? ""));
        row["setting_nm"].Set(planned.Wrench is { } choice ? Number(choice.Setting.NewtonMeters) : "");
        row["new_part"].Set(Said(planned.Fastener.NewPart ?? ""));
        row["note"].Set(Said(planned.Fastener.Note ?? ""));
    }

    /// <summary>What a person wrote, as text: a spreadsheet would work out what begins like a formula, so an apostrophe goes first.</summary>
    private static string Said(string text) => text is ['=' or '+' or '-' or '@', ..] ? $"'{text}" : text;

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Number(double value) => UnitStyle.Figures(value);
}
