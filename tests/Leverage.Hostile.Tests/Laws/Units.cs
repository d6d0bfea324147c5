using System.Globalization;
using System.Text.Json;
using Leverage.Assessments;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Hostile.Tests.Laws;

/// <summary>A request said again in US units, as text, read back by the program's own readers.</summary>
internal static class Units
{
    /// <summary>Relative difference left by two conversions and by searches that start from them.</summary>
    private const double Allowed = 1e-6;

    /// <summary>Difference of two chances: each is a sum over panels, whose number may change with a last digit; a thousandth of a point.</summary>
    private const double AllowedChance = 1e-5;

    /// <summary>How the answer in US units differs from the metric one; null for not at all.</summary>
    internal static string? Differ(LooseningRequest metric, LooseningAssessment assessment)
    {
        LooseningAssessment other = LooseningAssessor.WithoutAdvice(LooseningDefaults.Complete(Printed(metric)));
        return Differ(Json(assessment), Json(other), "$");
    }

    private static JsonElement Json(LooseningAssessment assessment)
    {
        using JsonDocument parsed = JsonDocument.Parse(LooseningAnswers.ToJson(LooseningAnswers.Of(assessment, UnitStyle.Metric)));
        return parsed.RootElement.Clone();
    }

    private static string? Differ(JsonElement a, JsonElement b, string at) => (a.ValueKind, b.ValueKind) switch
    {
        (JsonValueKind.Object, JsonValueKind.Object) => a.EnumerateObject()
            .Select(field => Differ(field.Value, b.GetProperty(field.Name), $"{at}.{field.Name}")).FirstOrDefault(found => found is not null),
        (JsonValueKind.Array, JsonValueKind.Array) when a.GetArrayLength() == b.GetArrayLength() => a.EnumerateArray()
            .Zip(b.EnumerateArray(), (x, y) => Differ(x, y, $"{at}[]")).FirstOrDefault(found => found is not null),
        (JsonValueKind.Number, JsonValueKind.Number) => Near(a.GetDouble(), b.GetDouble(), at.StartsWith("$.outcomes.", StringComparison.Ordinal) ? AllowedChance : 1e-9) ? null : $"{at}: {a.GetRawText()} and {b.GetRawText()}",
        _ => a.GetRawText() == b.GetRawText() ? null : $"{at}: {a.GetRawText()} and {b.GetRawText()}",
    };

    private static bool Near(double a, double b, double apart) => Math.Abs(a - b) <= Allowed * Math.Max(Math.Abs(a), Math.Abs(b)) + apart;

    private static LooseningRequest Printed(LooseningRequest r) => r with
    {
        BookTorque = Of(r.BookTorque, x => x.PoundForceFeet, "ft-lb", LooseningFields.Held.Value),
        Prevailing = Of(r.Prevailing, x => x.PoundForceInches, "in-lb", LooseningFields.Prevailing.Value),
        AcrossFlats = Inches(r.AcrossFlats),
        Bar = Of(r.Bar, x => x.Feet, "ft", LooseningFields.Bar.Value),
        BarDiameter = Inches(r.BarDiameter),
        BarYield = Ksi(r.BarYield),
        StraightHandle = Inches(r.StraightHandle),
        Taper = Of(r.Taper, x => x.Radians, "rad", LooseningFields.BarTaper.Value),
        Tube = r.Tube is { } tube
            ? new TubeText(Inches(tube.Length)!.Value, Inches(tube.Outside), Inches(tube.Wall), Inches(tube.Bore))
            : null,
        TubeYield = Ksi(r.TubeYield),
        Overlap = Inches(r.Overlap),
        PastSquare = Of(r.PastSquare, x => x.Radians, "rad", LooseningFields.PastSquare.Value),
        StandOff = Inches(r.StandOff),
        Body = Of(r.Body, x => x.Pounds, "lb", LooseningFields.Body.Value),
        Force = Of(r.Force, x => x.PoundsForce, "lbf", LooseningFields.Force.Value),
        VehicleMass = Of(r.VehicleMass, x => x.Pounds, "lb", LooseningFields.VehicleMass.Value),
        WheelLoad = Of(r.WheelLoad, x => x.PoundsForce, "lbf", LooseningFields.Force.Value),
        TyreRadius = Inches(r.TyreRadius),
        ChockHeight = Inches(r.ChockHeight),
        StudBarDiameter = Inches(r.StudBarDiameter),
    };

    private static Length? Inches(Length? length) => Of(length, x => x.Inches, "in", LooseningFields.Bar.Value);

    private static Pressure? Ksi(Pressure? stress) => Of(stress, x => x.KilopoundsForcePerSquareInch, "ksi", LooseningFields.BarYield.Value);

    /// <summary>The quantity read back from its text; one at the very end of its range, which rounding puts outside, stays as it is.</summary>
    private static T? Of<T>(T? quantity, Func<T, double> number, string unit, Func<string, T> read)
        where T : struct
    {
        if (quantity is not { } value)
        {
            return null;
        }

        try
        {
            return read(number(value).ToString("R", CultureInfo.InvariantCulture) + unit);
        }
        catch (InputException)
        {
            return value;
        }
    }
}
