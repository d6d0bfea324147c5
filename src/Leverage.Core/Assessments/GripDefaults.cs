using Leverage.Friction;
using Leverage.Requests;
using Leverage.Tables;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>Fills the blanks of how a tube sits on its bar and how far it swings.</summary>
internal static class GripDefaults
{
    /// <summary>End of the swing, past square, when none is said, degrees (judgement).</summary>
    private const double PastSquareDeg = 30;

    /// <summary>Low and high friction about a figure the person gives (judgement).</summary>
    private const double GivenLow = 0.75;
    private const double GivenHigh = 1.25;

    internal static Angle Swing(LooseningRequest request, bool tubed, List<Assumption> assumed)
    {
        Angle end = request.PastSquare ?? Angle.FromDegrees(PastSquareDeg);
        if (tubed && request.PastSquare is null)
        {
            assumed.Add(new Assumption("end of the swing, past square", end));
        }

        return end;
    }

    internal static string Words(LooseningRequest request) =>
        request.SurfaceFriction is null ? request.Surface ?? "dry" : "as given";

    internal static FrictionRange Friction(LooseningRequest request, bool tubed, List<Assumption> assumed)
    {
        if (request.SurfaceFriction is { } given)
        {
            return new FrictionRange(GivenLow * given, given, GivenHigh * given);
        }

        if (tubed && request.Surface is null)
        {
            assumed.Add(new Assumption(
                "surface dry", null, "friction 0.20 in the check", RowLookup.Named("handle-friction", "dry", "a state of the handle").Status));
        }

        return FrictionRange.OnHandle(request.Surface ?? "dry");
    }
}
