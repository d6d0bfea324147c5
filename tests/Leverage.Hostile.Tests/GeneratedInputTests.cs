using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using Leverage.Hostile.Tests.Generated;
using Leverage.Hostile.Tests.Running;

namespace Leverage.Hostile.Tests;

/// <summary>Inputs out of the real grammars, mostly nearly right, through every door.</summary>
public sealed class GeneratedInputTests
{
    /// <summary>Inputs in an ordinary run of the tests; the script sets another number and a seed.</summary>
    private const int Usual = 20_000;

    [Fact]
    public void Any_input_is_answered_or_refused_in_one_line_and_leaves_nothing_behind()
    {
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;
        int count = (int)(Setting("LEVERAGE_HOSTILE_COUNT") ?? Usual);
        ulong seed = Setting("LEVERAGE_HOSTILE_SEED") ?? 2026;
        var tally = new Tally();
        Config config = Config.QuickThrowOnFailure.WithMaxTest(count).WithQuietOnSuccess(true).WithReplay(seed, Gamma(seed));
        Check.One(config, Prop.ForAll(Arb.From(Inputs.Any, Simpler.Of), input =>
        {
            tally.Count(input.Door);
            string? broken = Trial.Of(input);
            Assert.True(broken is null, $"{broken}\n{input.ToString()}");
        }));
        Assert.Equal(count, tally.All);
        TestContext.Current.SendDiagnosticMessage($"seed {seed.ToString(CultureInfo.InvariantCulture)}, {tally.ToString()}");
    }

    private static ulong? Setting(string name) =>
        ulong.TryParse(Environment.GetEnvironmentVariable(name), CultureInfo.InvariantCulture, out ulong value) ? value : null;

    /// <summary>The library wants an odd number beside the seed.</summary>
    private static ulong Gamma(ulong seed) => (seed * 0x9E3779B97F4A7C15) | 1;
}
