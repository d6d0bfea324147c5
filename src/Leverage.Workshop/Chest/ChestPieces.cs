using Leverage.Holding;
using Leverage.Levers;
using Leverage.Reading;
using Leverage.Requests;
using UnitsNet;

namespace Leverage.Workshop.Chest;

/// <summary>A piece of a chest, called by its name.</summary>
public interface IPiece
{
    /// <summary>What its owner calls it.</summary>
    string Name { get; }
}

/// <summary>A bar with a drive square.</summary>
/// <param name="Name">What its owner calls it.</param>
/// <param name="Drive">Its square, in inches as the trade says it.</param>
/// <param name="Length">Square to end.</param>
/// <param name="Diameter">Diameter of its handle; null to take the usual one of the drive.</param>
/// <param name="StraightHandle">How far a tube can go on; null to take the usual share.</param>
/// <param name="Taper">Taper of the handle towards its end.</param>
/// <param name="Yield">Yield of its steel; null to take the usual one.</param>
/// <param name="Pin">The pin of a flex head, if it has one.</param>
public sealed record ChestBar(
    string Name, string Drive, Length Length, Length? Diameter, Length? StraightHandle, Angle? Taper, Pressure? Yield, FlexPin? Pin)
    : IPiece;

/// <summary>What goes on the nut or into its hexagon.</summary>
/// <param name="Name">What its owner calls it.</param>
/// <param name="Kind">Socket, spanner or key.</param>
/// <param name="Sizes">Widths across flats it fits.</param>
/// <param name="Drive">Its square; null for a spanner or a key with a handle of its own.</param>
/// <param name="Length">Its length as a lever; null with a square.</param>
public sealed record NutTool(string Name, ToolKind Kind, IReadOnlyList<Length> Sizes, string? Drive, Length? Length)
    : IPiece
{
    /// <summary>Points of a socket or ring, 6 or 12; null where not said.</summary>
    public int? Points { get; init; }
}

/// <summary>An adapter from one square to another, or an extension, whose squares are the same.</summary>
/// <param name="Name">What its owner calls it.</param>
/// <param name="From">Square of the bar that goes into it.</param>
/// <param name="To">Its own square, that goes into the socket.</param>
/// <param name="Length">How much farther out it puts the bar.</param>
public sealed record ChestAdapter(string Name, string From, string To, Length Length) : IPiece
{
    /// <summary>Whether it only lengthens.</summary>
    public bool IsExtension => From == To;
}

/// <summary>A tube that goes over a bar, or a jack's handle.</summary>
/// <param name="Name">What its owner calls it.</param>
/// <param name="Tube">Its sizes as the command line takes them.</param>
/// <param name="Yield">Yield of its steel; null where not known.</param>
public sealed record ChestTube(string Name, TubeText Tube, Pressure? Yield) : IPiece;

/// <summary>A torque wrench: for refitting, never for breaking a nut loose.</summary>
/// <param name="Name">What its owner calls it.</param>
/// <param name="Drive">Its square.</param>
/// <param name="Length">Square to middle of its grip.</param>
/// <param name="From">Lowest torque it can be set to.</param>
/// <param name="To">Highest torque it can be set to.</param>
/// <param name="Accuracy">Its scatter each way, as a share of the setting.</param>
public sealed record TorqueWrench(string Name, string Drive, Length Length, Torque From, Torque To, double Accuracy)
    : IPiece;

/// <summary>Somebody who pulls.</summary>
/// <param name="Name">What the chest calls them.</param>
/// <param name="Column">Which column of the stance table they read.</param>
/// <param name="Body">Body mass; null for the reference mass.</param>
/// <param name="Forces">Forces they measured themselves, by stance.</param>
public sealed record ChestPerson(string Name, Person Column, Mass? Body, IReadOnlyDictionary<string, Force> Forces)
    : IPiece;

/// <summary>Something that can hold the vehicle.</summary>
/// <param name="Name">What its owner calls it.</param>
/// <param name="Kind">How it holds.</param>
/// <param name="Height">Height of a chock in use; null for anything else.</param>
/// <param name="Diameter">Diameter of a bar across the studs; null for anything else.</param>
public sealed record ChestHold(string Name, Restraint Kind, Length? Height, Length? Diameter) : IPiece;
