namespace Leverage.BreakLoose;

/// <summary>Which part of a joint is heated.</summary>
public enum HeatedPart
{
    /// <summary>The bolt or stud, hotter than what it clamps.</summary>
    Stud,

    /// <summary>The nut alone.</summary>
    Nut,

    /// <summary>The housing a bolt is screwed into, or the part it clamps.</summary>
    Housing,
}

/// <summary>Heat put into a joint.</summary>
/// <param name="Part">Which part.</param>
/// <param name="ByK">How much hotter than the rest, K.</param>
public readonly record struct Heating(HeatedPart Part, double ByK)
{
    /// <summary>Preload left over preload before, from the stress the preload puts in the bolt.</summary>
    /// <param name="stressMpa">σ, preload stress before heating, MPa, above 0.</param>
    /// <param name="complianceRatio">k = 1 + joint compliance over bolt compliance, 1 to 3.</param>
    /// <returns>0 when the clamp is gone, above 1 where the clamped part was heated.</returns>
    public double PreloadShare(double stressMpa, double complianceRatio) => Part switch
    {
        HeatedPart.Stud => Math.Max(0, 1 - ByK / HeatedJoint.ReleaseTemperature(stressMpa, complianceRatio)),
        HeatedPart.Housing => 1 + HeatedJoint.PreloadRise(ByK, complianceRatio) / stressMpa,
        _ => 1,
    };
}
