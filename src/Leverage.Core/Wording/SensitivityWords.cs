using Leverage.Assessments;

namespace Leverage.Wording;

/// <summary>Names of the inputs nobody knows exactly, and how to learn them better.</summary>
internal static class SensitivityWords
{
    /// <summary>An input by its name.</summary>
    internal static string Input(UncertainInput input) => input switch
    {
        UncertainInput.Growth => "what rust and time have added",
        UncertainInput.StartTorque => "torque it was tightened to",
        UncertainInput.HandForce => "your own force",
        UncertainInput.ToolStrength => "strength of your tools",
        UncertainInput.HandPlace => "where your hands are",
        UncertainInput.Friction => "friction when it was tightened",
        _ => "diameter of the bar",
    };

    /// <summary>How to learn an input better.</summary>
    internal static string Learn(UncertainInput input) => input switch
    {
        UncertainInput.Growth => "clean it, soak it, try it with a short bar first",
        UncertainInput.StartTorque => "look it up in the maker's manual",
        UncertainInput.HandForce => "push a bathroom scale in that stance: its reading is your force",
        UncertainInput.ToolStrength => "use the next size up, or tools with a test certificate",
        UncertainInput.HandPlace => "mark the grip with tape",
        UncertainInput.Friction => "find out how it was lubricated",
        _ => "measure it where the tube ends",
    };
}
