using System.CommandLine;
using Leverage.Wording;
using Leverage.Assessments;
using Leverage.Friction;
using Leverage.Reading;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Cli.Input;

/// <summary>Friction and bearing face of a joint, for the commands that tighten one.</summary>
internal sealed class JointOptions
{
    /// <summary>A ring narrower than this is none: 2.2cm and 22mm differ by rounding alone.</summary>
    private const double LeastRingMm = 1e-3;

    private readonly Asked<double?> _friction = QuantityOption.Number(
        "--friction", "coefficient, thread and face (0.14; 0.10 to 0.196)", 0.02, 1);

    private readonly Asked<string?> _lubrication = NameOption.Row(
        "--lubrication", "its range by lubricant: table friction", "friction", "a lubrication");

    private readonly Asked<Length?> _washerFace = QuantityOption.Length("--dw", "washer face's outer diameter (ISO 4014)");
    private readonly Asked<Length?> _hole = QuantityOption.Length("--dh", "clearance hole (ISO 273 medium)");

    /// <summary>The options, in the order the help shows them.</summary>
    internal IEnumerable<Option> Symbols => [_friction, _lubrication, _washerFace, _hole];

    /// <summary>Friction as given: a figure, a lubricant's range, or the figure within that range.</summary>
    internal FrictionRange? Friction(Given given)
    {
        FrictionRange? range = given.Get(_lubrication) is { } name ? FrictionRange.Lubricated(name) : null;
        return (given.Get(_friction), range) switch
        {
            (null, _) => range,
            ({ } likely, null) => FrictionRange.About(likely),
            ({ } likely, { } lubricated) => new FrictionRange(
                Math.Min(likely, lubricated.Low), likely, Math.Max(likely, lubricated.High)),
        };
    }

    /// <summary>The bearing face as given; what is left out of it comes from the tables.</summary>
    internal FaceRing? Face(Given given, ScrewThread thread)
    {
        Length? face = given.Get(_washerFace);
        Length? hole = given.Get(_hole);
        if (face is null && hole is null)
        {
            return null;
        }

        face ??= Known(_washerFace, HexagonCatalog.WasherFaceMm(thread), thread);
        hole ??= Known(_hole, HexagonCatalog.ClearanceHoleMm(thread), thread);
        return face.Value.Millimeters - hole.Value.Millimeters > LeastRingMm
            ? new FaceRing(face.Value, hole.Value)
            : throw new InputException(_washerFace.Name, $"the washer face, {UnitStyle.Trim(face.Value.Millimeters, 2)} mm, "
                + $"must be larger than the hole, {UnitStyle.Trim(hole.Value.Millimeters, 2)} mm.");
    }

    private static Length Known(Option option, double? millimetres, ScrewThread thread) =>
        millimetres is { } known
            ? Length.FromMillimeters(known)
            : throw new InputException(option.Name, $"is needed too: the tables have none for {thread.Printed}.");
}
