using Leverage.Hostile.Tests.Generated;
using Leverage.Hostile.Tests.Running;

namespace Leverage.Hostile.Tests;

/// <summary>Inputs that once failed, each in its shortest form, so that none comes back.</summary>
public sealed class FoundTests
{
    [Theory]
    [InlineData("stress", "6E302 ksi")]
    [InlineData("torque", "1e308kgf.m")]
    [InlineData("length", "-1e308ft")]
    public void A_number_that_overflows_in_another_unit_is_out_of_range(string reader, string text) =>
        Assert.Null(Trial.Of(new HostileInput(Door.Reader, [reader, text])));

    [Fact]
    public void Digits_without_end_in_a_fraction_are_no_finite_number()
    {
        string digits = new('9', 400);
        foreach (string text in (string[])[$"1/{digits}mm", $"1-{digits}/{digits}mm", $"1-{digits}/2mm"])
        {
            Assert.Null(Trial.Of(new HostileInput(Door.Reader, ["length", text])));
        }
    }

    [Theory]
    [InlineData("\"\\")]
    [InlineData("title = \"x\\")]
    [InlineData("note = \"\"\"\\")]
    [InlineData("[x]\n\"a\\")]
    public void A_file_that_ends_behind_a_backslash_is_refused_where_it_ends(string text)
    {
        Assert.Null(Trial.Of(new HostileInput(Door.File, ["chest"], text)));
        Assert.Null(Trial.Of(new HostileInput(Door.File, ["job"], text)));
    }

    [Theory]
    [InlineData("job", "")]
    [InlineData("job", " ")]
    [InlineData("pick", "460Nm", "--chest", "")]
    [InlineData("\u0007")]
    [InlineData("R\u0017", "tighten")]
    [InlineData("tighten", "--thread", "M12", "--grade", "8\u007f.8", "--grade", "8.8")]
    [InlineData("job", "\u0018H\u0001?o|")]
    public void Empty_names_and_control_characters_are_refused_in_one_line(params string[] words) =>
        Assert.Null(Trial.Of(new HostileInput(Door.Command, words)));

    [Theory]
    [InlineData("tighten", "--thread", "M20", "--dw", "2.2cm")]
    [InlineData("tighten", "--thread", "M20", "--dw", "22mm", "--dh", "0.022m")]
    [InlineData("slip", "--bar", "600mm", "--bar-diameter", "20mm", "--tube", "2.2cmx11mmx1m")]
    [InlineData("slip", "--bar", "600mm", "--bar-diameter", "20mm", "--tube", "5.6cmx28mmx1m")]
    public void Sizes_that_are_equal_but_for_rounding_are_equal(params string[] words) =>
        Assert.Null(Trial.Of(new HostileInput(Door.Command, words)));

    [Theory]
    [InlineData("--held", "3000Nm")]
    [InlineData("--held", "74.9Nm")]
    [InlineData("--came", "3Nm", "--prevailing", "5Nm")]
    public void What_no_nut_of_its_kind_could_have_shown_is_refused(params string[] shown) => Assert.Null(Trial.Of(new HostileInput(
        Door.Command, ["loosen", "14Nm", "--thread", "M10x1", "--bar", "300mm", "--drive", "1/2", "--hex", "11mm", .. shown])));
}
