using Leverage.Tables;

namespace Leverage.Grades;

/// <summary>Strength of a bolt, stud or nut of one grade at one size.</summary>
/// <param name="Name">The grade as written: <c>8.8</c>, <c>SAE 5</c>, <c>A2-70</c>.</param>
/// <param name="Standard">The standard that defines it.</param>
/// <param name="ProofMpa">Proof stress, MPa; 0 where the standard gives none.</param>
/// <param name="YieldMpa">Yield or 0.2 % proof strength, MPa; 0 for a nut class, which strips instead.</param>
/// <param name="TensileMpa">Least tensile strength, MPa; 0 for a nut class.</param>
/// <param name="Status">How far the row may be trusted.</param>
public sealed record Grade(
    string Name, string Standard, double ProofMpa, double YieldMpa, double TensileMpa, ValueStatus Status)
{
    /// <summary>Share of the yield taken as proof stress where the standard gives none (common practice).</summary>
    public const double ProofOverYield = 0.9;

    /// <summary>Whether it is a stainless steel, which galls.</summary>
    public bool IsStainless => Standard.StartsWith("ISO 3506", StringComparison.Ordinal);

    /// <summary>Proof stress to tighten against, MPa: the standard's, else 0.9 of yield.</summary>
    public double UsableProofMpa => ProofMpa > 0 ? ProofMpa : ProofOverYield * YieldMpa;
}
