using Leverage.BreakLoose;
using Leverage.Grades;
using Leverage.Holding;
using Leverage.Levers;
using Leverage.LoadPath;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>One link as judged.</summary>
/// <param name="Limit">The link and its limit.</param>
/// <param name="Gives">Chance that it gives first.</param>
public readonly record struct JudgedLink(LinkLimit Limit, double Gives);

/// <summary>What a tube does on this bar under this load.</summary>
/// <param name="Overlap">How far it is on.</param>
/// <param name="HandToTip">Bar's tip to the hands.</param>
/// <param name="TipReaction">Force of the bar's tip on it at the likely break-loose.</param>
/// <param name="MouthReaction">Force at its mouth at the likely break-loose.</param>
/// <param name="Bending">Its bending moment at the tip at the likely break-loose.</param>
/// <param name="Tilt">How far it hangs below the bar.</param>
/// <param name="PlayShare">Play over the bar's diameter.</param>
/// <param name="Friction">Friction the check uses.</param>
/// <param name="Checked">Angles at that low friction.</param>
/// <param name="TypicalFriction">Friction shown as typical.</param>
/// <param name="Typical">Angles at typical friction.</param>
/// <param name="BestOverlap">Overlap with the widest safe angle of those the tube stands.</param>
/// <param name="WillMark">Whether the mouth's lip will be marked.</param>
public sealed record TubeAssessment(
    Length Overlap,
    Length HandToTip,
    Force TipReaction,
    Force MouthReaction,
    Torque Bending,
    Angle Tilt,
    double PlayShare,
    double Friction,
    SlipAngles Checked,
    double TypicalFriction,
    SlipAngles Typical,
    Length BestOverlap,
    bool WillMark)
{
    /// <summary>Share of the likely break-loose torque that is left at the end of the swing.</summary>
    public required double EndShare { get; init; }

    /// <summary>Force of the hands at which the tube first bends or dents, N: below the likely push it is no tube to pull on.</summary>
    public required double BreaksAtN { get; init; }
}

/// <summary>What holds the wheel against this nut.</summary>
/// <param name="Capacity">What each restraint and all together hold.</param>
/// <param name="Roll">Which way it would roll; null where the side is not said.</param>
public sealed record HoldAssessment(HoldCapacity Capacity, Roll? Roll);

/// <summary>What is let loose when it lets go at the strong pull.</summary>
/// <param name="Energy">Elastic energy of bar and tube; null where the bar's thickness is not known.</param>
/// <param name="Assumed">Whether the bar's thickness was taken from its square.</param>
/// <param name="Turns">Speed of the hands where the nut turns: the larger of stored energy in the arms and a body that pushes on.</param>
/// <param name="Snaps">Speed of the hands where something snaps.</param>
public sealed record ReleaseAssessment(Energy? Energy, bool Assumed, Speed Turns, Speed Snaps);

/// <summary>What a set-up means: what it takes, what you have, what gives, and whether to pull.</summary>
public sealed record LooseningAssessment
{
    /// <summary>What was judged.</summary>
    public required LooseningSetup Setup { get; init; }

    /// <summary>What the nut takes.</summary>
    public required NutFigures Nut { get; init; }

    /// <summary>What the hands give.</summary>
    public required HandFigures Hand { get; init; }

    /// <summary>The lever's lengths; null with no bar.</summary>
    public LeverGeometry? Lever { get; init; }

    /// <summary>Demand, chances and rules.</summary>
    public required Judgement Judgement { get; init; }

    /// <summary>The links, from the hexagon outwards.</summary>
    public required IReadOnlyList<JudgedLink> Links { get; init; }

    /// <summary>The parts that could not be judged.</summary>
    public required IReadOnlyList<LinkKind> NotJudged { get; init; }

    /// <summary>The tube, if one is on.</summary>
    public TubeAssessment? Tube { get; init; }

    /// <summary>What holds the wheel, if judged.</summary>
    public HoldAssessment? Hold { get; init; }

    /// <summary>What the strong pull means to a vehicle on stands; null with its wheels on the ground.</summary>
    public Stands? Stands { get; init; }

    /// <summary>What is let loose; null with no bar.</summary>
    public ReleaseAssessment? Release { get; init; }

    /// <summary>What the heat does; null where nothing is heated.</summary>
    public HeatAssessment? Heat { get; init; }

    /// <summary>What to do, one step after another; empty where nobody asked for it.</summary>
    public IReadOnlyList<LadderStep> Moves { get; init; } = [];

    /// <summary>The verdict.</summary>
    public Verdict Verdict => Judgement.Verdict;

    /// <summary>Whether it is a go that hardly ever stays tight: nothing needs to be told for that case.</summary>
    public bool IsSure => Verdict == Verdict.Go && Judgement.ComesLoose >= LadderRank.Enough;

    /// <summary>Reach needed at the likely break-loose with the likely force.</summary>
    public Length NeededLikely => Needed(Nut.LikelyNmm);

    /// <summary>Reach needed at the hard break-loose with the likely force.</summary>
    public Length NeededHigh => Needed(Nut.HighNmm);

    /// <summary>Length of a bar that gives the reach needed at the likely break-loose, square to end.</summary>
    public Length NeededBarLikely => WithGrip(NeededLikely);

    /// <summary>Length of a bar that gives the reach needed at the hard break-loose, square to end.</summary>
    public Length NeededBarHigh => WithGrip(NeededHigh);

    /// <summary>The weakest link; null with none.</summary>
    public JudgedLink? Weakest => Judgement.Weakest < 0 ? null : Links[Judgement.Weakest];

    /// <summary>The grade the bolt likely has where the torque is more than the assumed one takes; null where none was assumed or none takes it.</summary>
    public Grade? StrongerGrade => Nut.Joint.FrictionRaised && Setup.Assumed.Any(one => one.Kind == AssumptionKind.Grade)
        ? new JointAssembly(Setup.Fastener).TakenBy(Setup.Fastener.BookTorque.NewtonMillimeters, Setup.Fastener.Friction.Likely)
        : null;

    private Length WithGrip(Length reach) => Length.FromMillimeters(
        Levers.Lever.NeededLength(reach.Millimeters, Setup.Hands.Stance.GripOffsetMm));

    private Length Needed(double torqueNmm) =>
        Length.FromMillimeters(Levers.Lever.NeededReach(torqueNmm, Hand.Quantile(0.5), 0));
}
