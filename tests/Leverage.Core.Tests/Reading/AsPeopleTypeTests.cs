using Leverage.Reading;
using Leverage.Requests;

namespace Leverage.Tests.Reading;

/// <summary>Values as people type them, each by its plain meaning: unit conversions are exact by definition.</summary>
public sealed class AsPeopleTypeTests
{
    [Theory]
    [InlineData("1/2")]
    [InlineData("1/2\"")]
    [InlineData("1/2 in")]
    [InlineData("1/2in")]
    [InlineData(" 1/2 \" ")]
    [InlineData("12.5mm")]
    [InlineData("12,5 mm")]
    public void A_half_inch_drive(string text) => Assert.Equal("1/2", LooseningFields.Drive.Value(text));

    [Theory]
    [InlineData("6.3mm", "1/4")]
    [InlineData("10mm", "3/8")]
    [InlineData("20mm", "3/4")]
    [InlineData("25mm", "1")]
    [InlineData("1in", "1")]
    public void Drives_by_the_millimetres_of_ISO_1174(string text, string drive) => Assert.Equal(drive, LooseningFields.Drive.Value(text));

    [Theory]
    [InlineData("36mm", 36)]
    [InlineData("15/16", 23.8125)]
    [InlineData("15/16in", 23.8125)]
    [InlineData("1-1/4", 31.75)]
    [InlineData("1 1/4 in", 31.75)]
    [InlineData("36MM", 36)]
    [InlineData("22,5mm", 22.5)]
    public void A_hexagon_whose_fraction_without_a_unit_is_inches(string text, double mm) =>
        Assert.Equal(mm, LooseningFields.Hex.Value(text).Millimeters, 9);

    [Theory]
    [InlineData("60kg", 588.399)]
    [InlineData("60 kgf", 588.399)]
    [InlineData("100lb", 444.8221615260)]
    [InlineData("450N", 450)]
    public void A_force_read_off_a_scale(string text, double newtons) => Assert.Equal(newtons, LooseningFields.Force.Value(text).Newtons, 6);

    [Theory]
    [InlineData("85Nm", 85)]
    [InlineData("85NM", 85)]
    [InlineData("85nm", 85)]
    [InlineData("85 N M", 85)]
    [InlineData("22,5 Nm", 22.5)]
    [InlineData("0,125Nm", 0.125)]
    [InlineData("1234,5678Nm", 1234.5678)]
    public void A_torque_in_any_case_and_with_a_lone_decimal_comma(string text, double nm) =>
        Assert.Equal(nm, LooseningFields.Torque.Value(text).Torque.NewtonMeters, 9);

    [Theory]
    [InlineData("1,500Nm")]
    [InlineData("1,500.5Nm")]
    [InlineData("1,5,5Nm")]
    [InlineData(",5Nm")]
    [InlineData("1.500,5Nm")]
    [InlineData("22,Nm")]
    public void A_comma_that_could_be_something_else_is_refused(string text) =>
        Assert.Equal("torque", Assert.Throws<InputException>(() => LooseningFields.Torque.Value(text)).Subject);

    [Theory]
    [InlineData("33.7x3.2x1m", 33.7, 3.2, 1000)]
    [InlineData("33,7x3,2x1,2m", 33.7, 3.2, 1200)]
    [InlineData("33.7x3.2x100cm", 33.7, 3.2, 1000)]
    [InlineData("1.66x0.14x4ft", 42.164, 3.556, 1219.2)]
    public void A_tube_whose_length_is_in_metres_or_feet(string text, double outside, double wall, double length)
    {
        TubeText tube = LooseningFields.Tube.Value(text);
        Assert.Equal((outside, wall, length), (Math.Round(tube.Outside!.Value.Millimeters, 6), Math.Round(tube.Wall!.Value.Millimeters, 6), Math.Round(tube.Length.Millimeters, 6)));
    }

    [Theory]
    [InlineData("foo", "'foo' is not a thread known here.")]
    [InlineData("24mm", "'24mm' is not a thread known here.")]
    public void What_was_typed_is_quoted_as_it_was_typed(string text, string says) =>
        Assert.StartsWith($"thread: {says}", Assert.Throws<InputException>(() => LooseningFields.Thread.Value(text)).Line, StringComparison.Ordinal);
}
