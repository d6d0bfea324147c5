using System.Text;
using Leverage.Reading;
using Leverage.Workshop.Files;
using Leverage.Workshop.Jobs;

namespace Leverage.Workshop.Tests.Jobs;

/// <summary>Lists as spreadsheets of several countries and ages save them: read as meant, or refused with the place and a cure.</summary>
public static class ListDialectTests
{
    [Theory]
    [InlineData("name,torque\nnut,22.5Nm\n")]
    [InlineData("name;torque\nnut;22,5 Nm\n")]
    [InlineData("name\ttorque\nnut\t22,5 Nm\n")]
    [InlineData("name|torque\nnut|22.5Nm\n")]
    [InlineData("sep=;\nname;torque\nnut;22,5Nm\n")]
    [InlineData("\"sep=,\"\nname,torque\nnut,22.5Nm\n")]
    [InlineData("SEP=|\r\nname|torque\r\nnut|22.5Nm\r\n")]
    [InlineData("sep=\t\nname\ttorque\nnut\t22.5Nm\n")]
    [InlineData("\uFEFFname;torque\r\nnut;22,5Nm\r\n")]
    [InlineData("name;torque\rnut;22,5Nm\r")]
    [InlineData("\n\nname;torque\n\nnut;22,5Nm\n\n")]
    [InlineData("name;torque;;;\nnut;22,5Nm;;;\n;;;;\n")]
    [InlineData("name;torque;note;place\nnut;22,5Nm\n")]
    [InlineData("Name ; TORQUE\n nut ; 22,5 Nm \n")]
    [InlineData("name;torque [Nm]\nnut;22,5\n")]
    [InlineData("name;torque (Nm)\nnut;22.5\n")]
    [InlineData("name;Torque / N·m\nnut;22,5\n")]
    [InlineData("name;torque in Nm\nnut;22,5\n")]
    [InlineData("name,\"torque, Nm\"\nnut,\"22,5\"\n")]
    [InlineData("name;torque [ft-lb]\nnut;22,5Nm\n")]
    [InlineData("name;torque\nnut;22,5\u00A0Nm\n")]
    [InlineData("name;torque\nnut;22,50 Nm\n")]
    [InlineData("\"name\";\"torque\"\n\"nut\";\"22,5Nm\"\n")]
    [InlineData("torque;name\n\"22,5\nNm\";nut\n")]
    [InlineData("name;torque;soaked\nnut;22,5Nm;FALSCH\n")]
    public static void A_list_is_read_as_meant(string text)
    {
        JobFastener nut = FastenerReader.Read(Assert.Single(FastenerList.Parse("f.csv", text)));

        Assert.Equal(("nut", 22.5), (nut.Name, Math.Round(nut.BookTorque!.Value.NewtonMeters, 9)));
    }

    [Theory]
    [InlineData("WAHR")]
    [InlineData("TRUE")]
    [InlineData("yes")]
    [InlineData("Ja")]
    [InlineData("vrai")]
    [InlineData("x")]
    [InlineData("1")]
    public static void Yes_is_read_in_several_languages(string cell) =>
        Assert.True(One($"name;torque;left hand\nnut;10Nm;{cell}\n").LeftHand);

    [Theory]
    [InlineData("name;thread;grade\nnut;M12x1,25;8,8\n", "M12x1.25", "8.8")]
    [InlineData("name;thread;grade\nnut;M12;10.9\n", "M12", "10.9")]
    public static void Threads_and_grades_with_a_decimal_comma_are_themselves(string text, string thread, string grade) =>
        Assert.Equal((thread, grade), (One(text).Thread!.Designation, One(text).Grade));

    [Fact]
    public static void A_thousand_with_a_decimal_comma_and_counts_with_a_tail_are_read()
    {
        JobFastener nut = One("name;torque [Nm];count;recess[mm]\nnut;1.234,5;4,0;0,125\n");

        Assert.Equal((1234.5, 4, 0.125), (nut.BookTorque!.Value.NewtonMeters, nut.Count, nut.Recess.Millimeters));
    }

    [Fact]
    public static void Several_torques_stand_in_one_cell() =>
        Assert.Equal([350, 380.5], One("name,torque,count,came loose [Nm]\nnut,400Nm,4,350; 380.5\n").CameLoose.Select(each => each.NewtonMeters));

