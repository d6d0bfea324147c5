using System.Globalization;
using Leverage.Grades;
using Leverage.Reading;
using Leverage.Stiffness;
using Leverage.Tables;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Requests;

/// <summary>The kinds of values there are.</summary>
internal static partial class Kinds
{
    /// <summary>There or not.</summary>
    internal static readonly FieldKind<bool> Flag = new("", "true", Yes, yes => yes ? "true" : "false") { IsFlag = true };

    /// <summary>Any words.</summary>
    internal static readonly FieldKind<string> Grade = new("GRADE", GradeCatalog.UsualMetric, text => text.Trim(), text => text) { Names = () => Keys("grades"), Table = "grades" };

    /// <summary>What is taken where no grade is said, in words.</summary>
    internal const string UsualGrade = $"{GradeCatalog.UsualMetric}; inch {GradeCatalog.UsualInch}";

    /// <summary>What is taken where no clamped length is said, in words.</summary>
    internal static readonly string UsualGrip = FormattableString.Invariant($"{BoltedGrip.UsualDiameters} diameters");

    /// <summary>A standard thread.</summary>
    internal static readonly FieldKind<ScrewThread> Thread = new("SIZE", "M24x1.5", ThreadCatalog.Named, thread => thread.Designation)
    {
        Names = () => Keys("threads-metric").Concat(Keys("threads-unified")),
    };

    /// <summary>Width across flats.</summary>
    internal static readonly FieldKind<Length> AcrossFlats = Length("36mm", AcceptedRange.AcrossFlats) with { Parse = QuantityReader.AcrossFlats };

    internal static FieldKind<Torque> Torque(string example) =>
        Quantity("TORQUE", example, QuantityReader.Torque, torque => torque.NewtonMeters, AcceptedRange.Torque);

    /// <summary>A torque, alone or with the turn that follows it.</summary>
    internal static FieldKind<TorqueAndTurn> TorqueAndTurn(string example) => new(
        "TORQUE", example, Reading.TorqueAndTurn.Read, both => both.Text(), (both, text) =>
        {
            AcceptedRange.Torque.Check(both.Torque.NewtonMeters, text);
            if (both.Turn is { } turn)
            {
                AcceptedRange.Turn.Check(turn.Degrees, text);
            }
        })
    {
        Range = AcceptedRange.Torque,
    };

    /// <summary>A turn after a first torque.</summary>
    internal static FieldKind<Angle> Turn(string example) =>
        Quantity("ANGLE", example, QuantityReader.Angle, angle => angle.Degrees, AcceptedRange.Turn);

    internal static FieldKind<Length> Length(string example, AcceptedRange? range = null) =>
        Quantity("LENGTH", example, QuantityReader.Length, length => length.Millimeters, range ?? AcceptedRange.Length);

    internal static FieldKind<Force> Force(string example) =>
        Quantity("FORCE", example, QuantityReader.Force, force => force.Newtons, AcceptedRange.Force);

    internal static FieldKind<Mass> Mass(string example, AcceptedRange range) =>
        Quantity("MASS", example, QuantityReader.Mass, mass => mass.Kilograms, range);

    internal static FieldKind<Pressure> Stress(string example) =>
        Quantity("STRESS", example, QuantityReader.Stress, stress => stress.Megapascals, AcceptedRange.Stress);

    internal static FieldKind<Angle> Angle(string example, double mostDegrees) =>
        Quantity("ANGLE", example, QuantityReader.Angle, angle => angle.Degrees, AcceptedRange.UpTo(mostDegrees));

    internal static FieldKind<TemperatureDelta> TemperatureDifference(string example) =>
        Quantity("RISE", example, QuantityReader.TemperatureRise, rise => rise.Kelvins, AcceptedRange.TemperatureRise);

    /// <summary>A share of one, said in percent.</summary>
    internal static FieldKind<double> Share(string example, AcceptedRange? range = null) =>
        Ranged("SHARE", example, QuantityReader.Share, share => Plain(share * 100) + "%", share => share * 100, range ?? AcceptedRange.Share);

    /// <summary>A plain number.</summary>
    internal static FieldKind<double> Number(string example, AcceptedRange range) =>
        Ranged("NUMBER", example, QuantityReader.Number, Plain, number => number, range);

    /// <summary>A whole number.</summary>
    internal static FieldKind<int> Count(string example, AcceptedRange range) =>
        Ranged("NUMBER", example, Whole, count => Plain(count), count => count, range);

