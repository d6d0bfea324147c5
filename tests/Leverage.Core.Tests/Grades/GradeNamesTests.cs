using Leverage.Grades;
using Leverage.Reading;
using Leverage.Threads;

namespace Leverage.Tests.Grades;

public sealed class GradeNamesTests
{
    private static readonly ScrewThread M12 = ThreadCatalog.Named("M12");
    private static readonly ScrewThread Half = ThreadCatalog.Named("1/2-13");

    [Theory]
    [InlineData("8.8", 640, 800)]
    [InlineData(" 10.9 ", 940, 1040)]
    [InlineData("12.9", 1100, 1220)]
    [InlineData("A2-70", 450, 700)]
    [InlineData("a2-70", 450, 700)]
    public void A_metric_grade_is_read_by_its_name(string text, double yieldMpa, double tensileMpa)
    {
        Grade grade = GradeCatalog.Bolt(text, M12);
        Assert.Equal((yieldMpa, tensileMpa), (grade.YieldMpa, grade.TensileMpa));
    }

    [Theory]
    [InlineData("SAE 5")]
    [InlineData("SAE5")]
    [InlineData("sae 5")]
    [InlineData("SAE grade 5")]
    public void An_inch_grade_is_read_however_it_is_spaced(string text) =>
        Assert.Equal("SAE 5", GradeCatalog.Bolt(text, Half).Name);

    [Theory]
    [InlineData("M16", 640)]
    [InlineData("M18", 660)]
    [InlineData("M24x1.5", 660)]
    public void Class_8_8_is_stronger_above_16_mm(string thread, double yieldMpa) =>
        Assert.Equal(yieldMpa, GradeCatalog.Bolt("8.8", ThreadCatalog.Named(thread)).YieldMpa);

    [Fact]
    public void A_nut_class_is_told_from_a_bolt_s_grade() => Assert.Equal(
        "'8' is a nut class: a nut strips, its bolt yields. Give the bolt's grade, such as 8.8.",
        Assert.Throws<InputException>(() => GradeCatalog.Bolt("8", M12)).Line);

    [Fact]
    public void A_grade_without_figures_at_a_size_names_the_sizes_it_has()
    {
        string line = Assert.Throws<InputException>(() => GradeCatalog.Bolt("9.8", ThreadCatalog.Named("M24"))).Line;
        Assert.Contains("grade 9.8 has no figures at M24", line, StringComparison.Ordinal);
        Assert.Contains("0 to 16 mm", line, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("8.9", "8.8")]
    [InlineData("SAE 6", "SAE 5")]
    [InlineData("A2-75", "A2-70")]
    public void An_unknown_grade_gets_the_nearest_names(string text, string near)
    {
        string line = Assert.Throws<InputException>(() => GradeCatalog.Bolt(text, M12)).Line;
        Assert.Contains("is not a bolt grade known here. Nearest: ", line, StringComparison.Ordinal);
        Assert.Contains(near, line, StringComparison.Ordinal);
    }

    [Fact]
    public void Grades_offered_for_a_thread_yield_below_their_tensile_strength_and_suit_its_family()
    {
        foreach (ScrewThread thread in (ScrewThread[])[M12, Half])
        {
            var grades = GradeCatalog.BoltsFor(thread);
            Assert.NotEmpty(grades);
            Assert.Equal(grades.Select(grade => grade.YieldMpa).Order(), grades.Select(grade => grade.YieldMpa));
            Assert.All(grades, grade =>
            {
                Assert.InRange(grade.YieldMpa, 200, grade.TensileMpa - 1);
                Assert.InRange(grade.UsableProofMpa, 0.6 * grade.YieldMpa, grade.YieldMpa);
                Assert.Equal(thread.Family == ThreadFamily.Metric, grade.Standard.StartsWith("ISO", StringComparison.Ordinal));
            });
        }
    }
}
