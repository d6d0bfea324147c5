using Leverage.Assessments;
using Leverage.BreakLoose;
using Leverage.Holding;
using Leverage.Levers;

namespace Leverage.Wording;

/// <summary>The words of verdicts and restraints, as answers and scripts read them.</summary>
public static class VerdictWords
{
    /// <summary>A verdict.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <returns>go, care, short, notJudged or stop.</returns>
    public static string Word(Verdict verdict) => verdict switch
    {
        Verdict.Go => "go",
        Verdict.Care => "care",
        Verdict.Short => "short",
        Verdict.Stop => "stop",
        _ => "notJudged",
    };

    /// <summary>A verdict as it stands before an answer.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <returns>GO, CARE, SHORT, NOT JUDGED or STOP.</returns>
    public static string Capitals(Verdict verdict) => verdict == Verdict.NotJudged ? "NOT JUDGED" : Word(verdict).ToUpperInvariant();

    /// <summary>The answer to "is it safe?".</summary>
    /// <param name="safe">The answer.</param>
    /// <returns>yes, care, no or notJudged.</returns>
    public static string Word(Safe safe) => safe switch
    {
        Safe.Yes => "yes",
        Safe.Care => "care",
        Safe.No => "no",
        _ => "notJudged",
    };

    /// <summary>The answer to "will it come?".</summary>
    /// <param name="comes">The answer.</param>
    /// <returns>likely, maybe, no or notJudged.</returns>
    public static string Word(Comes comes) => comes switch
    {
        Comes.Likely => "likely",
        Comes.Maybe => "maybe",
        Comes.No => "no",
        _ => "notJudged",
    };

    /// <summary>The same in capitals.</summary>
    /// <param name="safe">The answer.</param>
    /// <returns>YES, CARE, NO or NOT JUDGED.</returns>
    public static string Capitals(Safe safe) => safe == Safe.NotJudged ? "NOT JUDGED" : Word(safe).ToUpperInvariant();

    /// <summary>The same in capitals.</summary>
    /// <param name="comes">The answer.</param>
    /// <returns>LIKELY, MAYBE, NO or NOT JUDGED.</returns>
    public static string Capitals(Comes comes) => comes == Comes.NotJudged ? "NOT JUDGED" : Word(comes).ToUpperInvariant();

    /// <summary>A phrase as a sentence: a capital first, one full stop last.</summary>
    /// <param name="phrase">The phrase, not empty.</param>
    /// <returns>The sentence.</returns>
    public static string Sentence(string phrase)
    {
        ArgumentException.ThrowIfNullOrEmpty(phrase);
        return $"{char.ToUpperInvariant(phrase[0])}{phrase[1..].TrimEnd('.')}.";
    }

    /// <summary>Where a start torque is from.</summary>
    /// <param name="from">The source.</param>
    /// <returns>given, thread or table.</returns>
    public static string Word(StartSource from) => from switch
    {
        StartSource.Given => "given",
        StartSource.Thread => "thread",
        _ => "table",
    };

    /// <summary>The way hands push.</summary>
    /// <param name="push">The way.</param>
    /// <returns>down, up or across.</returns>
    public static string Word(Push push) => push switch
    {
        Push.Down => "down",
        Push.Up => "up",
        _ => "across",
    };

    /// <summary>A restraint as the command line spells it.</summary>
    /// <param name="restraint">The restraint.</param>
    /// <returns>Its name.</returns>
    public static string Word(Restraint restraint) => Array.Find(Requests.Kinds.RestraintWords, one => one.Value == restraint).Word;

    /// <summary>A restraint as a person says it.</summary>
    /// <param name="restraint">The restraint.</param>
    /// <returns>"parking brake", "chock".</returns>
    public static string Name(Restraint restraint) => restraint switch
    {
        Restraint.Brake => "parking brake",
        Restraint.OldBrake => "old parking brake",
        Restraint.Gear => "gear",
        Restraint.Chock => "chock",
        Restraint.Helper => "helper on the foot brake",
        _ => "bar across the studs",
    };

    /// <summary>An angle past square, by the way the hands move.</summary>
    /// <param name="angleRad">Angle past square, rad; negative before it.</param>
    /// <param name="push">Way the hands push.</param>
    /// <returns>"38° below level", "38° above level" for a lift, "38° past square" for a pull across.</returns>
    public static string Angle(double angleRad, Push push)
    {
        string size = $"{UnitStyle.Fixed(Math.Abs(double.RadiansToDegrees(angleRad)), 0)}°";
        bool past = angleRad >= 0;
        return push switch
        {
            Push.Down => $"{size} {(past ? "below" : "above")} level",
            Push.Up => $"{size} {(past ? "above" : "below")} level",
            _ => $"{size} {(past ? "past" : "before")} square",
        };
    }
}
