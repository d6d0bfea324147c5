using Leverage.Friction;
using Leverage.Grades;
using Leverage.Preload;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Stiffness;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>Makes the set-ups of a request about a joint that is tightened, and refuses what does not fit together.</summary>
internal static class TighteningDefaults
{
    /// <summary>A ring narrower than this is none: 2.2cm and 22mm differ by rounding alone.</summary>
    private const double LeastRingMm = 1e-3;

    /// <summary>What is tightened and what is asked of it; the fields are those of one question.</summary>
    internal static JointSetup Complete(TighteningRequest request, IReadOnlyList<Field<TighteningRequest>> fields)
    {
        ArgumentNullException.ThrowIfNull(request);
        fields.Check(request);
        ScrewThread thread = request.Thread ?? throw new InputException("thread", "is needed here.", TighteningFields.Thread.Cure);
        return new JointSetup(request, thread)
        {
            Grade = GradeOf(request, thread),
            Friction = FrictionOf(request),
            Face = Face(request, thread),
            Clamped = request.Clamped is { } clamped ? ClampedMaterial.Named(clamped) : null,
            With = request.With is { } method ? TighteningMethod.Named(method) : null,
            Tapped = Tapped(request),
            Adapter = Adapter(request),
        };
    }

    private static Grade? GradeOf(TighteningRequest request, ScrewThread thread) => request.Grade is { } name
        ? InputException.About(TighteningFields.Grade.Name, () => GradeCatalog.Bolt(name, thread))
        : null;

    /// <summary>Friction as given: a figure or a lubricant's range.</summary>
    private static FrictionRange? FrictionOf(TighteningRequest request) => request switch
    {
        { Friction: not null, Lubrication: { } named } => throw new InputException(
            TighteningFields.Friction.Name, "a figure and a lubrication both say how slippery it is: leave one out.", new Cure(TighteningFields.Lubrication.Name, named)),
        { Friction: { } stated } => FrictionRange.Stated(stated),
        { Lubrication: { } name } => FrictionRange.Lubricated(name),
        _ => null,
    };

    /// <summary>The bearing face as given; what is left out of it comes from the tables.</summary>
    private static FaceRing? Face(TighteningRequest request, ScrewThread thread)
    {
        if (request is { WasherFace: null, Hole: null })
        {
            return null;
        }

        Length face = request.WasherFace ?? Known(TighteningFields.WasherFace, HexagonCatalog.WasherFaceMm(thread), thread);
        Length hole = request.Hole ?? Known(TighteningFields.Hole, HexagonCatalog.ClearanceHoleMm(thread), thread);
        return face.Millimeters - hole.Millimeters > LeastRingMm
            ? new FaceRing(face, hole)
            : throw new InputException("dw", $"the washer face, {QuantityWriter.Text(face)}, must be larger than the hole, {QuantityWriter.Text(hole)}.");
    }

    private static Length Known(Field field, double? millimetres, ScrewThread thread) => millimetres is { } known
        ? Length.FromMillimeters(known)
        : throw new InputException(field.Name, $"is needed too: the tables have none for {thread.Printed}.", field.Cure);

    private static AdapterFitting? Adapter(TighteningRequest request)
    {
        if (request.Adapter is not { } adapter)
        {
            return null;
        }

        Length wrench = request.Wrench
            ?? throw new InputException("adapter", "is of no use without the wrench, from its square to the middle of its grip.", TighteningFields.Wrench.Cure);
        Angle angle = request.Angle ?? Angle.Zero;
        return wrench + adapter * Math.Cos(angle.Radians) > Length.Zero
            ? new AdapterFitting(adapter, wrench, angle)
            : throw new InputException("adapter", "folded back it reaches past the hand: no lever is left.");
    }

    private static TappedHole? Tapped(TighteningRequest request) => request.Engagement is not { } engagement ? null
        : request.Tapped is { } material ? new TappedHole(engagement, TappedMaterial.Named(material))
        : throw new InputException("engagement", "is of no use without what the hole is tapped into.", TighteningFields.Tapped.Cure);
}
