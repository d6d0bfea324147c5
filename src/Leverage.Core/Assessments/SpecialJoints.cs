using Leverage.BreakLoose;
using Leverage.Requests;

namespace Leverage.Assessments;

/// <summary>Joints that want something done before any pull.</summary>
internal static class SpecialJoints
{
    /// <summary>What is special about the joint, in the words of the table <c>moves</c>.</summary>
    internal static IReadOnlyCollection<string> Of(LooseningRequest request, LooseningSetup setup)
    {
        var joints = new List<string>();
        if (request.LeftHand)
        {
            joints.Add("left-hand");
        }

        if (request.Worn == "rounded")
        {
            joints.Add("rounded");
        }

        joints.AddRange(request.Joints.Select(Word));
        Condition condition = setup.Fastener.Condition;
        joints.AddRange(setup.Fastener.Grade is { IsStainless: true } ? ["stainless"] : []);
        joints.AddRange(condition.Key.Contains("staked", StringComparison.Ordinal) ? ["staked"] : []);
        joints.AddRange(condition.LockerNm > 0 ? ["locked"] : []);
        return joints;
    }

    /// <summary>Whether a jaw or twelve points sit on rounded corners: a ring or six points come first.</summary>
    internal static bool WantSixPoints(LooseningRequest request) => request is { Worn: "rounded" } and ({ Tool: ToolKind.Open } or { Points: 12 });

    private static string Word(SpecialJoint joint) => joint switch
    {
        SpecialJoint.Castle => "castle",
        SpecialJoint.ThroughBolt => "through-bolt",
        _ => "ball-joint",
    };
}
