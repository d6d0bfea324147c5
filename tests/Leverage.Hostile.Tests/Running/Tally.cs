using System.Globalization;
using Leverage.Hostile.Tests.Generated;

namespace Leverage.Hostile.Tests.Running;

/// <summary>How many inputs went through which door.</summary>
internal sealed class Tally
{
    private readonly int[] _counts = new int[Enum.GetValues<Door>().Length];

    /// <summary>All of them.</summary>
    internal int All => _counts.Sum();

    /// <summary>Counts one.</summary>
    internal void Count(Door door) => _counts[(int)door]++;

    /// <inheritdoc/>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{All} inputs: {_counts[(int)Door.Reader]} values, {_counts[(int)Door.File]} files, {_counts[(int)Door.Command]} command lines, {_counts[(int)Door.Page]} requests");
}
