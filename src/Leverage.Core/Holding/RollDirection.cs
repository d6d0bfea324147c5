namespace Leverage.Holding;

/// <summary>Which way a vehicle would roll.</summary>
public enum Roll
{
    /// <summary>Forward.</summary>
    Forward,

    /// <summary>Backward.</summary>
    Backward,
}

/// <summary>Which way the torque of undoing a wheel's nut would drive the vehicle.</summary>
public static class RollDirection
{
    /// <summary>A right-hand nut undone on the left drives it forward, on the right backward; a left-hand thread reverses it.</summary>
    /// <param name="side">Side of the vehicle, left or right.</param>
    /// <param name="leftHand">Left-hand thread.</param>
    /// <returns>The direction: chock that side of the wheel.</returns>
    /// <exception cref="ArgumentException">The side is not said.</exception>
    public static Roll Undoing(Side side, bool leftHand) => side switch
    {
        Side.Left => leftHand ? Roll.Backward : Roll.Forward,
        Side.Right => leftHand ? Roll.Forward : Roll.Backward,
        _ => throw new ArgumentException("Left or right is wanted.", nameof(side)),
    };
}
