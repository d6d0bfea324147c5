namespace Leverage.Requests;

/// <summary>A joint that wants something done before any pull.</summary>
public enum SpecialJoint
{
    /// <summary>A castle nut with a split pin.</summary>
    Castle,

    /// <summary>A bolt with a nut, whose head turns with it.</summary>
    ThroughBolt,

    /// <summary>A ball joint, whose pin turns with its nut.</summary>
    BallJoint,
}
