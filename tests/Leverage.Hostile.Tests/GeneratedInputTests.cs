using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using Leverage.Hostile.Tests.Generated;
using Leverage.Hostile.Tests.Running;

namespace Leverage.Hostile.Tests;

/// <summary>Inputs out of the real grammars, mostly nearly right, through every door.</summary>
public sealed class GeneratedInputTests
{
    [Fact]
    public void Any_input_is_answered_or_refused_in_one_line_and_leaves_nothing_behind() => Every(Inputs.Any, Amount.Of("HOSTILE", 20_000));

    [Fact]
    public void Any_key_of_a_job_is_read_and_planned_or_refused_in_one_line() => Every(Inputs.Jobs, Amount.Of("JOB_KEYS", 2_000));

    private static void Every(Gen<HostileInput> inputs, Amount amount)
    {
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;
        var tally = new Tally();
        Check.One(amount.Config, Prop.ForAll(Arb.From(inputs, Simpler.Of), input =>
        {
            tally.Count(input.Door);
            string? broken = Trial.Of(input);
            Assert.True(broken is null, $"{broken}\n{input.ToString()}");
        }));
        Assert.Equal(amount.Count, tally.All);
        TestContext.Current.SendDiagnosticMessage($"seed {amount.Seed.ToString(CultureInfo.InvariantCulture)}, {tally.ToString()}");
    }
}
