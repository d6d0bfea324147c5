using Leverage.Assessments;
using Leverage.Holding;
using Leverage.Levers;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Workshop.Chest;
using Leverage.Workshop.Files;

namespace Leverage.Workshop.Tests.Chest;

public sealed class ChestReaderTests
{
    private const string Bar = "[[bars]]\nname = \"b\"\ndrive = \"1/2\"\nlength = \"600mm\"\n";

    /// <summary>A chest that cannot be, and the whole line that says where and why.</summary>
    public static TheoryData<string, string> Refusals => new()
    {
        { "[[bars]]\nname = \"b\"\ndrive = \"1/2\"\nlength = 600\n", "c(4,10): length: cannot read '600': it has no unit. Write 600mm, or 600in (which is 15200 mm)." },
        { "[[bars]]\nname = \"b\"\ndrive = \"1/2\"\nlength = \"600kg\"\n", "c(4,10): length: cannot read '600kg' as a length. kg is a mass. Write: 600mm or 24in" },
        { "[[bars]]\nname = \"b\"\ndrive = \"1/3\"\nlength = \"600mm\"\n", "c(3,9): drive: '1/3' is not a drive square known here. Nearest: 1/4, 1/2, 3/8, 3/4. All of them: table drive-squares." },
        { "[[bars]]\nname = \"b\"\ndrive = \"1/2\"\n", "c(1,3): bars: length is missing. Write: length = \"600mm\"" },
        { "[[bars]]\nname = \"b\"\nlenght = \"1m\"\n", "c(3,1): lenght: is no key known in bars. Nearest: length. Write: length = \"600mm\"" },
        { "[[bars]]\ndrive = \"1/2\"\nlength = \"600mm\"\n", "c(1,3): bars: name is missing. Write: name = \"red long bar\"" },
        { "[[bars]]\nname = \" \"\n", "c(2,8): name: is blank." },
        { "[[bars]]\nname = \"a\\nb\"\n", "c(2,8): name: a name stands on one line." },
        { Bar + "diametr = \"18mm\"\n", "c(5,1): diametr: is no key known in bars. Nearest: diameter. Known: name, length, straight, drive, diameter, taper, yield, pin, pin_planes." },
        { Bar + "straight = \"700mm\"\n", "c(5,12): straight: the straight handle is longer than the bar. Measure it from the end." },
        { Bar + "pin = \"10mm\"\n", "c(1,3): bars: pin_planes is missing. Write: pin_planes = \"14mm\"" },
        { Bar + "taper = \"45deg\"\n", "c(5,9): taper: cannot use '45deg': accepted is 0deg to 20deg." },
        { Bar + Bar, "c(6,8): name: 'b' is there already, on line 2. Give each its own name." },
        { Bar + "[[tubes]]\nname = \"B\"\nlength = \"1m\"\nbore = \"30mm\"\n", "c(6,8): name: 'B' is there already, on line 2. Give each its own name." },
        { "[[barz]]\nname = \"b\"\n", "c(1,3): barz: is no key known here. Nearest: bars. Known: bars, sockets, keys, spanners, adapters, extensions, tubes, torque_wrenches, people, holds." },
        { "[bars]\nname = \"b\"\n", "c(1,2): bars: there may be several: write [[bars]] with double brackets." },
        { "bars = \"long\"\n", "c(1,8): bars: a table belongs here: write its keys below a line [[bars]] or [bars]." },
        { "[[sockets]]\nname = \"s\"\ndrive = \"1/2\"\n", "c(1,3): sockets: size is missing. Write: size = \"36mm\"" },
        { "[[sockets]]\nname = \"s\"\ndrive = \"1/2\"\nsize = [\"36mm\", \"41\"]\n", "c(4,17): size: cannot read '41': it has no unit. Write 41mm, or 41in (which is 1040 mm)." },
        { "[[keys]]\nname = \"k\"\nsize = \"10mm\"\n", "c(1,3): keys: a key has either a drive or a length of its own. Give one of them." },
        { "[[spanners]]\nname = \"s\"\nkind = \"flat\"\n", "c(3,8): kind: 'flat' is not accepted here. Write: ring or open" },
        { "[[adapters]]\nname = \"a\"\nfrom = \"1/2\"\nto = \"1/2\"\n", "c(4,6): to: the same square on both ends is an extension: write it below [[extensions]] with drive and length." },
        { "[[tubes]]\nname = \"s\"\nlength = \"1m\"\n", "c(1,3): tubes: nothing says what bar it goes over. Give outside and wall, or a jack handle's measured bore. Write: bore = \"30mm\"" },
        { "[[tubes]]\nname = \"s\"\nlength = \"1m\"\noutside = \"33.7mm\"\n", "c(1,3): tubes: wall is missing. Write: wall = \"3.2mm\"" },
        { "[[tubes]]\nname = \"s\"\nlength = \"1m\"\noutside = \"33.7mm\"\nwall = \"17mm\"\n", "c(1,3): tubes: the wall leaves no bore: outside must be more than twice the wall, and wider than the bore." },
        { "[[tubes]]\nname = \"s\"\nlength = \"1m\"\nbore = \"30mm\"\nmaterial = \"S23\"\n", "c(5,12): material: 'S23' is not a tube steel known here. Nearest: S235, S275. All of them: table tube-steels." },
        { "[[tubes]]\nname = \"s\"\nlength = \"1m\"\nbore = \"30mm\"\nmaterial = \"E355+C\"\n", "c(5,12): material: the table has no yield of 'E355+C'. Give yield instead, such as yield = \"355MPa\"." },
        { "[[tubes]]\nname = \"s\"\nlength = \"1m\"\nbore = \"30mm\"\nmaterial = \"S235\"\nyield = \"300MPa\"\n", "c(6,9): yield: material gives the yield already. Give one of the two." },
        { "[[torque_wrenches]]\nname = \"w\"\ndrive = \"1/2\"\nlength = \"450mm\"\nfrom = \"200Nm\"\nto = \"40Nm\"\naccuracy = \"4%\"\n", "c(6,6): to: the range ends below its start. Give from and to, lowest first." },
        { "[[people]]\nname = \"p\"\nperson = \"man\"\nforces = { stand-pusch = \"500N\" }\n", "c(4,12): forces: 'stand-pusch' is not a stance known here. Nearest: stand-push, stand-pull. All of them: table stances." },
        { "[[people]]\nname = \"p\"\nperson = \"man\"\nforces = { stand-push = \"500\" }\n", "c(4,25): stand-push: cannot read '500': it has no unit. Write 500N, or 500lbf (which is 2220 N)." },
        { "[[people]]\nname = \"p\"\nperson = \"man\"\nbody = \"900kg\"\n", "c(4,8): body: cannot use '900kg': accepted is 30kg to 250kg." },
        { "[[holds]]\nname = \"h\"\nkind = \"chock\"\n", "c(1,3): holds: height is missing. Write: height = \"100mm\"" },
        { "[[holds]]\nname = \"h\"\nkind = \"bar\"\n", "c(1,3): holds: diameter is missing. Write: diameter = \"30mm\"" },
    };