    [Theory]
    [InlineData("name;torque\nnut;1,500 Nm\n", "f.csv(2,5): torque: '1,500 Nm' has two meanings")]
    [InlineData("name;torque;recess\nnut;1.500 Nm;2,5mm\n", "f.csv(2,5): torque: '1.500 Nm' has two meanings")]
    [InlineData("name,torque\nnut,22,5 Nm\n", "f.csv(2,1): 3 cells where there are 2 columns.")]
    [InlineData("name;torque;\nnut;10Nm;why\n", "f.csv(2,10): something stands below a column without a name.")]
    [InlineData("name;torque [mm]\nnut;10\n", "f.csv(1,6): torque: the column's name gives a unit, mm, and it is none of this kind. Write: torque [Nm]")]
    [InlineData("name [mm];torque\nnut;10Nm\n", "f.csv(1,1): name: the column's name gives a unit, mm, and it has none.")]
    [InlineData("name;torque\nnut;#REF!\n", "f.csv(2,5): torque: '#REF!' is an error of the spreadsheet's.")]
    [InlineData("name;torque;grade;thread\nnut;10Nm;09.Okt;M12\n", "f.csv(2,10): grade: '09.Okt' is a date")]
    [InlineData("name;thread\nnut;2020-02-01\n", "f.csv(2,5): thread: '2020-02-01' is a date")]
    [InlineData("name;torque;soaked\nnut;10Nm;perhaps\n", "f.csv(2,10): soaked: 'perhaps' is neither yes nor no.")]
    [InlineData("name;torque\n3/4\" nut;10Nm\n", "f.csv(2,4): a quotation mark opens here and never closes.")]
    [InlineData("My axle job\nname;torque\nnut;10Nm\n", "f.csv(1,1): no column is named like a key of a fastener.")]
    [InlineData("torque\n10Nm\n", "f.csv(1,1): there is no column name")]
    [InlineData("name;torqe;torque\nnut;1;2\n", "f.csv(1,6): torqe: is no key known in fasteners. Nearest: torque.")]
    [InlineData("name;torque\nnut;10\n", "f.csv(2,5): torque: cannot read '10': it has no unit.")]
    public static void What_could_be_misread_is_refused_with_its_place(string text, string start) =>
        Assert.StartsWith(start, Assert.Throws<InputException>(() => All(text)).Line, StringComparison.Ordinal);

    [Fact]
    public static void A_column_s_name_without_end_is_refused() => Assert.StartsWith(
        "f.csv(1,6): this is too long for the name of a column.", Assert.Throws<InputException>(() => All($"name;{new string('(', 201)};torque\nnut;1;1Nm\n")).Line, StringComparison.Ordinal);

    [Fact]
    public static void Every_error_of_a_list_is_told_at_once()
    {
        InputException errors = Assert.Throws<InputException>(() => JobReader.Parse(
            "job.toml",
            "title = \"x\"\nfastener_list = \"f.csv\"\n[[tasks]]\nname = \"t\"\ntakes_off = \"nut d\"\n",
            new Dictionary<string, string>
            {
                ["f.csv"] = "name;torque;condition;count\nnut a;10;rusty;2\nnut b;20Nm;used;0\n;30Nm;;\nnut a;5Nm;;\nnut d;;;\n",
            }));

        Assert.Equal(
            ["f.csv(2,7): torque", "f.csv(2,10): condition", "f.csv(3,17): count", "f.csv(4,1): fasteners", "f.csv(5,1): name", "f.csv(6,1): fasteners"],
            errors.Lines.Select(line => string.Join(':', line.Split(':').Take(2))));
    }

    [Fact]
    public static void The_code_pages_of_spreadsheets_are_read()
    {
        const string text = "name;torque\nÖlablaßschraube – ½;22,5Nm\n";
        byte[] western = [.. text.Select(letter => letter == '–' ? (byte)0x96 : (byte)letter)];

        Assert.All(
            (byte[][])[Encoding.UTF8.GetBytes(text), western, [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(text)],
                [0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes(text)], Encoding.Unicode.GetBytes(text), Encoding.BigEndianUnicode.GetBytes(text)],
            bytes => Assert.Equal(text, ListText.Of("f.csv", bytes)));
    }

    [Theory]
    [InlineData(new byte[] { 0x50, 0x4B, 3, 4, 20, 0 }, "is a spreadsheet's own file.")]
    [InlineData(new byte[] { 0xD0, 0xCF, 0x11, 0xE0 }, "is a spreadsheet's own file.")]
    [InlineData(new byte[] { (byte)'n', 0, 0, 0, 1 }, "is no text.")]
    [InlineData(new byte[] { (byte)'n', 0x81, 0xE4 }, "is text in a code page unknown here.")]
    public static void What_is_no_list_is_refused(byte[] bytes, string message) =>
        Assert.Contains(message, Assert.Throws<InputException>(() => ListText.Of("f.csv", bytes)).Line, StringComparison.Ordinal);

    [Fact]
    public static void Every_key_of_a_fastener_is_in_the_one_list_of_keys()
    {
        var section = new TomlSection("fasteners", new FilePlace("f.csv", 1, 1)) { Errors = [] };
        section.TryAdd("zzz", section.Place, new TomlText(section.Place, "1"));
        _ = FastenerReader.Read(section);
        string unknown = section.Errors.Single(error => error.Line.Contains("zzz", StringComparison.Ordinal)).Line;

        Assert.Equal(
            FastenerKey.All.Select(key => key.Name).Order(StringComparer.Ordinal),
            unknown[(unknown.IndexOf("Known: ", StringComparison.Ordinal) + 7)..].TrimEnd('.').Split(", ").Order(StringComparer.Ordinal));
    }

    private static JobFastener One(string text) => Assert.Single(All(text));

    private static JobFastener[] All(string text) => [.. FastenerList.Parse("f.csv", text).Select(section =>
    {
        JobFastener fastener = FastenerReader.Read(section);
        return section.Errors!.Count == 0 ? fastener : throw InputException.All(section.Errors);
    })];
}
