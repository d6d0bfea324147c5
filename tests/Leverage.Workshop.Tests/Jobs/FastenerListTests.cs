using System.Diagnostics;
using System.Text;
using Leverage.Reading;
using Leverage.Workshop.Files;
using Leverage.Workshop.Jobs;

namespace Leverage.Workshop.Tests.Jobs;

public static class FastenerListTests
{
    [Theory]
    [InlineData("Name,Hex,torque\nnut,36mm,380Nm\n")]
    [InlineData("Name;Hex;torque\nnut;36mm;380Nm\n")]
    [InlineData("Name\tHex\ttorque\r\nnut\t36mm\t380Nm\r\n")]
    [InlineData("Name;Hex;torque\n\"nut\";\" 36mm \";380Nm\n;;\n\n")]
    public static void Commas_semicolons_tabs_quotes_and_blank_rows_are_read(string text)
    {
        JobFastener nut = FastenerReader.Read(Assert.Single(FastenerList.Parse("f.csv", text)));

        Assert.Equal(("nut", 36, 380), (nut.Name, nut.AcrossFlats!.Value.Millimeters, nut.BookTorque!.Value.NewtonMeters));
    }

    [Fact]
    public static void A_quoted_cell_may_hold_separators_quotes_and_line_breaks_and_places_stay_right()
    {
        IReadOnlyList<TomlSection> rows = FastenerList.Parse(
            "f.csv", "name;note;torque;soaked\n\"nut; \"\"big\"\"\";\"one\ntwo\";380Nm;TRUE\nbolt;;1,500Nm;\n");

        JobFastener nut = FastenerReader.Read(rows[0]);
        Assert.Equal(("nut; \"big\"", "one two", true), (nut.Name, nut.Note, nut.Soaked));
        Assert.StartsWith("f.csv(4,7): torque: '1,500Nm' has two meanings", rows[1].Errors![0].Line, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "f.csv(1,1): is empty")]
    [InlineData("name;torque;Torque\nnut;1Nm;2Nm\n", "f.csv(1,13): there are two columns torque.")]
    public static void A_list_that_does_not_hang_together_is_refused_with_its_place(string text, string start) =>
        Assert.StartsWith(start, Assert.Throws<InputException>(() => FastenerList.Parse("f.csv", text)).Line, StringComparison.Ordinal);

    [Fact]
    public static void A_hundred_thousand_rows_are_refused_quickly_and_ten_thousand_read()
    {
        var text = new StringBuilder("name;torque\n");
        for (int i = 0; i < 100_000; i++)
        {
            text.Append("nut ").Append(i).Append(";380Nm\n");
        }

        var watch = Stopwatch.StartNew();
        InputException refusal = Assert.Throws<InputException>(() => FastenerList.Parse("f.csv", text.ToString()));

        Assert.StartsWith("f.csv(10002,1): more than 10000 fasteners.", refusal.Line, StringComparison.Ordinal);
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(5));
    }
}
