namespace Leverage.Outcomes;

/// <summary>
/// Random bits of the splitmix64 generator (Steele, Lea and Flood, 2014): the same seed gives the same bits on every
/// machine, its one word of state stays in a register, and a draw costs about a nanosecond, which no library
/// generator here does.
/// </summary>
internal static class SplitMix
{
    /// <summary>What the state grows by for each draw.</summary>
    internal const ulong Step = 0x9E3779B97F4A7C15;

    /// <summary>One part in 2³².</summary>
    internal const double Part = 1.0 / (1UL << 32);

    /// <summary>The 64 random bits of a state.</summary>
    internal static ulong Bits(ulong state)
    {
        ulong mixed = (state ^ (state >> 30)) * 0xBF58476D1CE4E5B9;
        mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
        return mixed ^ (mixed >> 31);
    }
}
