using Leverage.Reading;
using Leverage.Threads;

namespace Leverage.Tests.Threads;

public sealed class ThreadNamesTests
{
    [Theory]
    [InlineData("M24x1.5", "M24x1.5", 24, 1.5)]
    [InlineData("m24X1.5", "M24x1.5", 24, 1.5)]
    [InlineData("M24×1.5", "M24x1.5", 24, 1.5)]
    [InlineData("M24*1.5", "M24x1.5", 24, 1.5)]
    [InlineData(" M24 x 1.5 ", "M24x1.5", 24, 1.5)]
    [InlineData("M24", "M24", 24, 3)]
    [InlineData("M24x3", "M24", 24, 3)]
    [InlineData("m6", "M6", 6, 1)]
    [InlineData("M12x1.25", "M12x1.25", 12, 1.25)]
    public void A_metric_thread_is_read_however_it_is_written(string text, string name, double diameterMm, double pitchMm)
    {
        ScrewThread thread = ThreadCatalog.Named(text);
        Assert.Equal(ThreadFamily.Metric, thread.Family);
        Assert.Equal(name, thread.Designation);
        Assert.Equal((diameterMm, pitchMm), (thread.DiameterMm, thread.PitchMm));
    }

    [Theory]
    [InlineData("1/2-20", "1/2-20", 12.7, 20)]
    [InlineData("1/2-20UNF", "1/2-20", 12.7, 20)]
    [InlineData("1/2-20unf", "1/2-20", 12.7, 20)]
    [InlineData("1/2\"-20", "1/2-20", 12.7, 20)]
    [InlineData("7/16-14UNC", "7/16-14", 11.1125, 14)]
    [InlineData("7/16-14 UNC", "7/16-14", 11.1125, 14)]
    [InlineData("1/4-28", "1/4-28", 6.35, 28)]
    public void An_inch_thread_is_read_with_and_without_its_series(string text, string name, double diameterMm, double perInch)
    {
        ScrewThread thread = ThreadCatalog.Named(text);
        Assert.Equal(ThreadFamily.Unified, thread.Family);
        Assert.Equal(name, thread.Designation);
        Assert.Equal(diameterMm, thread.DiameterMm, 1e-9);
        Assert.Equal(25.4 / perInch, thread.PitchMm, 1e-9);
    }

    [Fact]
    public void Every_thread_of_the_tables_is_found_by_its_own_name_and_as_it_is_printed() => Assert.All(AnyThread.All, thread =>
    {
        Assert.Equal(thread, ThreadCatalog.Named(thread.Designation));
        Assert.Equal(thread, ThreadCatalog.Named(thread.Printed));
    });

    [Theory]
    [InlineData("M24x1.4", "M24x1.5")]
    [InlineData("M25", "M24")]
    [InlineData("1/2-21", "1/2-20")]
    public void An_unknown_thread_gets_the_nearest_names_and_the_list_of_all(string text, string near)
    {
        string line = Assert.Throws<InputException>(() => ThreadCatalog.Named(text)).Line;
        Assert.Contains("is not a thread known here. Nearest: ", line, StringComparison.Ordinal);
        Assert.Contains(near, line, StringComparison.Ordinal);
        Assert.EndsWith("All of them: table threads.", line, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1/2-20UNC")]
    [InlineData("7/16-14UNF")]
    public void A_pitch_under_the_wrong_series_is_refused(string text) =>
        Assert.Throws<InputException>(() => ThreadCatalog.Named(text));

    [Fact]
    public void A_decimal_comma_in_a_thread_is_told_as_such() => Assert.Equal(
        "cannot read 'M24x1,5' as a thread: write a decimal point, as in M24x1.5.",
        Assert.Throws<InputException>(() => ThreadCatalog.Named("M24x1,5")).Line);

    [Theory]
    [InlineData("")]
    [InlineData("M")]
    [InlineData("x")]
    [InlineData("bolt")]
    [InlineData("M24x")]
    public void What_is_no_thread_is_refused(string text) => Assert.Throws<InputException>(() => ThreadCatalog.Named(text));
}