    /// <summary>Torques with commas between.</summary>
    internal static readonly FieldKind<IReadOnlyList<Torque>> Torques = new(
        "TORQUE", "220Nm",
        text => [.. text.Split(',', StringSplitOptions.TrimEntries).Select(one => QuantityReader.Torque(one))],
        torques => string.Join(',', torques.Select(torque => QuantityWriter.Text(torque))),
        (torques, text) =>
        {
            foreach (Torque torque in torques)
            {
                AcceptedRange.Torque.Check(torque.NewtonMeters, text);
            }
        })
    {
        IsList = true,
    };

    /// <summary>The key of a row in a table.</summary>
    /// <param name="table">Name of the table.</param>
    /// <param name="what">What the name should be, with its article.</param>
    /// <param name="example">One of the names.</param>
    internal static FieldKind<string> Row(string table, string what, string example) => new(
        "NAME", example, text => RowLookup.Named(table, text, what).Key, key => key, (key, _) => RowLookup.Named(table, key, what))
    {
        Names = () => Keys(table),
        Table = table,
    };

    /// <summary>Keys of rows in a table, with commas or spaces between.</summary>
    internal static FieldKind<IReadOnlyList<string>> Rows(string table, string what, string example)
    {
        FieldKind<string> one = Row(table, what, example);
        return new(
            "LIST", example,
            text => [.. text.Split([',', ' '], StringSplitOptions.RemoveEmptyEntries).Select(one.Parse).Distinct(StringComparer.Ordinal)],
            keys => string.Join(',', keys))
        {
            Names = one.Names,
            Table = table,
            IsList = true,
        };
    }

    /// <summary>One of a few words, each standing for a value.</summary>
    internal static FieldKind<T> Choice<T>(params (string Word, T Value)[] choices)
        where T : notnull => new(
        string.Join('|', choices.Select(choice => choice.Word)),
        choices[0].Word,
        text => Chosen(text, choices),
        value => Array.Find(choices, choice => choice.Value.Equals(value)).Word ?? "",
        (value, text) =>
        {
            if (!Array.Exists(choices, choice => choice.Value.Equals(value)))
            {
                throw Refused(text, choices);
            }
        })
        {
            Names = () => choices.Select(choice => choice.Word),
        };

    private static FieldKind<IReadOnlyList<T>> ChoiceList<T>(params (string Word, T Value)[] choices)
        where T : notnull
    {
        FieldKind<T> one = Choice(choices);
        return new(
            "LIST", one.Example, text => [.. text.Split(',', StringSplitOptions.TrimEntries).Select(one.Parse).Distinct()],
            all => string.Join(',', all.Select(one.Write)))
        {
            Names = one.Names,
            IsList = true,
        };
    }

    private static T Chosen<T>(string text, (string Word, T Value)[] choices)
    {
        int found = Array.FindIndex(choices, choice => choice.Word.Equals(text.Trim(), StringComparison.OrdinalIgnoreCase));
        return found >= 0 ? choices[found].Value : throw Refused(text, choices);
    }

    private static InputException Refused<T>(string text, (string Word, T Value)[] choices) =>
        new($"'{text}' is not accepted here. Write: {string.Join(" or ", choices.Select(choice => choice.Word))}");

    private static FieldKind<T> Quantity<T>(
        string value, string example, Func<string, T> parse, Func<T, double> number, AcceptedRange range)
        where T : IQuantity => Ranged(value, example, parse, quantity => QuantityWriter.Text(quantity), number, range);

    private static FieldKind<T> Ranged<T>(
        string value, string example, Func<string, T> parse, Func<T, string> write, Func<T, double> number, AcceptedRange range) =>
        new(value, example, parse, write, (v, text) => range.Check(number(v), text)) { Range = range };

    private static bool Yes(string text) => text.Trim().ToUpperInvariant() switch
    {
        "TRUE" or "YES" or "ON" => true,
        "FALSE" or "NO" or "OFF" => false,
        _ => throw new InputException($"'{text}' is neither true nor false."),
    };

    private static int Whole(string text) => QuantityReader.Number(text) is var number && double.IsInteger(number) && Math.Abs(number) < 1e9
        ? (int)number
        : throw new InputException($"'{text}' is no whole number.");

    private static string Plain(double number) => number.ToString(CultureInfo.InvariantCulture);

    private static IEnumerable<string> Keys(string table) =>
        TableCatalog.Tables[table].Rows.Select(row => row.Key).Distinct(StringComparer.Ordinal);
}
