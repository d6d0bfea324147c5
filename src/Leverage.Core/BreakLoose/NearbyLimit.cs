using Leverage.Tables;
using UnitsNet;

namespace Leverage.BreakLoose;

/// <summary>What may stand near a joint that is heated, from the table <c>nearby-limits</c>.</summary>
/// <param name="Short">What it is, in few words.</param>
/// <param name="Limit">The temperature it stands.</param>
/// <param name="Status">How far that may be trusted.</param>
public sealed record NearbyLimit(string Short, Temperature Limit, ValueStatus Status)
{
    /// <summary>The thing of a name, one that stands some heat.</summary>
    /// <param name="name">Its key.</param>
    /// <returns>The thing.</returns>
    /// <exception cref="Reading.InputException">No such thing; the message gives the nearest names.</exception>
    public static NearbyLimit Named(string name)
    {
        TableRow row = RowLookup.Named("nearby-limits", name, "a thing near the heat");
        return new NearbyLimit(row.Text("short"), Temperature.FromDegreesCelsius(row.Number("limit_c")), row.Status);
    }
}
