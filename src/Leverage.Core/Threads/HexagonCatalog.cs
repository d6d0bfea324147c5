using Leverage.Tables;

namespace Leverage.Threads;

/// <summary>Heads, nuts and holes that go with a thread, from the tables.</summary>
public static class HexagonCatalog
{
    /// <summary>Mean friction diameter over nominal diameter where the tables have no face (Shigley, 9th ed., p. 438).</summary>
    public const double FaceOverDiameter = 1.25;

    /// <summary>Width across flats of the ISO or ASME nut, else head, of a thread's size.</summary>
    /// <param name="thread">The thread.</param>
    /// <returns>Width, mm, or null where the tables do not know it.</returns>
    public static double? AcrossFlatsMm(ScrewThread thread) =>
        Row(thread, "nut")?.OptionalNumber("across_flats_mm") ?? Row(thread, "head")?.OptionalNumber("across_flats_mm");

    /// <summary>Height of the ISO or ASME nut of a thread's size, mm; 0.8 of the diameter where the tables have none (judgement).</summary>
    /// <param name="thread">The thread.</param>
    /// <returns>Height, mm.</returns>
    public static double NutHeightMm(ScrewThread thread) =>
        Row(thread, "nut")?.OptionalNumber("height_mm") ?? 0.8 * thread.DiameterMm;

    /// <summary>Least washer face of an ISO 4014 head, mm.</summary>
    /// <param name="thread">The thread.</param>
    /// <returns>dw, mm, or null where the tables do not know it.</returns>
    public static double? WasherFaceMm(ScrewThread thread) => Row(thread, "head")?.OptionalNumber("washer_face_min_mm");

    /// <summary>Medium clearance hole of ISO 273, mm.</summary>
    /// <param name="thread">The thread.</param>
    /// <returns>dh, mm, or null where the tables do not know it.</returns>
    public static double? ClearanceHoleMm(ScrewThread thread)
    {
        string size = thread.Size;
        foreach (TableRow row in TableCatalog.Tables["clearance-holes"].Rows)
        {
            if (row.IsNamed(size))
            {
                return row.OptionalNumber("medium_mm");
            }
        }

        return null;
    }

    /// <summary>Mean friction diameter under head or nut: from the tables, else 1.25·d.</summary>
    /// <param name="thread">The thread.</param>
    /// <returns>Db, mm, and whether the tables knew it.</returns>
    public static (double BearingMm, bool FromTables) Bearing(ScrewThread thread) =>
        WasherFaceMm(thread) is { } face && ClearanceHoleMm(thread) is { } hole
            ? (BearingFace.MeanDiameter(face, hole), true)
            : (FaceOverDiameter * thread.DiameterMm, false);

    private static TableRow? Row(ScrewThread thread, string item)
    {
        string size = thread.Size;
        string wanted = thread.Family == ThreadFamily.Unified ? $"inch {item}" : item;
        foreach (TableRow row in TableCatalog.Tables["hexagons"].Rows)
        {
            if (row.IsNamed(size) && row.Says("item", wanted))
            {
                return row;
            }
        }

        return null;
    }
}
