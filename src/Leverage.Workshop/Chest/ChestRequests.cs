using Leverage.Holding;
using Leverage.Reading;
using Leverage.Requests;

namespace Leverage.Workshop.Chest;

/// <summary>Puts pieces of a chest into a request. What the request says already stays as it is said.</summary>
public static class ChestRequests
{
    /// <summary>Stance taken where none is said.</summary>
    private const string UsualStance = "stand-push";

    /// <summary>The request with a bar.</summary>
    /// <param name="request">The request.</param>
    /// <param name="bar">The bar.</param>
    /// <returns>The request with the bar's drive, length, diameter, yield, straight handle, taper and pin.</returns>
    /// <exception cref="InputException">The request asks for another square.</exception>
    public static LooseningRequest With(this LooseningRequest request, ChestBar bar)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(bar);
        return request.Drive is not null && request.Drive != bar.Drive
            ? throw new InputException("drive", $"the bar '{bar.Name}' has a {bar.Drive} in square, not {request.Drive}. Leave the drive out.")
            : request with
            {
                Drive = bar.Drive,
                Bar = bar.Length,
                BarDiameter = request.BarDiameter ?? bar.Diameter,
                BarYield = request.BarYield ?? bar.Yield,
                StraightHandle = request.StraightHandle ?? bar.StraightHandle,
                Taper = request.Taper ?? bar.Taper,
                BarPin = request.BarPin ?? bar.Pin?.Diameter,
                BarPinPlanes = request.BarPinPlanes ?? bar.Pin?.PlanesApart,
            };
    }

    /// <summary>The request with a tube.</summary>
    /// <param name="request">The request.</param>
    /// <param name="tube">The tube.</param>
    /// <returns>The request with the tube's sizes and yield.</returns>
    public static LooseningRequest With(this LooseningRequest request, ChestTube tube)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(tube);
        return request with { Tube = tube.Tube with { Bore = request.Tube?.Bore ?? tube.Tube.Bore }, TubeYield = request.TubeYield ?? tube.Yield };
    }

    /// <summary>The request with a person.</summary>
    /// <param name="request">The request; its stance says which of the person's measured forces counts.</param>
    /// <param name="person">The person.</param>
    /// <returns>The request with the person's column, mass and force.</returns>
    public static LooseningRequest With(this LooseningRequest request, ChestPerson person)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(person);
        bool measured = person.Forces.TryGetValue(request.Stance ?? UsualStance, out var force);
        return request with
        {
            Person = request.Person ?? person.Column,
            Body = request.Body ?? person.Body,
            Force = request.Force ?? (measured ? force : null),
        };
    }

    /// <summary>The request with the heights and diameters of what holds, as the chest has them.</summary>
    /// <param name="request">The request.</param>
    /// <param name="holds">What is used, best first: the pieces called by name, then all the chest has.</param>
    /// <returns>The request, its blanks filled from the first piece of each kind.</returns>
    public static LooseningRequest With(this LooseningRequest request, IEnumerable<ChestHold> holds)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(holds);
        LooseningRequest filled = request;
        foreach (ChestHold hold in holds)
        {
            filled = filled with
            {
                ChockHeight = filled.ChockHeight ?? (hold.Kind == Restraint.Chock ? hold.Height : null),
                StudBarDiameter = filled.StudBarDiameter ?? (hold.Kind == Restraint.Bar ? hold.Diameter : null),
            };
        }

        return filled;
    }
}
