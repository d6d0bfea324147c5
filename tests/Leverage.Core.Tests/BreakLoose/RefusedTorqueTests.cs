using System.Globalization;
using Leverage.BreakLoose;
using Leverage.Preload;
using Leverage.Reading;
using Leverage.Threads;

namespace Leverage.Tests.BreakLoose;

/// <summary>A torque no bolt like this takes, however rough its thread: the refusal names the most it does take, and what would.</summary>
public sealed class RefusedTorqueTests
{
    /// <summary>All of the yield at friction 1, the roughest believed, with the torsion it then carries.</summary>
    [Theory]
    [InlineData("M8", "8.8")]
    [InlineData("M12", "8.8")]
    [InlineData("M24x1.5", "10.9")]
    public void The_torque_named_is_taken_and_one_newton_metre_more_is_not(string size, string grade)
    {
        ScrewThread thread = ThreadCatalog.Named(size);
        InputException refusal = Refusal(thread, grade, 10 * thread.DiameterMm * thread.DiameterMm);
        string words = refusal.Message[refusal.Message.IndexOf("at most ", StringComparison.Ordinal)..];
        double most = double.Parse(words.Split(' ')[2], CultureInfo.InvariantCulture);
        double yields = JointTorque.Tightening(
            AssemblyPreload.AtYieldShare(1, Nuts.Of("used", 1, size, 0.14, grade).Grade!.YieldMpa, thread.Section(1, TensionAndTorsion.Plastic)),
            thread.Joint(HexagonCatalog.Bearing(thread).BearingMm),
            JointFriction.Same(1));
        Assert.Equal(Math.Floor(yields / 1000), most);
        Assert.True(BreakLooseSpread.Joint(Nuts.Of("used", most, size, 0.14, grade)).PreloadN > 0);
        Refusal(thread, grade, most + 1);
    }

    /// <summary>M8 8.8 takes 62 N·m, 10.9 takes 91: at 70 the stronger grade is the cure, at 150 no grade is and the torque is wrong.</summary>
    [Theory]
    [InlineData("M8", "8.8", 70, "10.9")]
    [InlineData("M8", "8.8", 100, "12.9")]
    [InlineData("M8", "8.8", 150, "62Nm")]
    [InlineData("M8", "12.9", 150, "107Nm")]
    public void The_cure_is_the_weakest_stronger_grade_that_takes_it_and_else_the_torque(string size, string grade, double nm, string cure) =>
        Assert.Equal(cure, Assert.Single(Refusal(ThreadCatalog.Named(size), grade, nm).Cures).Example);

    private static InputException Refusal(ScrewThread thread, string grade, double nm) =>
        Assert.Throws<InputException>(() => BreakLooseSpread.Joint(Nuts.Of("used", nm, thread.Designation, 0.14, grade)));
}
