using System.Globalization;
using System.Reflection;
using Leverage.Proof;

namespace Leverage.Tests.Proof;

/// <summary>Double entry: every constant of the formulas and rules stands a second time with where it is from.</summary>
public sealed class ConstantsTests
{
    private static readonly string[] Without = ["Leverage.Wording", "Leverage.Reading", "Leverage.Tables", "Leverage.Proof"];

    private static readonly Dictionary<string, string[]> Pinned = File
        .ReadLines(Path.Combine(AppContext.BaseDirectory, "Proof", "constants.csv")).Skip(1)
        .Select(line => line.Split(',')).ToDictionary(cells => cells[0], StringComparer.Ordinal);

    [Fact]
    public void Every_constant_has_the_value_it_was_written_down_with()
    {
        foreach (var (name, value) in InCore())
        {
            Assert.True(Pinned.TryGetValue(name, out string[]? cells), $"{name} is in no line of constants.csv");
            Assert.Equal(double.Parse(cells[1], CultureInfo.InvariantCulture), value, 1e-15 * Math.Abs(value));
            Assert.True(cells[2].Count(char.IsLetter) > 5, $"{name} does not say where it is from");
        }
    }

    [Fact]
    public void No_line_is_left_over() =>
        Assert.Empty(Pinned.Keys.Except(InCore().Select(one => one.Name)));

    private static IEnumerable<(string Name, double Value)> InCore() =>
        from type in typeof(Prover).Assembly.GetTypes()
        where type.Namespace is { } room && !Without.Contains(room)
        from field in type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)
        where field.IsLiteral && field.FieldType == typeof(double)
        select ($"{type.Name}.{field.Name}", (double)field.GetRawConstantValue()!);
}
