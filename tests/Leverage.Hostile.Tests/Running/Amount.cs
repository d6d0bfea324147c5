using System.Globalization;
using FsCheck;

namespace Leverage.Hostile.Tests.Running;

/// <summary>How many inputs and from which seed: few in an ordinary run of the tests, what the scripts say in theirs.</summary>
/// <param name="Count">How many.</param>
/// <param name="Seed">The seed; the same seed draws the same inputs.</param>
internal sealed record Amount(int Count, ulong Seed)
{
    /// <summary>What is set for a kind of run, such as HOSTILE or LAWS.</summary>
    internal static Amount Of(string kind, int usual) =>
        new((int)(Setting($"LEVERAGE_{kind}_COUNT") ?? (ulong)usual), Setting($"LEVERAGE_{kind}_SEED") ?? 2026);

    /// <summary>The library's settings; it wants an odd number beside the seed.</summary>
    internal Config Config => FsCheck.Config.QuickThrowOnFailure
        .WithMaxTest(Count).WithQuietOnSuccess(true).WithReplay(Seed, (Seed * 0x9E3779B97F4A7C15) | 1);

    private static ulong? Setting(string name) =>
        ulong.TryParse(Environment.GetEnvironmentVariable(name), CultureInfo.InvariantCulture, out ulong value) ? value : null;
}
