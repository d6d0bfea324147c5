using Leverage.Assessments;
using Leverage.Reading;
using Leverage.Workshop.Chest;

namespace Leverage.Workshop.Jobs;

/// <summary>The set-up chosen for a fastener.</summary>
/// <param name="Pieces">What of the chest goes together, from the nut outwards.</param>
/// <param name="Person">Who pulls; null for anybody.</param>
public sealed record SetUpChoice(IReadOnlyList<string> Pieces, string? Person);

/// <summary>Chooses the best set-up of the chest for a fastener.</summary>
internal sealed class SetUpChooser
{
    private readonly Job _job;

    internal SetUpChooser(Job job) => _job = job;

    internal (SetUpChoice? Choice, LooseningAssessment Assessment) For(JobFastener fastener, WheelHold? hold)
    {
        LooseningRequest nut = Nut(fastener, hold);
        LooseningAssessment plain = LooseningAssessor.WithoutAdvice(LooseningDefaults.Complete(nut));
        (SetUpChoice, LooseningAssessment)? best = null;
        ChestPerson? person = _job.People.Count > 0 ? _job.People[0] : null;
        foreach (NutTool tool in _job.Chest.NutTools)
        {
            if (plain.Setup.Fastener.AcrossFlats is { } flats && tool.Sizes.Any(size => Math.Abs((size - flats).Millimeters) < 0.2)
                && (fastener.Tool is null || fastener.Tool == tool.Kind))
            {
                foreach (ChestBar bar in _job.Chest.Bars.Where(bar => bar.Drive == tool.Drive))
                {
                    LooseningAssessment a = LooseningAssessor.WithoutAdvice(LooseningDefaults.Complete(nut with
                    {
                        Tool = tool.Kind,
                        Drive = tool.Drive,
                        Bar = bar.Length,
                        BarDiameter = bar.Diameter,
                        Stance = fastener.Stances.Count > 0 ? fastener.Stances[0] : null,
                        Person = person?.Column,
                        Body = person?.Body,
                    }));
                    if (best is null || a.Judgement.Undone - a.Judgement.Gives > best.Value.Item2.Judgement.Undone - best.Value.Item2.Judgement.Gives)
                    {
                        best = (new SetUpChoice([tool.Name, bar.Name], person?.Name), a);
                    }
                }
            }
        }

        return best is var (choice, assessment) ? (choice, assessment) : (null, plain);
    }

    private static LooseningRequest Nut(JobFastener fastener, WheelHold? hold) => new()
    {
        BookTorque = fastener.BookTorque,
        Thread = fastener.Thread,
        Grade = fastener.Grade,
        Condition = fastener.Condition,
        Prevailing = fastener.Prevailing,
        LeftHand = fastener.LeftHand,
        Soaked = fastener.Soaked,
        AcrossFlats = fastener.AcrossFlats,
        Tool = fastener.Tool ?? ToolKind.Socket,
        Hold = hold?.Request,
    };
}
