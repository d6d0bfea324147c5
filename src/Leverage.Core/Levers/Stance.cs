using Leverage.Probability;
using Leverage.Tables;

namespace Leverage.Levers;

/// <summary>Which column of the stance table a person reads.</summary>
public enum Person
{
    /// <summary>The men's column.</summary>
    Man,

    /// <summary>The women's column.</summary>
    Woman,
}

/// <summary>Way the hands push a level bar.</summary>
public enum Push
{
    /// <summary>Down, with body weight.</summary>
    Down,

    /// <summary>Up, with the legs.</summary>
    Up,

    /// <summary>Along the ground or away from it, with arms and legs.</summary>
    Across,
}

/// <summary>How the body is held.</summary>
public enum Posture
{
    /// <summary>Standing.</summary>
    Standing,

    /// <summary>Kneeling.</summary>
    Kneeling,

    /// <summary>On the back: the floor reacts.</summary>
    Lying,
}

/// <summary>A way to stand at a bar, from the table <c>stances</c>.</summary>
/// <param name="Key">Its name: <c>stand-push</c>.</param>
/// <param name="Words">The stance in words.</param>
/// <param name="Posture">How the body is held.</param>
/// <param name="Push">Way the hands push.</param>
/// <param name="GripOffsetMm">End of the lever to middle of the hands, mm.</param>
/// <param name="MassExponent">n of the scaling with body mass.</param>
/// <param name="Men">Force of men at reference mass, N, as a lognormal.</param>
/// <param name="Women">Force of women at reference mass, N, as a lognormal.</param>
public sealed record Stance(
    string Key, string Words, Posture Posture, Push Push, double GripOffsetMm, double MassExponent, Spread Men, Spread Women)
{
    /// <summary>A lever shorter than this is one-hand work where no stance is named, mm (judgement).</summary>
    public const double OneHandBelowMm = 300;

    /// <summary>The stance in few words, the posture where it is not standing: "pushing down", "kneeling, pulling".</summary>
    public required string Short { get; init; }

    /// <summary>Whether it leaves no room for a tube or a long lever: on one's back, at arm's length.</summary>
    public bool IsCramped { get; init; }

    /// <summary>The stance of the same posture in which one pushes harder; null for none.</summary>
    public string? Better { get; init; }

    /// <summary>How far its row may be trusted.</summary>
    public ValueStatus Status { get; init; }

    /// <summary>Reference body mass of the men's column, kg (national survey median).</summary>
    public const double ReferenceManKg = 84.6;

    /// <summary>Reference body mass of the women's column, kg (national survey median).</summary>
    public const double ReferenceWomanKg = 66.8;

    /// <summary>Spread of a force the person measured: ±10 % from P10 to P90 (judgement).</summary>
    public static double MeasuredSigma { get; } = LogNormalSpread.SigmaFromP10P90(0.9, 1.1);

    /// <summary>Reference body mass of a column, kg.</summary>
    /// <param name="person">Man or woman.</param>
    /// <returns>Mass, kg.</returns>
    public static double ReferenceKg(Person person) => person == Person.Man ? ReferenceManKg : ReferenceWomanKg;

    /// <summary>The stance of a name.</summary>
    /// <param name="name">Its key.</param>
    /// <returns>The stance.</returns>
    /// <exception cref="Reading.InputException">No such stance; the message gives the nearest names.</exception>
    public static Stance Named(string name) => Read(RowLookup.Named("stances", name, "a stance"));

    /// <summary>All stances of the table, in its order.</summary>
    /// <returns>The stances.</returns>
    public static IReadOnlyList<Stance> All() => [.. TableCatalog.Tables["stances"].Rows.Select(Read)];

    /// <summary>The stance taken where none is named: one hand on a short lever, leaning on a long one.</summary>
    /// <param name="toolMm">Length of the lever, mm; null where it is not known.</param>
    /// <returns>The stance.</returns>
    public static Stance Usual(double? toolMm) => Named(toolMm < OneHandBelowMm ? "one-hand" : "stand-push");

    /// <summary>The most these hands can give: body weight for a push or pull down with the feet or knees on the ground.</summary>
    /// <param name="massKg">Body mass, kg.</param>
    /// <returns>Force, N; infinite where the floor or the legs react.</returns>
    public double CapN(double massKg) => Push == Push.Down && Posture != Posture.Lying
        ? HandForce.PushDownCap(massKg)
        : double.PositiveInfinity;

    /// <summary>Force of a person's hands in this stance, N.</summary>
    /// <param name="person">Man or woman.</param>
    /// <param name="massKg">Body mass, kg.</param>
    /// <returns>Spread of the force, and the most it can be.</returns>
    public (Spread Force, double CapN) Force(Person person, double massKg)
    {
        Spread table = person == Person.Man ? Men : Women;
        double median = HandForce.Scaled(table.Median, massKg, ReferenceKg(person), MassExponent);
        return (new Spread(median, table.Sigma), CapN(massKg));
    }

    private static Stance Read(TableRow row) => new(
        row.Key,
        row.Text("words"),
        Enum.Parse<Posture>(row.Text("posture"), true),
        Enum.Parse<Push>(row.Text("pushes"), true),
        row.Number("grip_offset_mm"),
        row.Number("mass_exponent"),
        Column(row, "men"),
        Column(row, "women"))
    {
        Short = row.Text("short"),
        IsCramped = row.Says("cramped", "yes"),
        Better = row.OptionalText("better"),
        Status = row.Status,
    };

    private static Spread Column(TableRow row, string who) => new(
        row.Number($"{who}_likely_n"),
        LogNormalSpread.SigmaFromP5P95(row.Number($"{who}_weak_n"), row.Number($"{who}_strong_n")));
}
