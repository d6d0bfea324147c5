using Leverage.Wording;
using Leverage.Assessments;
using Leverage.Holding;
using Leverage.Reading;
using UnitsNet;

namespace Leverage.Page.Asking;

/// <summary>The fields of what holds the other end.</summary>
internal static class HoldFields
{
    private const string By = "held-by";
    private const string Stands = "on-stands";

    private static readonly (string Name, Func<HoldRequest, string, HoldRequest> Into)[] Table =
    [
        (By, (h, text) => h with { By = Restraints(text) }),
        ("mass", (h, text) => h with { VehicleMass = QuantityReader.Mass(text, 60_000) }),
        ("wheel-load", (h, text) => h with { WheelLoad = QuantityReader.Force(text) }),
        ("tyre-radius", (h, text) => h with { TyreRadius = QuantityReader.Length(text) }),
        ("chock", (h, text) => h with { ChockHeight = QuantityReader.Length(text) }),
        ("ground", (h, text) => h with { Ground = LooseningFields.Row("ground", text, "a ground") }),
        ("half-shafts", (h, text) => h with { HalfShafts = Words.Shafts(text) }),
        ("hold-bar", (h, text) => h with { StudBarDiameter = QuantityReader.Length(text) }),
        ("side", (h, text) => h with { Side = Words.Side(text) }),
        (Stands, (h, text) => h with { OnStands = Words.Flag(text) }),
    ];

    private static readonly string[] Strays = ["mass", "wheel-load", "chock", "half-shafts"];

    /// <summary>The fields' names.</summary>
    internal static IEnumerable<string> Names => Table.Select(row => row.Name);

    /// <summary>What was said of it, or null when nothing was.</summary>
    internal static HoldRequest? Read(Said said)
    {
        var request = new HoldRequest();
        foreach (var (name, into) in Table)
        {
            if (said.Text(name) is { } text)
            {
                request = LooseningFields.About(name, () => into(request, text));
            }
        }

        if (said.Text(By) is not null)
        {
            return request;
        }

        return request.OnStands
            ? new HoldRequest { OnStands = true, VehicleMass = request.VehicleMass ?? Mass.FromKilograms(1000) }
            : Unused(said);
    }

    private static HoldRequest? Unused(Said said) => Strays.FirstOrDefault(name => said.Text(name) is not null) is { } stray
        ? throw new InputException(stray, "says nothing without --held-by. Write for example --held-by brake,chock.")
        : null;

    private static Restraint[] Restraints(string text) => text.Equals("none", StringComparison.OrdinalIgnoreCase)
        ? []
        : [.. text.Split(',', StringSplitOptions.TrimEntries).Select(Named)];

    private static Restraint Named(string word)
    {
        foreach (Restraint restraint in Enum.GetValues<Restraint>())
        {
            if (LooseningAnswers.Word(restraint).Equals(word, StringComparison.OrdinalIgnoreCase))
            {
                return restraint;
            }
        }

        string known = string.Join(", ", Enum.GetValues<Restraint>().Select(LooseningAnswers.Word));
        throw new InputException($"'{word}' holds nothing known here. Accepted: {known}, or none; several with commas between.");
    }
}
