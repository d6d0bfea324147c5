using System.Numerics;

namespace Leverage.Outcomes;

/// <summary>
/// Random numbers of the xoshiro256++ generator (Blackman and Vigna), seeded by splitmix64: the same seed gives the same
/// numbers on every machine, and a draw costs about a nanosecond, which no library generator here does.
/// </summary>
internal struct Xoshiro
{
    private ulong _a;
    private ulong _b;
    private ulong _c;
    private ulong _d;

    /// <summary>A generator of a seed.</summary>
    internal Xoshiro(ulong seed)
    {
        _a = SplitMix(ref seed);
        _b = SplitMix(ref seed);
        _c = SplitMix(ref seed);
        _d = SplitMix(ref seed);
    }

    /// <summary>The next 64 random bits.</summary>
    internal ulong Next()
    {
        ulong result = BitOperations.RotateLeft(_a + _d, 23) + _a;
        ulong shifted = _b << 17;
        _c ^= _a;
        _d ^= _b;
        _b ^= _c;
        _a ^= _d;
        _c ^= shifted;
        _d = BitOperations.RotateLeft(_d, 45);
        return result;
    }

    /// <summary>A number from 0 to just below 1.</summary>
    internal double NextDouble() => (Next() >> 11) * (1.0 / (1UL << 53));

    private static ulong SplitMix(ref ulong state)
    {
        state += 0x9E3779B97F4A7C15;
        ulong mixed = state;
        mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9;
        mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
        return mixed ^ (mixed >> 31);
    }
}
