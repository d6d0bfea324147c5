using Leverage.Reading;
using Leverage.Requests;
using Leverage.Workshop.Jobs;

namespace Leverage.Page.Opening;

/// <summary>What picking a fastener of a job writes into the fields: the nut, and what holds its wheel as the job starts.</summary>
internal static class OpenedJob
{
    /// <summary>The pieces of a job and of its chest.</summary>
    /// <param name="name">The job's file.</param>
    /// <param name="text">Its text.</param>
    /// <param name="beside">What was opened with it.</param>
    /// <exception cref="InputException">Something in it cannot be; the error says where.</exception>
    internal static OpenedPieces Read(string name, string text, IReadOnlyDictionary<string, string> beside)
    {
        Job job = JobReader.Parse(name, text, beside);
        var states = new JobStates(job);
        return new OpenedPieces(
            name, "job", [.. job.Fasteners.Select(fastener => Nut(fastener, job, states)), .. ChestPieceFields.Of(job.Chest)]);
    }

    private static OpenedPiece Nut(JobFastener f, Job job, JobStates states) => ChestPieceFields.Piece(
        "nut",
        f.Place is { } place ? $"{f.Name}, {place}" : f.Name,
        [
            .. LooseningFields.Nut.Concat(LooseningFields.Hold).Where(field => field != LooseningFields.Tool).Select(
                field => (field.Name, field.Text(Request(f, f.Wheel is { } wheel ? states.Of(wheel, job.AtStart) : null)) ?? "")),
            .. f.Stances.Count > 0 ? [("stance", f.Stances[0])] : Array.Empty<(string, string)>(),
        ]);

    private static LooseningRequest Request(JobFastener f, WheelHold? hold) => (hold?.Request ?? new LooseningRequest()) with
    {
        BookTorque = f.BookTorque,
        Then = f.Then,
        Grip = f.Grip,
        Clamped = f.Clamped,
        Thread = f.Thread,
        Grade = f.Grade,
        Condition = f.Condition,
        AcrossFlats = f.AcrossFlats,
        Prevailing = f.Prevailing,
        LeftHand = f.LeftHand,
        Soaked = f.Soaked,
    };
}
