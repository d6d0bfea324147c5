using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using Leverage.Requests;
using Leverage.Wording;
using Leverage.Assessments;
using Leverage.Hostile.Tests.Running;
using Leverage.Hostile.Tests.Schemas;
using Leverage.LoadPath;
using Leverage.Reading;
using Leverage.Tests;
using Leverage.Tests.Assessments;
using UnitsNet;

namespace Leverage.Hostile.Tests.Laws;

/// <summary>What holds of any set-up a person could describe, sensible or not.</summary>
public sealed class SetupLaws
{
    /// <summary>Chances are integrals worked out in steps: as far as two of them may stray from each other.</summary>
    private const double Rounding = 1e-6;

    /// <summary>One set-up in so many is validated against the schema, which takes as long as all the laws together.</summary>
    private const int Validated = 10;

    private int _drawn;
    private int _judged;
    private int _silenced;

    [Fact]
    public void Limits_hands_units_and_schema_hold_to_their_laws_for_any_set_up()
    {
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;
        Amount amount = Amount.Of("LAWS", 3_000);
        Check.One(amount.Config, Prop.ForAll(SizedValues.Places(), SizedValues.Sized(), (places, by) => All(places, by)));
        Assert.True(_judged > amount.Count / 4, "Most of the set-ups drawn are refused: the laws are hardly tried.");
        TestContext.Current.SendDiagnosticMessage(string.Create(
            CultureInfo.InvariantCulture,
            $"seed {amount.Seed}, {_drawn} set-ups drawn, {_judged} judged, {_silenced} by a raised limit from what gives to what stays stuck"));
    }

    private void All(Places places, Sized by)
    {
        _drawn++;
        LooseningRequest request = AnyRequest.From(places);
        if (Setup(request) is not { } setup || Judged(setup) is not { } assessment)
        {
            return;
        }

        _judged++;
        RaisedLimits(assessment, by);
        StrongerHands(assessment, by);
        Assert.Null(Units.Differ(request, assessment));
        if (_judged % Validated == 0)
        {
            Assert.Null(Published.Broken("loosen", LooseningAnswers.ToJson(LooseningAnswers.Of(assessment, UnitStyle.Metric))));
        }
    }

    /// <summary>
    /// Raising a limit never makes the verdict worse. One way is left: what gave in a few per cent of cases now stays stuck
    /// in them, and that may just pass half of all cases; it is then less likely to give and no less likely to come undone.
    /// </summary>
    private void RaisedLimits(LooseningAssessment before, Sized by)
    {
        LinkLimit[] links = [.. before.Links.Select(link => link.Limit)];
        Surroundings around = Surroundings.Of(before.Setup, before.Nut, before.Lever, before.Hold?.Capacity.TotalNmm);
        double more = by.Log(1.0001, 100);
        for (int i = 0; i < links.Length; i++)
        {
            LinkLimit[] raised = [.. links.Select((link, at) => at == i ? link with { LimitNmm = link.LimitNmm * more } : link)];
            NoWorse(before.Judgement, Judge(before, raised, around));
        }

        Judgement held = Judge(before, links, around with { HoldNmm = around.HoldNmm * more });
        Judgement gripped = Judge(before, links, around with { HeldRad = around.HeldRad + by.Share, ReleaseRad = around.ReleaseRad + by.Share });
        Assert.True(held.Verdict <= before.Verdict && gripped.Verdict <= before.Verdict, "a higher hold or a later slip made the verdict worse");
    }

    private void NoWorse(Judgement before, Judgement after)
    {
        double lost = before.ComesLoose - after.ComesLoose;
        double gained = after.Gives - before.Gives;
        Assert.True(lost <= Rounding, $"a raised limit lowered the chance that it comes undone by {lost.ToString("R", null)}");
        Assert.True(gained <= Rounding, $"a raised limit raised the chance that something gives by {gained.ToString("R", null)}");
        if (after.Verdict > before.Verdict)
        {
            _silenced++;
            Assert.Equal((Verdict.Go, VerdictRules.MayStayStaysTight), (before.Verdict, after.Rules));
            Assert.True(after.StaysTight - before.StaysTight <= before.Gives - after.Gives + Rounding, "more stays stuck than gave before");
        }
    }

    /// <summary>More force never lowers the chance that it comes undone by more than it raises the chance that something gives.</summary>
    private static void StrongerHands(LooseningAssessment before, Sized by)
    {
        if (before.Lever is null)
        {
            return;
        }

        Force force = Force.FromNewtons(before.Hand.Quantile(0.5));
        LooseningSetup hands = before.Setup with { Hands = before.Setup.Hands with { Measured = force } };
        LooseningSetup stronger = before.Setup with { Hands = before.Setup.Hands with { Measured = force * by.Log(1, 10) } };
        if (Judged(hands) is { } weak && Judged(stronger) is { } strong)
        {
            double lost = weak.Judgement.ComesLoose - strong.Judgement.ComesLoose;
            Assert.True(lost <= strong.Judgement.Gives - weak.Judgement.Gives + Rounding, "more force left more stuck");
        }
    }

    private static Judgement Judge(LooseningAssessment of, LinkLimit[] links, Surroundings around) =>
        Judgement.Of(of.Nut, of.Hand, of.Lever?.ReachMm, links, around, new double[links.Length]);

    private static LooseningSetup? Setup(LooseningRequest request)
    {
        try
        {
            return LooseningDefaults.Complete(request);
        }
        catch (InputException)
        {
            return null;
        }
    }

    private static LooseningAssessment? Judged(LooseningSetup setup)
    {
        try
        {
            return LooseningAssessor.WithoutAdvice(setup);
        }
        catch (InputException)
        {
            return null;
        }
    }
}
