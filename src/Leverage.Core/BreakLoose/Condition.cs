using Leverage.Tables;

namespace Leverage.BreakLoose;

/// <summary>What has become of the lubricant a joint was made with.</summary>
public enum LubricantNow
{
    /// <summary>All of it is gone.</summary>
    Gone,

    /// <summary>A solid paste stays, oil and grease are gone.</summary>
    PasteStays,

    /// <summary>It is as it was.</summary>
    Stays,
}

/// <summary>State of a joint now, from the table <c>conditions</c>.</summary>
/// <param name="Key">Its name: <c>rusted</c>.</param>
/// <param name="Words">The state in words.</param>
/// <param name="Short">The same in few words.</param>
/// <param name="IsRusty">Whether rust holds it: its corners are worn, and a penetrant has something to do.</param>
/// <param name="Basis">What the growth multiplies.</param>
/// <param name="Growth">The lognormal growth.</param>
/// <param name="LockerNm">Break torque of the thread locker on 3/8-16, N·m; 0 for none.</param>
/// <param name="RunningShare">q, torque once moving over torque to start (judgement).</param>
/// <param name="StudShare">w, share of what has grown since that sits in the thread, so twists the stud.</param>
/// <param name="Lubricant">What has become of the lubricant.</param>
/// <param name="Source">Evidence behind the row.</param>
/// <param name="Status">How far it may be trusted.</param>
public sealed record Condition(
    string Key,
    string Words,
    string Short,
    bool IsRusty,
    GrowthBasis Basis,
    Growth Growth,
    double LockerNm,
    double RunningShare,
    double StudShare,
    LubricantNow Lubricant,
    string Source,
    ValueStatus Status)
{
    /// <summary>The state taken where none is said.</summary>
    internal const string Usual = "used";

    /// <summary>The condition of a name.</summary>
    /// <param name="name">Its key.</param>
    /// <returns>The condition.</returns>
    /// <exception cref="Reading.InputException">No such condition; the message gives the nearest names.</exception>
    public static Condition Named(string name)
    {
        TableRow row = RowLookup.Named("conditions", name, "a condition");
        return new Condition(
            row.Key,
            row.Text("words"),
            row.Text("short"),
            row.Says("rust", "yes"),
            row.Text("basis") switch
            {
                "book" => GrowthBasis.Book,
                "loosening" => GrowthBasis.Loosening,
                _ => throw row.Error("basis", "book or loosening"),
            },
            Growth.Through(row.Number("growth_easy"), row.Number("growth_likely"), row.Number("growth_hard")),
            Locker(row),
            row.Number("running_share"),
            row.Number("stud_share"),
            row.Text("lubricant") switch
            {
                "gone" => LubricantNow.Gone,
                "paste" => LubricantNow.PasteStays,
                "stays" => LubricantNow.Stays,
                _ => throw row.Error("lubricant", "gone, paste or stays"),
            },
            row.Source,
            row.Status);
    }

    private static double Locker(TableRow row) => row.Text("thread_lock") switch
    {
        "none" => 0,
        "medium" => 12,
        "high" => 25,
        _ => throw row.Error("thread_lock", "none, medium or high"),
    };
}