    [Theory]
    [MemberData(nameof(Refusals))]
    public void What_cannot_be_is_refused_with_its_place(string text, string line)
    {
        var error = Assert.Throws<InputException>(() => Read(text));
        Assert.Equal(line, error.Line);
    }

    [Fact]
    public void A_full_piece_of_each_kind_is_read_as_written()
    {
        ToolChest chest = Read(
            Bar + "diameter = \"18mm\"\nstraight = \"450mm\"\ntaper = \"0.5deg\"\nyield = \"1000MPa\"\npin = \"10mm\"\npin_planes = \"14mm\"\n"
            + "[[keys]]\nname = \"k\"\nsize = \"17mm\"\ndrive = \"1/2\"\n[[extensions]]\nname = \"e\"\ndrive = \"1/2\"\nlength = \"10in\"\n"
            + "[[tubes]]\nname = \"measured\"\noutside = \"40mm\"\nbore = \"34mm\"\nlength = \"4ft\"\nmaterial = \"E355+N\"\n"
            + "[[people]]\nname = \"p\"\nperson = \"woman\"\nbody = \"150lb\"\nforces = { lift-legs = \"100lbf\" }\n"
            + "[[holds]]\nname = \"h\"\nkind = \"chock\"\nheight = \"110mm\"\n");
        ChestBar bar = chest.Bar("B");
        Assert.Equal((18, 450, 0.5, 1000, 10, 14), (
            bar.Diameter!.Value.Millimeters, bar.StraightHandle!.Value.Millimeters, bar.Taper!.Value.Degrees, bar.Yield!.Value.Megapascals,
            bar.Pin!.Diameter.Millimeters, bar.Pin.PlanesApart.Millimeters));
        Assert.Equal((ToolKind.Key, "1/2", null), (chest.NutTools[0].Kind, chest.NutTools[0].Drive, chest.NutTools[0].Length?.Millimeters));
        Assert.Equal((true, 254.0), (chest.Adapters[0].IsExtension, chest.Adapters[0].Length.Millimeters));
        Assert.Equal((3, 355.0), (chest.Tube("measured").Tube.Wall!.Value.Millimeters, chest.Tube("measured").Yield!.Value.Megapascals));
        Assert.Equal((Person.Woman, 444.8), (chest.Person("p").Column, Math.Round(chest.Person("p").Forces["lift-legs"].Newtons, 1)));
        Assert.Equal((Restraint.Chock, 110), (chest.Hold("h").Kind, chest.Hold("h").Height!.Value.Millimeters));
    }

