using Leverage.Requests;

namespace Leverage.Assessments;

/// <summary>Will it come loose, is it safe, and what to do next.</summary>
public static class Loosening
{
    /// <summary>What a nut takes, what a set-up means for it, and what to do one step after another.</summary>
    /// <param name="request">What is known; whatever is left out is assumed, and the assessment says so.</param>
    /// <returns>The assessment.</returns>
    /// <exception cref="Reading.InputException">A value is not accepted, or two do not fit together; it names the field and the cure.</exception>
    public static LooseningAssessment Assess(LooseningRequest request)
    {
        LooseningAssessment plain = LooseningAssessor.WithoutAdvice(LooseningDefaults.Complete(request));
        return plain with { Moves = Ladder.Of(request, plain) };
    }
}

/// <summary>What to set, and what preload that makes.</summary>
public static class Tightening
{
    /// <summary>The torque of a joint, and what it means for the bolt.</summary>
    /// <param name="request">What is known; at least the thread.</param>
    /// <returns>The assessment.</returns>
    /// <exception cref="Reading.InputException">A value is not accepted, or two do not fit together; it names the field and the cure.</exception>
    public static TighteningAssessment Assess(TighteningRequest request) => TighteningAssessor.Assess(TighteningDefaults.Complete(request, TighteningFields.All));
}

/// <summary>Whether a quoted torque is believable.</summary>
public static class Checking
{
    /// <summary>What a quoted torque means for a joint.</summary>
    /// <param name="request">What is known; at least torque and thread.</param>
    /// <returns>The assessment.</returns>
    /// <exception cref="Reading.InputException">A value is not accepted, or two do not fit together; it names the field and the cure.</exception>
    public static CheckingAssessment Assess(TighteningRequest request) => CheckingAssessor.Assess(TighteningDefaults.Complete(request, TighteningFields.Check));
}

/// <summary>When a slipped-over tube comes off, and why.</summary>
public static class Slip
{
    /// <summary>What a tube on a bar means.</summary>
    /// <param name="request">What is known; at least bar and tube.</param>
    /// <returns>The assessment.</returns>
    /// <exception cref="Reading.InputException">A value is not accepted, or two do not fit together; it names the field and the cure.</exception>
    public static SlipAssessment Assess(LooseningRequest request) => SlipAssessor.Assess(SlipDefaults.Complete(request));
}
