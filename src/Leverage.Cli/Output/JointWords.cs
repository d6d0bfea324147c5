using Leverage.Wording;
using Leverage.Assessments;
using Leverage.Friction;
using Leverage.Grades;

namespace Leverage.Cli.Output;

/// <summary>What was assumed about a joint, for every answer about one.</summary>
internal static class JointWords
{
    /// <summary>The assumptions as one phrase.</summary>
    /// <param name="grade">The grade, if it was assumed.</param>
    /// <param name="friction">The friction, if it was assumed.</param>
    /// <param name="bearing">The bearing face.</param>
    /// <param name="units">Units.</param>
    internal static string Assumed(Grade? grade, FrictionRange? friction, BearingBasis bearing, UnitStyle units)
    {
        var assumed = new List<string>();
        if (grade is not null)
        {
            assumed.Add($"grade {grade.Name}");
        }

        if (friction is { } range)
        {
            assumed.Add($"friction {Friction(range.Likely)}, {Range(range)}");
        }

        string db = units.Length(bearing.Diameter);
        assumed.Add(bearing.Source switch
        {
            BearingSource.Given => $"bearing face {db} mean, as given",
            BearingSource.Tables => $"bearing face {db} mean (ISO 4014 head, ISO 273 hole)",
            _ => $"bearing face {db} mean, 1.25 of the diameter: the tables have none for this size",
        });
        return string.Join("; ", assumed);
    }

    /// <summary>The ends of a range of friction, marked: they are never measured on this joint: "0.1 to 0.196*".</summary>
    internal static string Range(FrictionRange range) =>
        $"{Friction(range.Low)} to {Friction(range.High)}{UnconfirmedWords.Mark}";

    /// <summary>A coefficient of friction: two decimals, a third where it says something.</summary>
    internal static string Friction(double friction)
    {
        string text = UnitStyle.Fixed(friction, 3);
        return text.EndsWith('0') ? text[..^1] : text;
    }
}
