using Leverage.Reading;
using Leverage.Requests;
using Leverage.Workshop.Files;

namespace Leverage.Workshop.Tests.Files;

public sealed class TomlSectionTests
{
    [Fact]
    public void A_value_that_cannot_be_read_says_file_line_column_and_key()
    {
        TomlSection file = TomlFile.Parse("chest.toml", "[[bars]]\nlength = 600\n");
        var error = Assert.Throws<InputException>(() => file.Sections("bars")[0].Quantity(LooseningFields.Bar, "length"));
        Assert.StartsWith("chest.toml(2,10): length: cannot read '600': it has no unit.", error.Line, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_key_names_the_nearest_known_one()
    {
        TomlSection file = TomlFile.Parse("chest.toml", "drive = \"1/2\"\nlenght = \"600mm\"\n");
        file.Text("drive");
        file.Quantity(LooseningFields.Bar, "length");
        var error = Assert.Throws<InputException>(file.Done);
        Assert.Equal("chest.toml(2,1): lenght: is no key known here. Nearest: length. Known: drive, length.", error.Line);
    }

    [Fact]
    public void Tables_of_one_name_keep_their_order_with_others_in_between()
    {
        TomlSection file = TomlFile.Parse("c", "[[a]]\nn = 1\n[[b]]\nn = 2\n[[a]]\nn = 3\n[a.deep]\nx.y = 'z'\n");
        Assert.Equal("1 3", string.Join(' ', file.Sections("a").Select(section => section.Text("n"))));
        Assert.Equal("z", file.Sections("a")[1].Section("deep")!.Section("x")!.Text("y"));
    }

    [Theory]
    [InlineData("a = 1\na = 2\n", "c(2,1)")]
    [InlineData("[x]\n[x]\n", "c(2,1)")]
    [InlineData("a = 600mm\n", "c(1,8)")]
    [InlineData("a = \n", "c(1,5)")]
    [InlineData("a = \"x\n", "c(1,7)")]
    [InlineData("a = [1,\n", "c(2,1)")]
    public void What_is_no_TOML_is_refused_with_its_place(string text, string place)
    {
        var error = Assert.Throws<InputException>(() => TomlFile.Parse("c", text));
        Assert.Equal(place, error.Subject);
        Assert.DoesNotContain('\n', error.Line);
    }
}
