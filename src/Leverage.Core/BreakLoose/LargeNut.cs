using Leverage.Probability;
using Leverage.Tables;
using Leverage.Threads;

namespace Leverage.BreakLoose;

/// <summary>A published or recalled tightening torque of the table <c>large-nuts</c>.</summary>
/// <param name="On">Where it sits, a key of the table <c>places</c>; other keys are listed only.</param>
/// <param name="Application">What it is, in words.</param>
/// <param name="Threads">The thread or the span of threads as the table writes it; blank where unknown.</param>
/// <param name="LowNm">Least torque named, N·m.</param>
/// <param name="TypicalNm">Usual torque named, N·m.</param>
/// <param name="HighNm">Largest torque named, N·m.</param>
/// <param name="FlatsMm">Widths across flats it comes in, mm, the usual one first.</param>
/// <param name="Source">Where it is from.</param>
/// <param name="Status">How far it may be trusted.</param>
public sealed record LargeNut(
    string On,
    string Application,
    string Threads,
    double? LowNm,
    double? TypicalNm,
    double? HighNm,
    IReadOnlyList<double> FlatsMm,
    string Source,
    ValueStatus Status)
{
    /// <summary>Widths this near count as the same hexagon: 15/16 in and 24 mm, 1-1/4 in and 32 mm (judgement).</summary>
    public const double SameFlatsMm = 0.3;

    /// <summary>Threads whose diameters differ by no more than this are of one size, mm: an inch size and its rounding.</summary>
    private const double SameDiameterMm = 0.1;

    /// <summary>A torque this near an end of a row still belongs to it (judgement).</summary>
    private const double About = 0.1;

    /// <summary>All rows, in the order of the table.</summary>
    public static IReadOnlyList<LargeNut> All { get; } = [.. TableCatalog.Tables["large-nuts"].Rows.Select(Read)];

    /// <summary>The row as a lognormal torque: typical, or the geometric middle of the ends, or the one end named; the ends as P10 and P90.</summary>
    public Spread TorqueNmm => new(1000 * Middle, LowNm is { } low && HighNm is { } high ? LogNormalSpread.SigmaFromP10P90(low, high) : 0);

    private double Middle =>
        TypicalNm ?? (LowNm is { } low && HighNm is { } high ? Math.Sqrt(low * high) : LowNm ?? HighNm ?? throw new InvalidOperationException($"{Application}: no torque"));

    /// <summary>Whether it is set to about a torque for a reason of its own: a bearing, a seal, a wheel; a general bolt or a structure's is set by its strength.</summary>
    /// <param name="torque">The torque.</param>
    /// <returns>True within a tenth of its ends, or of the one torque named.</returns>
    public bool IsSetTo(UnitsNet.Torque torque) => On is not ("general" or "structure" or "first-stage" or "adjusting")
        && torque.NewtonMeters >= (LowNm ?? Middle) * (1 - About) && torque.NewtonMeters <= (HighNm ?? Middle) * (1 + About);

    /// <summary>Whether it comes with a hexagon of this width.</summary>
    /// <param name="flatsMm">Width across flats, mm.</param>
    /// <returns>True where one of its widths is within 0.3 mm.</returns>
    public bool Fits(double flatsMm) => FlatsMm.Any(own => Math.Abs(own - flatsMm) <= SameFlatsMm);

    /// <summary>Whether it comes on a thread of this size; pitch counts only where both name one.</summary>
    /// <param name="thread">The thread.</param>
    /// <returns>True where the thread lies in the row's span.</returns>
    public bool Fits(ScrewThread thread)
    {
        ArgumentNullException.ThrowIfNull(thread);
        return Threads.Split(" or ").Any(span => Holds(span.Split(" to "), thread));
    }

    /// <summary>How far its nearest hexagon is from a width, mm.</summary>
    internal double Off(double flatsMm) => FlatsMm.Min(own => Math.Abs(own - flatsMm));

    private static bool Holds(string[] span, ScrewThread thread) => span.Length == 2
        ? thread.DiameterMm >= Diameter(span[0]) - SameDiameterMm && thread.DiameterMm <= Diameter(span[1]) + SameDiameterMm
        : span[0].Length > 0 && (span[0] == thread.Designation
            || !HasPitch(span[0]) && Math.Abs(Diameter(span[0]) - thread.DiameterMm) <= SameDiameterMm);

    /// <summary>Whether a thread is written with its pitch: M24x1.5, 3/4-16.</summary>
    private static bool HasPitch(string thread) =>
        thread.StartsWith('M') ? thread.Contains('x', StringComparison.Ordinal) : thread.LastIndexOf('-') > thread.IndexOf('/', StringComparison.Ordinal);

    private static double Diameter(string size) => BySight.Coarse(size).DiameterMm;

    private static LargeNut Read(TableRow row) => new(
        row.Key,
        row.Text("application"),
        row.OptionalText("thread") ?? "",
        row.OptionalNumber("low_nm"),
        row.OptionalNumber("typical_nm"),
        row.OptionalNumber("high_nm"),
        [row.Number("flats_mm"), .. Others(row)],
        row.Source,
        row.Status);

    private static IEnumerable<double> Others(TableRow row)
    {
        foreach (string width in row.OptionalText("other_flats")?.Split(' ') ?? [])
        {
            yield return TableRow.TryNumber(width, out double mm) ? mm : throw row.Error("other_flats", "widths such as 30 33");
        }
    }
}
