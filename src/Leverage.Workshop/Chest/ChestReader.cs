using Leverage.Holding;
using Leverage.Levers;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Workshop.Files;
using UnitsNet;

namespace Leverage.Workshop.Chest;

/// <summary>Reads the tables of a chest: each piece is read here once, and every key asked for is a known one.</summary>
public sealed class ChestReader
{
    private readonly NameIndex<TomlSection> _names = new();
    private readonly List<NutTool> _nutTools = [];
    private readonly List<ChestAdapter> _adapters = [];

    private ChestReader()
    {
    }

    /// <summary>The chest of a whole file.</summary>
    /// <param name="path">What errors call the file.</param>
    /// <param name="file">The file as one table.</param>
    /// <returns>The chest.</returns>
    /// <exception cref="InputException">Something in it cannot be; the error says where.</exception>
    public static ToolChest Read(string path, TomlSection file)
    {
        ArgumentNullException.ThrowIfNull(file);
        ToolChest chest = Pieces(path, file);
        file.Done();
        return chest;
    }

    /// <summary>The pieces of a chest that stands in a table with other things; the caller calls <see cref="TomlSection.Done"/>.</summary>
    /// <param name="path">What errors call the file.</param>
    /// <param name="section">The table.</param>
    /// <returns>The chest.</returns>
    /// <exception cref="InputException">Something in it cannot be; the error says where.</exception>
    public static ToolChest Pieces(string path, TomlSection section)
    {
        ArgumentNullException.ThrowIfNull(section);
        return new ChestReader().Chest(path, section);
    }

    private ToolChest Chest(string path, TomlSection section)
    {
        List<ChestBar> bars = Each(section, "bars", Bar);
        _nutTools.AddRange(Each(section, "sockets", Socket));
        _nutTools.AddRange(Each(section, "keys", Key));
        _nutTools.AddRange(Each(section, "spanners", Spanner));
        _adapters.AddRange(Each(section, "adapters", Adapter));
        _adapters.AddRange(Each(section, "extensions", Extension));
        return new ToolChest
        {
            Path = path,
            Bars = bars,
            NutTools = _nutTools,
            Adapters = _adapters,
            Tubes = Each(section, "tubes", TubeReading.Of),
            TorqueWrenches = Each(section, "torque_wrenches", Wrench),
            People = Each(section, "people", PersonReading.Of),
            Holds = Each(section, "holds", Hold),
        };
    }

    private List<T> Each<T>(TomlSection section, string key, Func<TomlSection, string, T> read)
    {
        var things = new List<T>();
        foreach (TomlSection each in section.Sections(key))
        {
            string name = each.Name("red long bar");
            _names.Add(name, each, each.PlaceOf("name"));
            things.Add(read(each, name));
            each.Done();
        }

        return things;
    }

    private static ChestBar Bar(TomlSection s, string name)
    {
        static string Key(Field field) => SectionFields.KeyOf("bar", field);
        Length length = s.NeedQuantity(LooseningFields.Bar, Key(LooseningFields.Bar));
        Length? straight = s.Quantity(LooseningFields.BarStraight, Key(LooseningFields.BarStraight));
        if (straight > length)
        {
            throw s.PlaceOf("straight").Error("straight", "the straight handle is longer than the bar. Measure it from the end.");
        }

        return new ChestBar(
            name, NeedDrive(s, "drive"), length, s.Quantity(LooseningFields.BarDiameter, Key(LooseningFields.BarDiameter)), straight,
            s.Quantity(LooseningFields.BarTaper, Key(LooseningFields.BarTaper)), s.Quantity(LooseningFields.BarYield, Key(LooseningFields.BarYield)), Pin(s));
    }

    private static FlexPin? Pin(TomlSection s)
    {
        var (pin, planes) = (SectionFields.KeyOf("bar", LooseningFields.BarPin), SectionFields.KeyOf("bar", LooseningFields.BarPinPlanes));
        return (s.Quantity(LooseningFields.BarPin, pin), s.Quantity(LooseningFields.BarPinPlanes, planes)) switch
        {
            (null, null) => null,
            ({ } diameter, { } apart) => new FlexPin(diameter, apart),
            (null, _) => throw s.Missing(pin, LooseningFields.BarPin.Kind.Example),
            _ => throw s.Missing(planes, LooseningFields.BarPinPlanes.Kind.Example),
        };
    }

    private static NutTool Socket(TomlSection s, string name) =>
        new(name, ToolKind.Socket, Sizes(s), NeedDrive(s, "drive"), null) { Points = s.Quantity(LooseningFields.Points) };

    private static NutTool Key(TomlSection s, string name)
    {
        string? drive = s.Named(LooseningFields.Drive);
        Length? length = s.Quantity(LooseningFields.Bar, "length");
        return drive is null != length is null
            ? new NutTool(name, ToolKind.Key, Sizes(s), drive, length)
            : throw s.Place.Error("keys", "a key has either a drive or a length of its own. Give one of them.");
    }

    private static NutTool Spanner(TomlSection s, string name)
    {
        ToolKind kind = PieceKeys.Spanner.Need(s);
        var spanner = new NutTool(name, kind, Sizes(s), null, s.NeedQuantity(LooseningFields.Bar, "length"));
        return kind == ToolKind.Ring ? spanner with { Points = s.Quantity(LooseningFields.Points) } : spanner;
    }

    private static Length[] Sizes(TomlSection s)
    {
        Length[] sizes = [.. s.Values("size", LooseningFields.Hex.Values.Read).Select(size => size.Value)];
        return sizes.Length > 0 ? sizes : throw s.Missing("size", LooseningFields.Hex.Kind.Example);
    }

    private static ChestAdapter Adapter(TomlSection s, string name)
    {
        var adapter = new ChestAdapter(name, NeedDrive(s, "from"), NeedDrive(s, "to"), PieceKeys.AdapterLength.Of(s) ?? Length.Zero);
        return !adapter.IsExtension
            ? adapter
            : throw s.PlaceOf("to").Error("to", "the same square on both ends is an extension: write it below [[extensions]] with drive and length.");
    }

    private static ChestAdapter Extension(TomlSection s, string name)
    {
        string drive = NeedDrive(s, "drive");
        return new ChestAdapter(name, drive, drive, s.NeedQuantity(LooseningFields.Extension, SectionFields.KeyOf("extension", LooseningFields.Extension)));
    }

    private static TorqueWrench Wrench(TomlSection s, string name)
    {
        Torque from = PieceKeys.From.Need(s);
        Torque to = PieceKeys.To.Need(s);
        return from < to
            ? new TorqueWrench(
                name, NeedDrive(s, "drive"), s.NeedQuantity(TighteningFields.Wrench, "length"), from, to, PieceKeys.Accuracy.Need(s))
            : throw s.PlaceOf("to").Error("to", "the range ends below its start. Give from and to, lowest first.");
    }

    private static ChestHold Hold(TomlSection s, string name)
    {
        Restraint kind = PieceKeys.Hold.Need(s);
        Length? height = s.Quantity(LooseningFields.Chock, "height");
        Length? diameter = s.Quantity(LooseningFields.HoldBar, "diameter");
        return kind == Restraint.Chock && height is null ? throw s.Missing("height", LooseningFields.Chock.Kind.Example)
            : kind == Restraint.Bar && diameter is null ? throw s.Missing("diameter", LooseningFields.HoldBar.Kind.Example)
            : new ChestHold(name, kind, height, diameter);
    }

    private static string NeedDrive(TomlSection s, string key) =>
        s.Named(LooseningFields.Drive, key) ?? throw s.Missing(key, LooseningFields.Drive.Kind.Example);
}
