using System.Text.Json;
using Leverage.Wording;
using Leverage.Workshop.Jobs;
using Leverage.Workshop.Sheets;

namespace Leverage.Page.Opening;

/// <summary>A job in its order, and its sheet as a page of its own to save.</summary>
internal sealed record JobReply(JsonElement Answer, string Sheet)
{
    /// <summary>The job of files that came together.</summary>
    internal static JobReply Of((string Name, string Text)[] files, UnitStyle units)
    {
        var (name, text) = OpenedFile.JobAmong(files) ?? files[0];
        JobPlan plan = JobPlanner.Plan(JobReader.Parse(name, text, OpenedFile.Others(files, name)));
        using var answer = JsonDocument.Parse(JobAnswers.Of(plan, units).ToJson());
        return new JobReply(answer.RootElement.Clone(), HtmlSheet.Write(JobSheet.Of(plan, units, [])));
    }
}
