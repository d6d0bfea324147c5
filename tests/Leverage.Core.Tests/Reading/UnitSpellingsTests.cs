using System.Globalization;
using Leverage.Proof;
using Leverage.Reading;

namespace Leverage.Tests.Reading;

/// <summary>What GNU units says each spelling is worth (shared/checks/unit-spellings.csv), through the readers themselves.</summary>
public sealed class UnitSpellingsTests
{
    private const string Prefix = "unit-";

    private static readonly Dictionary<string, CheckRow> Rows = Prover.Run("unit-spellings").Outcomes
        .ToDictionary(o => o.Row.Id[Prefix.Length..], o => o.Row, StringComparer.Ordinal);

    public static TheoryData<string> Spellings => [.. UnitNames.All];

    [Fact]
    public void Every_spelling_has_been_weighed_by_another_engine()
    {
        Assert.Equal(UnitNames.All.Order(StringComparer.Ordinal), Rows.Keys.Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Spellings))]
    public void A_spelling_reads_as_what_it_is_worth(string spelling)
    {
        CheckRow row = Rows[spelling];
        double worth = double.Parse(row.Expected, CultureInfo.InvariantCulture);
        double wanted = row.Unit switch { "Nmm" => 1e5, "rad" => 0.5, "" => 0.5, _ => 100 };
        string text = (wanted / worth).ToString("F12", CultureInfo.InvariantCulture) + spelling;
        Assert.Equal(1, Read(text, row.Unit) / wanted, 2e-6);
    }

    private static double Read(string text, string unit) => unit switch
    {
        "Nmm" => QuantityReader.Torque(text).NewtonMillimeters,
        "mm" => QuantityReader.Length(text).Millimeters,
        "N" => QuantityReader.Force(text).Newtons,
        "kg" => QuantityReader.Mass(text).Kilograms,
        "MPa" => QuantityReader.Stress(text).Megapascals,
        "rad" => QuantityReader.Angle(text).Radians,
        "K" => QuantityReader.TemperatureRise(text).Kelvins,
        _ => QuantityReader.Share(text),
    };
}
