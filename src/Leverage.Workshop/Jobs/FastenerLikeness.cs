using Leverage.Requests;

namespace Leverage.Workshop.Jobs;

/// <summary>Everything the choice of a set-up depends on: fasteners that agree in it, to the last digit, are alike.</summary>
internal sealed record FastenerLikeness(JobFastener Fastener, string Stances, LooseningRequest? Hold, string By, string Came)
{
    /// <summary>What a fastener's choice depends on; lists become words, which compare by what they say.</summary>
    internal static FastenerLikeness Of(JobFastener fastener, WheelHold? hold, NutHistory history) => new(
        fastener with
        {
            Name = "",
            Place = null,
            Count = 1,
            NewPart = null,
            NewPartCount = 0,
            Lubricant = null,
            HeldBy = null,
            Adapter = null,
            Pattern = TighteningPattern.None,
            Note = null,
            Stances = [],
            Staked = false,
            Adjustable = false,
            RideHeight = false,
            RetorqueAfter = null,
            RefitNote = null,
            Sheared = false,
            CameLoose = [],
            At = default,
        },
        string.Join(',', fastener.Stances),
        hold is null ? null : hold.Request with { HeldBy = null },
        hold is null ? "" : string.Join(',', hold.Request.HeldBy ?? []),
        string.Join(',', history.Came.Select(torque => torque.NewtonMeters)));
}
