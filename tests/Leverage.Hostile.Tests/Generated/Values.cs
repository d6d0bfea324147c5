using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using Leverage.Reading;
using Leverage.Tables;

namespace Leverage.Hostile.Tests.Generated;

/// <summary>Values as a person writes them after an option, mostly right.</summary>
internal static class Values
{
    private static readonly string[] Spellings = [.. UnitNames.All];
    private static readonly string[] Threads = [.. Keys("threads-metric"), .. Keys("threads-unified"), "M24x1.5", "M12x1.25", "M12", "1/2-20", "1/2-13UNC"];
    private static readonly Gen<string> AnyName = Gen.Elements<string>([.. TableCatalog.Tables.Names.SelectMany(Keys).Distinct(StringComparer.Ordinal)]);

    /// <summary>A torque.</summary>
    internal static Gen<string> Torque { get; } = Quantity(0.01, 50_000, "Nm", "N·m", "ft-lb", "lbf.ft", "kgf.m", "in-lb", "Ncm");

    /// <summary>A length.</summary>
    internal static Gen<string> Length { get; } = Quantity(1, 3000, "mm", "mm", "mm", "cm", "m", "in", "ft", "\"");

    /// <summary>A thread.</summary>
    internal static Gen<string> Thread { get; } = Mostly(Gen.Elements<string>(Threads));

    /// <summary>A grade.</summary>
    internal static Gen<string> Grade { get; } = Mostly(Gen.Elements<string>([.. Keys("grades"), "8.8", "8.8", "10.9", "10.9", "SAE 5"]));

    /// <summary>A tube or a jack handle.</summary>
    internal static Gen<string> Tube { get; } = Mostly(Gen.Frequency(
        (6, from outside in Plain(15, 90)
            from wall in Gen.Elements("1", "1.5", "2.6", "3.2", "5", "8")
            from length in Plain(100, 2500)
            from cross in Gen.Elements("x", "x", "x", "×", " x ", "X")
            select $"{outside}{cross}{wall}{cross}{length}mm"),
        (1, from length in Length select $"jack:{length}"),
        (1, from a in Length from b in Length from c in Length select $"{a}x{b}x{c}"),
        (1, Gen.Constant("1.66x0.14x48in"))));

    /// <summary>A name: of a table's rows, or one of a few words.</summary>
    /// <param name="names">The names that are right here.</param>
    internal static Gen<string> Name(IReadOnlyList<string> names) => names.Count == 0 ? AnyName : Gen.Frequency(
        (20, Gen.Elements<string>(names)), (1, AnyName), (1, Gen.Elements<string>(names).SelectMany(AnyText.Damaged)), (1, AnyText.Any));

    /// <summary>The value an option's help calls so.</summary>
    internal static Gen<string>? Of(string help) => help switch
    {
        "TORQUE" => Torque,
        "LENGTH" => Length,
        "FORCE" => Quantity(1, 100_000, "N", "N", "kN", "lbf", "kgf"),
        "MASS" => Quantity(1, 3000, "kg", "kg", "lb", "t"),
        "STRESS" => Quantity(1, 5000, "MPa", "MPa", "ksi", "N/mm2", "psi"),
        "ANGLE" => Quantity(1, 90, "deg", "deg", "°", "rad"),
        "RISE" => Quantity(1, 1000, "K", "K", "C", "F"),
        "SHARE" => Mostly(Gen.OneOf(Plain(1, 100).Select(n => $"{n}%"), Gen.Elements("0.5", "0.9", "1", "100%"))),
        "NUMBER" => Mostly(Gen.Elements("0.02", "0.05", "0.08", "0.1", "0.12", "0.14", "0.2", "0.35", "0.6", "1", "1.0", "2", "100")),
        "SIZE" => Thread,
        "GRADE" => Grade,
        "TUBE" => Tube,
        "LIST" => Mostly(Gen.ListOf(Gen.Elements("brake", "old-brake", "gear", "chock", "helper", "bar", "none", "stand-push", "lift-legs"), 2)
            .Select(words => string.Join(',', words))),
        _ => null,
    };

    /// <summary>Mostly what it should be, now and then damaged or something else.</summary>
    internal static Gen<string> Mostly(Gen<string> right) =>
        Gen.Frequency((24, right), (2, right.SelectMany(AnyText.Damaged)), (1, AnyText.Any));

    private static Gen<string> Quantity(double least, double most, params string[] units) => Mostly(
        from number in Gen.Frequency((12, Plain(least, most)), (1, Gen.Elements("0", "-5", "1/2", "1-1/2", "1e3", "1e-3", "1e9", "+7", ".5", "5.", "1,5")))
        from gap in Gen.Elements("", "", "", " ", "\u00a0", "-")
        from unit in Gen.Frequency((24, Gen.Elements<string>(units)), (1, Gen.Elements<string>(Spellings)), (1, Gen.Constant("")))
        select number + gap + unit);

    /// <summary>A plain number, small ones as often as large.</summary>
    private static Gen<string> Plain(double least, double most) =>
        from share in Gen.Choose(0, 10_000)
        from figures in Gen.Choose(1, 4)
        select (least * Math.Pow(most / least, share / 1e4)).ToString($"G{figures.ToString(CultureInfo.InvariantCulture)}", CultureInfo.InvariantCulture);

    private static IEnumerable<string> Keys(string table) => TableCatalog.Tables[table].Rows.Select(row => row.Key).Distinct(StringComparer.Ordinal);
}
