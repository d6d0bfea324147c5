using Leverage.Assessments;
using Leverage.LoadPath;
using Leverage.Requests;
using Leverage.Workshop.Chest;
using Leverage.Workshop.Picking;
using UnitsNet;

namespace Leverage.Workshop.Tests.Picking;

public sealed class AgreementTests
{
    private static readonly double[] BarsMm = [150, 250, 450, 750, 1000];

    public static TheoryData<string, double, string, string> SetUps
    {
        get
        {
            var all = new TheoryData<string, double, string, string>();
            foreach (string drive in ToolStrength.Drives())
            {
                foreach (double bar in BarsMm)
                {
                    foreach (string condition in (string[])["clean", "rusted"])
                    {
                        foreach (string stance in (string[])["one-hand", "stand-push"])
                        {
                            all.Add(drive, bar, condition, stance);
                        }
                    }
                }
            }

            return all;
        }
    }

    [Fact]
    public void There_are_a_hundred_of_them() => Assert.Equal(100, SetUps.Count);

    [Theory]
    [MemberData(nameof(SetUps))]
    public void Loosen_and_pick_say_the_same_of_one_bar_and_one_socket(string drive, double barMm, string condition, string stance)
    {
        LooseningRequest nut = new()
        {
            BookTorque = Torque.FromNewtonMeters(20),
            AcrossFlats = Length.FromMillimeters(19),
            Condition = condition,
        };
        LooseningAssessment loosen = Loosening.Assess(nut with { Drive = drive, Bar = Length.FromMillimeters(barMm), Stance = stance });
        PickAssessment pick = Picker.Pick(new PickRequest { Nut = nut, Chest = Chest(drive, barMm), Stances = [stance] });
        PickedSetUp only = Assert.Single(pick.SetUps);
        Assert.Equal(loosen.Verdict, pick.Verdict);
        Assert.Equal(loosen.Judgement.Shares, only.Assessment.Judgement.Shares);
        Assert.Equal(loosen.Judgement.StrongPullNmm, only.Assessment.Judgement.StrongPullNmm);
    }

    [Fact]
    public void A_short_bar_is_something_to_pick()
    {
        LooseningRequest nut = new() { BookTorque = Torque.FromNewtonMeters(20), AcrossFlats = Length.FromMillimeters(19) };
        LooseningAssessment loosen = Loosening.Assess(nut with { Drive = "1/2", Bar = Length.FromMillimeters(150) });
        PickAssessment pick = Picker.Pick(new PickRequest { Nut = nut, Chest = Chest("1/2", 150) });
        Assert.Equal(loosen.Verdict, pick.Verdict);
        Assert.Equal("now", pick.Moves[0].Key);
        Assert.Equal(pick.SetUps[0].Assessment.Judgement.ComesLoose, pick.Moves[0].ComesLooseBy!.Value, 1e-9);
    }

    private static ToolChest Chest(string drive, double barMm) => new()
    {
        Path = "chest.toml",
        Bars = [new ChestBar("bar", drive, Length.FromMillimeters(barMm), null, null, null, null, null)],
        NutTools = [new NutTool("socket", ToolKind.Socket, [Length.FromMillimeters(19)], drive, null)],
    };
}
