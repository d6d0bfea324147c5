using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using Leverage.Assessments;
using Leverage.Hostile.Tests.Running;
using Leverage.Hostile.Tests.Schemas;
using Leverage.LoadPath;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Tests;
using Leverage.Tests.Assessments;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Hostile.Tests.Laws;

/// <summary>What holds of any set-up a person could describe, sensible or not.</summary>
public sealed class SetupLaws
{
    /// <summary>Chances are integrals worked out in steps: as far as two of them may stray from each other.</summary>
    private const double Rounding = 2e-6;

    /// <summary>One set-up in so many is validated against the schema, which takes as long as all the laws together.</summary>
    private const int Validated = 10;

    private int _drawn;
    private int _judged;

    [Fact]
    public void Limits_hands_units_and_schema_hold_to_their_laws_for_any_set_up()
    {
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;
        Amount amount = Amount.Of("LAWS", 3_000);
        Check.One(amount.Config, Prop.ForAll(SizedValues.Draws(), SizedValues.Sized(), (draws, by) => All(draws, by)));
        Assert.True(_judged > amount.Count / 4, "Most of the set-ups drawn are refused: the laws are hardly tried.");
        TestContext.Current.SendDiagnosticMessage(string.Create(
            CultureInfo.InvariantCulture,
            $"seed {amount.Seed}, {_drawn} set-ups drawn, {_judged} judged"));
    }

    private void All(Draws draws, Sized by)
    {
        _drawn++;
        LooseningRequest request = AnyRequest.From(draws);
        if (Setup(request) is not { } setup || Judged(setup) is not { } assessment)
        {
            return;
        }

        _judged++;
        RaisedLimits(assessment, by);
        StrongerHands(assessment, by);
        string? differs = Units.Differ(request, assessment);
        Assert.True(differs is null, differs);
        if (_judged % Validated == 0)
        {
            Assert.Null(Published.Broken("loosen", LooseningAnswers.ToJson(LooseningAnswers.Of(assessment, UnitStyle.Metric))));
        }
    }

    /// <summary>
    /// Raising a limit or the hold never lowers the chance that it comes loose, raises the chance that something breaks, nor makes the verdict
    /// worse, unless what a tool now stands goes on to the bolt or its corners.
    /// </summary>
    private static void RaisedLimits(LooseningAssessment before, Sized by)
    {
        LinkLimit[] links = [.. before.Links.Select(link => link.Limit)];
        Circumstances around = Circumstances.Of(before.Setup, before.Nut, before.Hand, before.Lever, before.Hold?.Capacity);
        double more = by.Log(1.0001, 100);
        for (int i = 0; i < links.Length; i++)
        {
            LinkLimit[] raised = [.. links.Select((link, at) => at == i ? link with { LimitNmm = link.LimitNmm * more } : link)];
            NoWorse(before.Judgement, Judge(before, raised, around));
        }

        if (around.Hold is { } hold)
        {
            NoWorse(before.Judgement, Judge(before, links, around with { Hold = hold with { MedianNmm = hold.MedianNmm * more, CapNmm = hold.CapNmm * more } }));
        }
    }

    private static void NoWorse(Judgement before, Judgement after)
    {
        double lost = before.ComesLoose - after.ComesLoose;
        double gained = after.Breaks - before.Breaks;
        Assert.True(lost <= Rounding, $"a raised limit lowered the chance that it comes undone by {lost.ToString("R", null)}");
        Assert.True(gained <= Rounding, $"a raised limit raised the chance that something gives by {gained.ToString("R", null)}");
        bool passedOn = Damage(after) > Math.Max(Damage(before), VerdictOf.DamageCare);
        Assert.True(passedOn || after.Verdict <= before.Verdict, $"a raised limit made {before.Verdict.ToString()} {after.Verdict.ToString()}");
    }

    private static double Damage(Judgement judgement) => judgement.Shares.StudTwistsOff + judgement.Shares.CornersRound;

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
            Assert.True(lost <= strong.Judgement.Breaks - weak.Judgement.Breaks + Rounding, "more force left more stuck");
        }
    }

    private static Judgement Judge(LooseningAssessment of, LinkLimit[] links, Circumstances around) =>
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
