using Leverage.Holding;
using Leverage.Preload;
using Leverage.Reading;
using Leverage.Tables;
using UnitsNet;

namespace Leverage.Requests;

/// <summary>An adapter, by its drive squares in inches.</summary>
/// <param name="From">On the bar's side.</param>
/// <param name="To">On the socket's side.</param>
internal readonly record struct DriveStep(string From, string To);

/// <content>Drive squares, adapters, tubes, and what holds the wheel.</content>
internal static partial class Kinds
{
    /// <summary>Drive squares by their millimetres, as sets are labelled (ISO 1174-1).</summary>
    private static readonly Dictionary<string, string> DrivesInMm = new(StringComparer.Ordinal)
    {
        ["6.3"] = "1/4",
        ["10"] = "3/8",
        ["12.5"] = "1/2",
        ["20"] = "3/4",
        ["25"] = "1",
    };

    /// <summary>The restraints and their words.</summary>
    internal static readonly (string Word, Restraint Value)[] RestraintWords =
    [
        ("brake", Restraint.Brake), ("old-brake", Restraint.OldBrake), ("gear", Restraint.Gear),
        ("chock", Restraint.Chock), ("helper", Restraint.Helper), ("bar", Restraint.Bar),
    ];

    /// <summary>What a thread is tapped into: a row of its table, or a plain name that a row stands for.</summary>
    internal static readonly FieldKind<string> Tapped = Row("tapped-materials", "a tapped material", "cast-aluminium") with
    {
        Parse = text => TappedMaterial.Named(text) is { Else: null } row ? row.Name : text.Trim(),
        Check = (name, _) => TappedMaterial.Named(name),
    };

    /// <summary>Where a fastener sits; a part that stands at a place is told by its name.</summary>
    internal static readonly FieldKind<string> Place = Row("places", "a place", "hub") with { Parse = BreakLoose.Place.KeyOf };

    /// <summary>A drive square, in inches or in the millimetres of its label.</summary>
    internal static readonly FieldKind<string> Drive = Row("drive-squares", "a drive square", "1/2") with { Parse = DriveOf };

    /// <summary>A tube: outside, wall and length, or a jack handle.</summary>
    internal static readonly FieldKind<TubeText> Tube = new("TUBE", "33.7x3.2x1000mm", TubeReader.Read, TubeReader.Text, CheckTube);

    /// <summary>Adapters by both their squares, the bar's side first: <c>3/4-1/2</c>; commas between.</summary>
    internal static readonly FieldKind<IReadOnlyList<DriveStep>> Adapters = new(
        "LIST", "3/4-1/2",
        text => [.. text.Split(',', StringSplitOptions.TrimEntries).Select(Step)],
        steps => string.Join(',', steps.Select(step => $"{step.From}-{step.To}")),
        (steps, text) =>
        {
            if (steps.Count is < 1 or > 4 || steps.Zip(steps.Skip(1)).Any(pair => pair.First.To != pair.Second.From))
            {
                throw new InputException($"cannot use '{text}': each adapter goes on the one before it, four at most.");
            }
        })
    {
        IsList = true,
    };

    /// <summary>What holds the wheel: words with commas between.</summary>
    internal static readonly FieldKind<IReadOnlyList<Restraint>> HeldBy = new("LIST", "brake,chock", Restraints, Words)
    {
        Names = () => RestraintWords.Select(word => word.Word).Append("none"),
        IsList = true,
    };

    /// <summary>What is special about a joint, with commas between.</summary>
    internal static readonly FieldKind<IReadOnlyList<SpecialJoint>> Joints = ChoiceList(
        ("castle", SpecialJoint.Castle), ("through-bolt", SpecialJoint.ThroughBolt), ("ball-joint", SpecialJoint.BallJoint));

    private static string DriveOf(string text)
    {
        string plain = text.Trim().TrimEnd('"').TrimEnd();
        plain = plain.EndsWith("in", StringComparison.OrdinalIgnoreCase) ? plain[..^2].TrimEnd() : plain;
        if (plain.EndsWith("mm", StringComparison.OrdinalIgnoreCase))
        {
            plain = DrivesInMm.GetValueOrDefault(plain[..^2].TrimEnd().Replace(',', '.'), text);
        }

        return RowLookup.Named("drive-squares", plain, "a drive square").Key;
    }

    private static DriveStep Step(string text) => text.Split('-', StringSplitOptions.TrimEntries) is [var from, var to]
        ? new DriveStep(DriveOf(from), DriveOf(to))
        : throw new InputException($"cannot read '{text}' as an adapter: the bar's square, a hyphen, the socket's.");

    private static void CheckTube(TubeText tube, string text)
    {
        foreach (Length? length in (ReadOnlySpan<Length?>)[tube.Length, tube.Outside, tube.Wall])
        {
            if (length is { } given)
            {
                AcceptedRange.Length.Check(given.Millimeters, QuantityWriter.Text(given));
            }
        }

        if (tube is { Outside: { } outside, Wall: { } wall } && outside.Millimeters - 2 * wall.Millimeters <= TubeReader.LeastBoreMm)
        {
            throw new InputException($"cannot use '{text}': the wall leaves no bore. The outside must be more than twice the wall.");
        }
    }

    private static Restraint[] Restraints(string text) =>
        text.Trim().Equals("none", StringComparison.OrdinalIgnoreCase)
            ? []
            : [.. text.Split(',', StringSplitOptions.TrimEntries).Select(RestraintOf)];

    private static Restraint RestraintOf(string word)
    {
        int found = Array.FindIndex(RestraintWords, one => one.Word.Equals(word, StringComparison.OrdinalIgnoreCase));
        return found >= 0 ? RestraintWords[found].Value : throw new InputException(
            $"'{word}' holds nothing known here. Accepted: {string.Join(", ", RestraintWords.Select(one => one.Word))}, or none; several with commas between.");
    }

    private static string Words(IReadOnlyList<Restraint> by) =>
        by.Count == 0 ? "none" : string.Join(',', by.Select(one => Array.Find(RestraintWords, known => known.Value == one).Word));
}
