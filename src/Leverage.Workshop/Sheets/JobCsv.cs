using System.Globalization;
using Leverage.Wording;
using Leverage.Workshop.Jobs;
using nietras.SeparatedValues;

namespace Leverage.Workshop.Sheets;

/// <summary>A planned job as a list for a spreadsheet: one line a fastener, in the order of work; with a mark of UTF-8 in front, and units in the columns' names.</summary>
public static class JobCsv
{
    /// <summary>Writes the list.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="text">Where to.</param>
    /// <param name="units">Units.</param>
    public static void Write(JobPlan plan, TextWriter text, UnitStyle units)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(units);
        text.Write('\uFEFF');
        Dictionary<string, PlannedLoosening> loosening = plan.Loosening.ToDictionary(planned => planned.Fastener.Name, StringComparer.OrdinalIgnoreCase);
        Dictionary<string, int> back = plan.RefitSteps.SelectMany(step => step.Fits.Where(fit => fit.IsFitted).Select(fit => (fit.Tightening.Fastener.Name, step.Number)))
            .ToDictionary(each => each.Name, each => each.Number, StringComparer.OrdinalIgnoreCase);
        using var writer = Sep.New(',').Writer(o => o with { Escape = true, CultureInfo = CultureInfo.InvariantCulture }).To(text, leaveOpen: true);
        foreach (PlannedTightening planned in plan.Refit.OrderBy(planned => loosening.GetValueOrDefault(planned.Fastener.Name)?.Task?.Number ?? int.MaxValue))
        {
            using SepWriter.Row row = writer.NewRow();
            Fastener(row, planned.Fastener, units);
            Loosening(row, loosening.GetValueOrDefault(planned.Fastener.Name), units);
            Refit(row, planned, back[planned.Fastener.Name], units);
        }
    }

    private static void Fastener(SepWriter.Row row, JobFastener fastener, UnitStyle units)
    {
        row["fastener"].Set(FreeText(fastener.Name));
        row["place"].Set(FreeText(fastener.Place ?? ""));
        row["thread"].Set(fastener.Thread?.Designation ?? "");
        row["hex"].Set(SizePhrases.Hex(fastener, units));
        row["count"].Set(Whole(fastener.Count));
        row["left_hand"].Set(fastener.LeftHand ? "yes" : "");
        row["note"].Set(FreeText(fastener.Note ?? ""));
    }

    /// <summary>How it comes loose; of one that is loose already only that.</summary>
    private static void Loosening(SepWriter.Row row, PlannedLoosening? planned, UnitStyle units)
    {
        bool chosen = planned?.Choice is not null;
        row["step"].Set(planned?.Task is { } task ? Whole(task.Number) : "");
        row["task"].Set(FreeText(planned?.Task?.Task.Name ?? ""));
        row[$"takes_likely [{units.TorqueUnit}]"].Set(planned is null ? "" : Torque(planned.Assessment.Nut.LikelyNmm, units));
        row[$"takes_hard [{units.TorqueUnit}]"].Set(planned is null ? "" : Torque(planned.Assessment.Nut.HighNmm, units));
        row["set_up"].Set(planned?.Choice is { } choice ? FreeText(string.Join(" + ", JobAnswers.Pieces(choice.SetUp.Set))) : "");
        row["person"].Set(FreeText(planned?.Choice?.Person ?? ""));
        row["stance"].Set(chosen ? planned!.Assessment.Setup.Hands.Stance.Key : "");
        row["held_by"].Set(planned is null ? "" : FreeText(string.Join("; ", FastenerPhrases.Held(planned, units).Skip(1))));
        row["verdict"].Set(planned is null ? "loose" : VerdictWords.Word(planned.Verdict));
        row["comes_loose"].Set(chosen ? UnitStyle.Fixed(planned!.Assessment.Judgement.ComesLoose, 3) : "");
        row["reason"].Set(planned is null ? "" : FreeText(FastenerPhrases.Note(planned, units)));
        row[$"held [{units.TorqueUnit}]"].Set(planned?.History.Held is { } held ? units.TorqueNumber(held) : "");
        row[$"came_loose [{units.TorqueUnit}]"].Set("");
        row["rounded"].Set(planned?.Fastener.Rounded == true ? "yes" : "");
        row["sheared"].Set("");
    }

    private static void Refit(SepWriter.Row row, PlannedTightening planned, int step, UnitStyle units)
    {
        JobFastener fastener = planned.Fastener;
        row["refit_step"].Set(Whole(step));
        row[$"refit [{units.TorqueUnit}]"].Set(units.TorqueNumber(planned.Torque));
        row["then [deg]"].Set(fastener.Then is { } turn ? UnitStyle.Fixed(turn.Degrees, 0) : "");
        row["refit_from"].Set(planned.Basis == TorqueBasis.Book ? "book" : "thread and grade");
        row[$"stages [{units.TorqueUnit}]"].Set(planned.Stages.Count > 1 ? string.Join(' ', planned.Stages.Select(units.TorqueNumber)) : "");
        row["order"].Set(string.Join(' ', planned.Sequence.Select(Whole)));
        row["lubricant"].Set(fastener.Lubricant ?? "");
        row["torque_wrench"].Set(FreeText(planned.Wrench?.Wrench.Name ?? ""));
        row[$"setting [{units.TorqueUnit}]"].Set(planned.Wrench is { } choice ? units.TorqueNumber(choice.Setting) : "");
        row["new_part"].Set(FreeText(fastener.NewPart ?? ""));
        row["retorque_after"].Set(FreeText(fastener.RetorqueAfter ?? ""));
        row["remember"].Set(FreeText(string.Join("; ", RefitPhrases.Secured(fastener).Prepend(fastener.RefitNote ?? "").Where(words => words.Length > 0))));
    }

    /// <summary>What a person wrote, as text: a spreadsheet would work out what begins like a formula, so an apostrophe goes first.</summary>
    private static string FreeText(string text) => text is ['=' or '+' or '-' or '@', ..] ? $"'{text}" : text;

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Torque(double torqueNmm, UnitStyle units) => units.TorqueNumber(UnitsNet.Torque.FromNewtonMillimeters(torqueNmm));
}
