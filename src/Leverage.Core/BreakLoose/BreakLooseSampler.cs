using MathNet.Numerics.Distributions;

namespace Leverage.BreakLoose;

/// <summary>Draws nuts of the same model as <see cref="BreakLooseSpread"/>, every scattered input one by one.</summary>
public sealed class BreakLooseSampler
{
    private readonly Fastener _fastener;
    private readonly JointAssembly _assembly;
    private readonly AssembledJoint? _given;
    private readonly Growth _growth;
    private readonly double _extraNmm;
    private readonly double _heldNmm;

    /// <summary>A sampler of a fastener.</summary>
    /// <param name="fastener">The fastener.</param>
    /// <param name="heldNmm">Torque it has held, N·mm; 0 for none. Draws below it are thrown away.</param>
    /// <exception cref="Reading.InputException">A thread locker's condition without a thread, or a torque no bolt like this takes.</exception>
    public BreakLooseSampler(Fastener fastener, double heldNmm = 0)
    {
        ArgumentNullException.ThrowIfNull(fastener);
        (_fastener, _assembly, _extraNmm, _heldNmm) = (fastener, new JointAssembly(fastener), BreakLooseSpread.Extra(fastener), heldNmm);
        _given = fastener.BookTorqueSigma > 0 ? null : BreakLooseSpread.Joint(fastener);
        _growth = BreakLooseSpread.GrowthOf(fastener);
    }

    /// <summary>One nut.</summary>
    /// <param name="random">Where chance comes from.</param>
    /// <returns>The torque that breaks it loose, N·mm, and the state of its shank.</returns>
    public (double TorqueNmm, ShankState Shank) Draw(Random random)
    {
        ArgumentNullException.ThrowIfNull(random);
        while (true)
        {
            AssembledJoint joint = _given ?? _assembly.At(Math.Min(_assembly.MostNmm, LogNormal.Sample(
                random, Math.Log(_fastener.BookTorque.NewtonMillimeters), _fastener.BookTorqueSigma)));
            double left = 1 - BreakLooseSpread.MostPreloadLost * random.NextDouble();
            double scale = _fastener.Condition.Basis == GrowthBasis.Book ? joint.BookNmm : joint.LooseningNmm * left;
            double torque = BreakLooseTorque.Shifted(
                scale * LogNormal.Sample(random, Math.Log(_growth.Median), _growth.Sigma), _extraNmm + BreakLooseSpread.HeatShift(joint));
            if (torque >= _heldNmm)
            {
                return (torque, ShankState.Of(joint, _fastener, left, _extraNmm));
            }
        }
    }
}
