namespace Leverage.Assessments;

/// <summary>Whether to pull, from best to worst.</summary>
public enum Verdict
{
    /// <summary>It likely comes, and nothing known makes it unsafe.</summary>
    Go,

    /// <summary>It likely comes; mind what is named.</summary>
    Care,

    /// <summary>It is safe enough, but it likely stays tight.</summary>
    Short,

    /// <summary>Nothing that could break was judged.</summary>
    NotJudged,

    /// <summary>Not safe: change what is named first.</summary>
    Stop,
}

/// <summary>The answer to "is it safe?".</summary>
public enum Safe
{
    /// <summary>Every chance of harm is small.</summary>
    Yes,

    /// <summary>Mind what is named.</summary>
    Care,

    /// <summary>Nothing that could break was judged.</summary>
    NotJudged,

    /// <summary>No.</summary>
    No,
}

/// <summary>The answer to "will it come?".</summary>
public enum Comes
{
    /// <summary>At least as likely as not.</summary>
    Likely,

    /// <summary>Perhaps.</summary>
    Maybe,

    /// <summary>Hardly.</summary>
    No,

    /// <summary>No lever or no force is known.</summary>
    NotJudged,
}

/// <summary>What speaks for care or stop.</summary>
[Flags]
public enum VerdictRules
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>A tool may break.</summary>
    ToolGives = 1,

    /// <summary>The tube may slide off while the nut holds.</summary>
    SlidesOff = 2,

    /// <summary>The wheel may turn before the nut.</summary>
    WheelTurns = 4,

    /// <summary>The bolt or stud may twist off.</summary>
    StudTwistsOff = 8,

    /// <summary>The corners of the hexagon may round off.</summary>
    CornersRound = 16,

    /// <summary>The tube may slide off as the nut turns.</summary>
    SlidesAsItTurns = 32,

    /// <summary>The hands move fast when it lets go.</summary>
    FastHands = 64,

    /// <summary>The vehicle is on stands.</summary>
    OnStands = 128,

    /// <summary>The tube gives below what the stance pushes.</summary>
    TubeBelowPush = 256,
}
