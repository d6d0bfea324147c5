using System.Text.Json;
using Leverage.Page.Asking;
using Leverage.Workshop.Chest;
using Leverage.Workshop.Picking;
using UnitsNet;

namespace Leverage.Page.Answering;

/// <summary>The best set-ups of a chest: the command line's answer, who pulls, and the moves as the page lays them out.</summary>
internal sealed record PickReply(JsonElement Answer, string Person, IReadOnlyList<MoveLine> Moves);

/// <summary>Picks out of a chest.</summary>
internal static class Picking
{
    /// <summary>The picking; the nut and what holds it are the query's, the tools and people the chest's.</summary>
    internal static PickReply Of(string chest, Query asked)
    {
        var tools = ToolChest.Parse("chest.toml", chest);
        var pick = Picker.Pick(new PickRequest
        {
            Nut = asked.Loosening() with { Bar = null, BarDiameter = null, Drive = null, Tube = null, Overlap = null },
            Chest = tools,
            Stances = asked.Text("stance") is { } stance ? [stance] : [],
            Person = tools.People.Count > 0 && asked.Text("body") is null ? tools.People[0] : null,
            Recess = Length.Zero,
        });
        using var answer = JsonDocument.Parse(PickAnswers.Of(pick, asked.Units).ToJson());
        return new PickReply(answer.RootElement.Clone(), pick.Request.Person?.Name ?? "", MoveLine.Of(pick.Moves, asked.Units));
    }
}
