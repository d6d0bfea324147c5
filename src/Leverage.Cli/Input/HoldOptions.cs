using System.CommandLine;
using Leverage.Wording;
using Leverage.Assessments;
using Leverage.Holding;
using Leverage.Reading;
using Leverage.Workshop.Chest;
using UnitsNet;

namespace Leverage.Cli.Input;

/// <summary>What holds the other end.</summary>
internal sealed class HoldOptions
{
    private readonly ChestOption _chest;
    private readonly Asked<string?> _by = new Asked<string?>(
        "--held-by", "LIST", "brake,old-brake,gear,chock,helper,bar; none", text => text);

    private readonly Asked<Mass?> _mass = QuantityOption.Mass("--mass", "of the vehicle, laden", 60_000);
    private readonly Asked<Force?> _load = QuantityOption.Force("--wheel-load", "on that wheel (a quarter of --mass)");
    private readonly Asked<Length?> _radius = QuantityOption.Length("--tyre-radius", "axle to ground (300mm)");
    private readonly Asked<Length?> _chock = QuantityOption.Length("--chock", "height of the chock");
    private readonly Asked<string?> _ground = NameOption.Row("--ground", "table ground (dry-concrete)", "ground", "a ground");
    private readonly Asked<HalfShafts?> _shafts = NameOption.Choice<HalfShafts?>(
        "--half-shafts", "still in (both)", ("both", HalfShafts.Both), ("one", HalfShafts.One));

    private readonly Asked<Length?> _bar = QuantityOption.Length("--hold-bar", "diameter of a bar across the wheel studs");
    private readonly Asked<Side?> _side = NameOption.Choice<Side?>(
        "--side", "of the vehicle, from the driver's seat", ("left", Side.Left), ("right", Side.Right));

    private readonly Flag _stands = new("--on-stands", "the vehicle is on support stands");

    /// <summary>Options whose names the chest knows.</summary>
    internal HoldOptions(ChestOption chest) => _chest = chest;

    /// <summary>The options, in the order the help shows them.</summary>
    internal IEnumerable<Option> Symbols => [_by, _mass, _load, _radius, _chock, _ground, _shafts, _bar, _side, _stands];

    /// <summary>What was said of it, or null when nothing was.</summary>
    internal HoldRequest? Read(Given given)
    {
        bool stands = given.Get(_stands);
        if (given.Get(_by) is not { } by)
        {
            return stands
                ? new HoldRequest { OnStands = true, VehicleMass = given.Get(_mass) ?? Mass.FromKilograms(1000) }
                : Unused(given);
        }

        ToolChest? chest = _chest.Read(given);
        List<HoldWord> words = Given.About(_by, () => Words(by, chest));
        return new HoldRequest
        {
            By = [.. words.Select(word => word.Kind)],
            VehicleMass = given.Get(_mass),
            WheelLoad = given.Get(_load),
            TyreRadius = given.Get(_radius),
            ChockHeight = given.Get(_chock),
            Ground = given.Get(_ground),
            HalfShafts = given.Get(_shafts),
            StudBarDiameter = given.Get(_bar),
            Side = given.Get(_side) ?? Side.Unknown,
            OnStands = stands,
        }.With(words.Select(word => word.Piece).OfType<ChestHold>().Concat(chest?.Holds ?? []));
    }

    private HoldRequest? Unused(Given given)
    {
        string? stray = given.Get(_mass) is not null ? _mass.Name
            : given.Get(_load) is not null ? _load.Name
            : given.Get(_chock) is not null ? _chock.Name
            : given.Get(_shafts) is not null ? _shafts.Name
            : null;
        return stray is null
            ? null
            : throw new InputException(stray, "says nothing without --held-by. Write for example --held-by brake,chock.");
    }

    private static List<HoldWord> Words(string text, ToolChest? chest) =>
        text.Trim().Equals("none", StringComparison.OrdinalIgnoreCase)
            ? []
            : [.. text.Split(',', StringSplitOptions.TrimEntries).Select(word => OneOf(word, chest))];

    private static HoldWord OneOf(string word, ToolChest? chest)
    {
        foreach (Restraint restraint in Enum.GetValues<Restraint>())
        {
            if (LooseningAnswers.Word(restraint).Equals(word, StringComparison.OrdinalIgnoreCase))
            {
                return new HoldWord(restraint, null);
            }
        }

        if (chest?.Holds.Named(word) is { } piece)
        {
            return new HoldWord(piece.Kind, piece);
        }

        string known = string.Join(", ", Enum.GetValues<Restraint>().Select(LooseningAnswers.Word));
        throw new InputException($"'{word}' holds nothing known here. Accepted: {known}, or none; several with commas between.");
    }

    /// <summary>What one word stands for: a kind, or a piece of the chest.</summary>
    private readonly record struct HoldWord(Restraint Kind, ChestHold? Piece);
}
