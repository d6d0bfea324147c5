using System.Text.Json;
using Leverage.Reading;
using Leverage.Wording;
using Leverage.Workshop.Jobs;
using Leverage.Workshop.Sheets;
using UnitsNet;

namespace Leverage.Page.Opening;

/// <summary>Whether a task is done.</summary>
internal sealed record TaskState(string Name, bool Done);

/// <summary>What happened to a fastener so far, and the torque a likely pull with its set-up makes.</summary>
internal sealed record NutState(
    string Name, int Count, bool Done, string Held, IReadOnlyList<string> Came, bool Rounded, bool Sheared, string Pull);

/// <summary>A job in its order, its sheet as a page of its own to save, and what is done of it.</summary>
internal sealed record JobReply(JsonElement Answer, string Sheet, IReadOnlyList<TaskState> Tasks, IReadOnlyList<NutState> Nuts)
{
    /// <summary>The job of files that came together.</summary>
    internal static JobReply Of((string Name, string Text)[] files, UnitStyle units)
    {
        JobPlan plan = JobPlanner.Plan(Read(files));
        using var answer = JsonDocument.Parse(JobAnswers.Of(plan, units).ToJson());
        var pulls = plan.Loosening.ToDictionary(each => each.Fastener.Name, Pull, StringComparer.Ordinal);
        return new JobReply(
            answer.RootElement.Clone(),
            HtmlSheet.Write(JobSheet.Of(plan, units, [])),
            [.. plan.Job.Tasks.Select(task => new TaskState(task.Name, task.Done))],
            [.. plan.Job.Fasteners.Select(f => new NutState(
                f.Name, f.Count, f.Done, QuantityWriter.Text(f.Held), [.. f.CameLoose.Select(came => QuantityWriter.Text(came))], f.Rounded, f.Sheared, pulls.GetValueOrDefault(f.Name, "")))]);
    }

    /// <summary>The files with something that happened written into the one that names it.</summary>
    /// <exception cref="InputException">None of them names it, or what is written cannot be read.</exception>
    internal static OpenedText[] Marked((string Name, string Text)[] files, JobMark mark)
    {
        for (int i = 0; i < files.Length; i++)
        {
            if (JobMarks.Written(files[i].Name, files[i].Text, mark) is { } text)
            {
                files[i].Text = text;
                _ = Read(files);
                return [.. files.Select(file => new OpenedText(file.Name, file.Text))];
            }
        }

        throw new InputException($"'{mark.Name}' stands in none of these files on lines of its own. Write {mark.Key} into the file by hand.");
    }

    private static Job Read((string Name, string Text)[] files)
    {
        var (name, text) = OpenedFile.JobAmong(files) ?? files[0];
        return JobReader.Parse(name, text, OpenedFile.Others(files, name));
    }

    private static string Pull(PlannedLoosening planned) => planned.Choice is null || planned.Assessment.Lever is not { } lever
        ? ""
        : QuantityWriter.Text(Torque.FromNewtonMeters(Math.Round(planned.Assessment.Hand.Quantile(0.5) * lever.ReachMm / 1000)));
}
