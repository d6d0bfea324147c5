using Leverage.Friction;
using Leverage.Requests;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>Fills the blanks of how a tube sits on its bar and how far it swings.</summary>
internal static class GripDefaults
{
    internal static Angle Swing(LooseningRequest request, bool tubed, List<Assumption> assumed)
    {
        Angle end = request.PastSquare ?? Angle.FromDegrees(UsualValues.PastSquareDeg);
        if (tubed && request.PastSquare is null)
        {
            assumed.Add(new Assumption(AssumptionKind.SwingEnd, end));
        }

        return end;
    }

    internal static HandleSurface Surface(LooseningRequest request, bool tubed, List<Assumption> assumed)
    {
        if (request.SurfaceFriction is { } given)
        {
            return HandleSurface.Given(given);
        }

        HandleSurface surface = HandleSurface.Named(request.Surface ?? HandleSurface.Usual);
        if (tubed && request.Surface is null)
        {
            assumed.Add(new Assumption(AssumptionKind.Surface, null, surface.Status) { Name = surface.Key, Friction = surface.Friction });
        }

        return surface;
    }
}