    [Fact]
    public void A_name_that_is_not_there_gets_the_nearest_ones()
    {
        ToolChest chest = Read(Bar);
        Assert.Equal("'c' is not a bar of the chest c. Nearest: b.", Assert.Throws<InputException>(() => chest.Bar("c")).Line);
        Assert.Equal("'tube' is not a tube of the chest c. It has none.", Assert.Throws<InputException>(() => chest.Tube("tube")).Line);
    }

    [Fact]
    public void The_shared_chest_and_the_starter_can_be_read_as_they_stand()
    {
        ToolChest shared = ToolChest.Read("pickup/chest.toml");
        Assert.InRange(Count(shared), 25, 40);
        ToolChest starter = ChestReader.Read("starter", TomlFile.Parse("starter", StarterChest.Text()));
        Assert.Equal((1, 3, 2, 2, 1, 1, 1), (
            starter.Bars.Count, starter.NutTools.Count, starter.Adapters.Count, starter.Tubes.Count,
            starter.TorqueWrenches.Count, starter.People.Count, starter.Holds.Count));
    }

    [Fact]
    public void Every_commented_out_key_of_the_starter_is_a_known_one()
    {
        string text = StarterChest.Text();
        foreach (string key in (string[])["taper", "yield", "pin", "pin_planes", "forces"])
        {
            Assert.Contains($"# {key} = ", text, StringComparison.Ordinal);
            text = text.Replace($"# {key} = ", $"{key} = ", StringComparison.Ordinal);
        }

        ToolChest chest = ChestReader.Read("starter", TomlFile.Parse("starter", text));
        Assert.NotNull(chest.Bars[0].Pin);
        Assert.Single(chest.People[0].Forces);
    }

    private static int Count(ToolChest chest) => chest.Bars.Count + chest.NutTools.Count + chest.Adapters.Count
        + chest.Tubes.Count + chest.TorqueWrenches.Count + chest.People.Count + chest.Holds.Count;

    private static ToolChest Read(string text) => ChestReader.Read("c", TomlFile.Parse("c", text));
}
