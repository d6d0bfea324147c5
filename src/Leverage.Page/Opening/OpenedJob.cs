using Leverage.Wording;
using Leverage.Holding;
using Leverage.Reading;
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
            ("book-torque", QuantityWriter.Text(f.BookTorque)),
            ("thread", f.Thread?.Designation ?? ""),
            ("grade", f.Grade ?? ""),
            ("condition", f.Condition ?? ""),
            ("hex", QuantityWriter.Text(f.AcrossFlats)),
            ("prevailing", QuantityWriter.Text(f.Prevailing)),
            ("left-hand", f.LeftHand ? "yes" : ""),
            ("soaked", f.Soaked ? "yes" : ""),
            ("heat", ""),
            ("by", ""),
            .. f.Stances.Count > 0 ? [("stance", f.Stances[0])] : Array.Empty<(string, string)>(),
            .. Hold(f.Wheel is { } wheel ? states.Of(wheel, job.AtStart) : null),
        ]);

    private static (string, string)[] Hold(WheelHold? hold) => hold?.Request is { } request
        ?
        [
            ("held-by", request.By.Count > 0 ? string.Join(',', request.By.Select(LooseningAnswers.Word)) : "none"),
            ("mass", QuantityWriter.Text(request.VehicleMass)),
            ("wheel-load", QuantityWriter.Text(request.WheelLoad)),
            ("tyre-radius", QuantityWriter.Text(request.TyreRadius)),
            ("ground", request.Ground ?? ""),
            ("chock", QuantityWriter.Text(request.ChockHeight)),
            ("hold-bar", QuantityWriter.Text(request.StudBarDiameter)),
            ("half-shafts", ""),
            ("side", request.Side switch { Side.Left => "left", Side.Right => "right", _ => "" }),
            ("on-stands", request.OnStands ? "yes" : ""),
        ]
        :
        [
            ("held-by", ""), ("mass", ""), ("wheel-load", ""), ("tyre-radius", ""), ("ground", ""), ("chock", ""), ("hold-bar", ""),
            ("half-shafts", ""), ("side", ""), ("on-stands", ""),
        ];
}
