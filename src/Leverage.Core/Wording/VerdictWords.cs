using Leverage.Assessments;
using Leverage.BreakLoose;
using Leverage.Holding;
using Leverage.Levers;

namespace Leverage.Wording;

/// <summary>The words of verdicts and restraints, as answers and scripts read them.</summary>
internal static class VerdictWords
{
    /// <summary>A verdict.</summary>
    internal static string Word(Verdict verdict) => verdict switch
    {
        Verdict.Go => "go",
        Verdict.Care => "care",
        Verdict.Short => "short",
        Verdict.Stop => "stop",
        _ => "notJudged",
    };

    /// <summary>A verdict as it stands before an answer.</summary>
    internal static string Capitals(Verdict verdict) => verdict == Verdict.NotJudged ? "NOT JUDGED" : Word(verdict).ToUpperInvariant();

    /// <summary>The answer to "is it safe?".</summary>
    internal static string Word(Safe safe) => safe switch
    {
        Safe.Yes => "yes",
        Safe.Care => "care",
        Safe.No => "no",
        _ => "notJudged",
    };

    /// <summary>The answer to "will it come?".</summary>
    internal static string Word(Comes comes) => comes switch
    {
        Comes.Likely => "likely",
        Comes.Maybe => "maybe",
        Comes.No => "no",
        _ => "notJudged",
    };

    /// <summary>The same in capitals.</summary>
    internal static string Capitals(Safe safe) => safe == Safe.NotJudged ? "NOT JUDGED" : Word(safe).ToUpperInvariant();

    /// <summary>The same in capitals.</summary>
    internal static string Capitals(Comes comes) => comes == Comes.NotJudged ? "NOT JUDGED" : Word(comes).ToUpperInvariant();

    /// <summary>A phrase as a sentence: a capital first, one full stop last.</summary>
    internal static string Sentence(string phrase)
    {
        ArgumentException.ThrowIfNullOrEmpty(phrase);
        return $"{char.ToUpperInvariant(phrase[0])}{phrase[1..].TrimEnd('.')}.";
    }

    /// <summary>Where a start torque is from.</summary>
    internal static string Word(StartSource from) => from switch
    {
        StartSource.Given => "given",
        StartSource.Thread => "thread",
        _ => "table",
    };

    /// <summary>The way hands push.</summary>
    internal static string Word(Push push) => push switch
    {
        Push.Down => "down",
        Push.Up => "up",
        _ => "across",
    };

    /// <summary>A restraint as the command line spells it.</summary>
    internal static string Word(Restraint restraint) => Array.Find(Requests.Kinds.RestraintWords, one => one.Value == restraint).Word;

    /// <summary>A restraint as a person says it.</summary>
    internal static string Name(Restraint restraint) => restraint switch
    {
        Restraint.Brake => "parking brake",
        Restraint.OldBrake => "old parking brake",
        Restraint.Gear => "gear",
        Restraint.Chock => "chock",
        Restraint.Helper => "helper on the foot brake",
        _ => "bar across the studs",
    };

    /// <summary>An angle past square, by the way the hands move.</summary>
    internal static string Angle(double angleRad, Push push)
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
