using Leverage.Probability;
using Leverage.BreakLoose;
using MathNet.Numerics.Integration;

namespace Leverage.Outcomes;

/// <summary>The integral of the three chances, in stretches: wide panels where neither nut nor link scatters, narrow ones where they do.</summary>
internal ref struct Race
{
    /// <summary>Points of the Gauss–Legendre rule on each panel.</summary>
    private const int Points = 16;

    /// <summary>Panel width in units of the narrowest spread; 16 points hold such a panel to 1e-9.</summary>
    private const double PanelSigmas = 6;

    private static readonly (double Abscissa, double Weight)[] Rule = Nodes();

    private readonly BreakLooseTorque _nut;
    private readonly LogNormalCurve _hand;
    private readonly ReadOnlySpan<LogNormalCurve> _links;
    private readonly Span<double> _gives;
    private readonly Span<double> _survivals;
    private readonly Span<double> _densities;
    private readonly Span<double> _before;

    /// <summary>A race of nut, hand and links; <paramref name="scratch"/> is three times as long as the links.</summary>
    internal Race(BreakLooseTorque nut, LogNormalCurve hand, ReadOnlySpan<LogNormalCurve> links, Span<double> gives, Span<double> scratch)
    {
        int n = links.Length;
        _nut = nut;
        _hand = hand;
        _links = links;
        _gives = gives;
        _survivals = scratch[..n];
        _densities = scratch[n..(2 * n)];
        _before = scratch[(2 * n)..];
    }

    /// <summary>Chance that the nut turns first.</summary>
    internal double ComesLoose { get; private set; }

    /// <summary>Chance that the hand stops first, below its cap.</summary>
    internal double StaysTight { get; private set; }

    /// <summary>Runs up to a log torque.</summary>
    internal void Run(double high)
    {
        double border = high;
        double scatter = double.PositiveInfinity;
        foreach (LogNormalCurve link in _links)
        {
            if (link.Low < high)
            {
                border = Math.Min(border, link.Low);
                scatter = Math.Min(scatter, link.Sigma);
            }
        }

        // Below this neither hand nor link can fail: whatever the nut takes there, it turns.
        double low = Math.Min(border, _hand.Low);
        ComesLoose = 1 - _nut.At(low).Survival;

        // Below its lowest torque the nut holds for certain: its spread, however narrow, sets no step there.
        double turns = Math.Clamp(_nut.LogLow, low, high);
        double turning = Math.Min(_hand.Sigma, _nut.Narrowest);
        Stretch(low, Math.Min(turns, border), _hand.Sigma, linked: false);
        Stretch(turns, border, turning, linked: false);
        Stretch(border, turns, Math.Min(_hand.Sigma, scatter), linked: true);
        Stretch(Math.Max(turns, border), high, Math.Min(turning, scatter), linked: true);
    }

    /// <summary>A capped hand stops dead at its cap: all that is left there stays stuck.</summary>
    internal readonly double Left(double capNmm)
    {
        double cap = Math.Log(capNmm);
        double product = _nut.At(cap).Survival * _hand.At(cap).Survival;
        foreach (LogNormalCurve link in _links)
        {
            product *= link.At(cap).Survival;
        }

        return product;
    }

    private void Stretch(double from, double to, double narrowest, bool linked)
    {
        if (!(to > from))
        {
            return;
        }

        if (_nut.LogJump > from && _nut.LogJump < to)
        {
            Stretch(from, _nut.LogJump, narrowest, linked);
            from = _nut.LogJump;
        }

        int panels = Math.Max(1, (int)Math.Ceiling((to - from) / (PanelSigmas * narrowest)));
        double width = (to - from) / panels;
        for (int panel = 0; panel < panels; panel++)
        {
            foreach (var (abscissa, weight) in Rule)
            {
                Point(from + width * (panel + abscissa), width * weight, linked);
            }
        }
    }

    private void Point(double u, double weight, bool linked)
    {
        double all = linked ? Links(u) : 1;
        if (all == 0)
        {
            return;
        }

        var (nutHolds, nutTurns) = _nut.At(u);
        var (handHolds, handStops) = _hand.At(u);
        ComesLoose += weight * nutTurns * handHolds * all;
        StaysTight += weight * nutHolds * handStops * all;
        double after = linked ? weight * nutHolds * handHolds : 0;
        for (int i = _links.Length - 1; i >= 0 && after > 0; i--)
        {
            _gives[i] += after * _densities[i] * _before[i];
            after *= _survivals[i];
        }
    }

    /// <summary>Chance that all links hold; fills what their shares are made of.</summary>
    private readonly double Links(double u)
    {
        double product = 1;
        for (int i = 0; i < _links.Length; i++)
        {
            (_survivals[i], _densities[i]) = _links[i].At(u);
            _before[i] = product;
            product *= _survivals[i];
        }

        return product;
    }

    private static (double Abscissa, double Weight)[] Nodes()
    {
        var rule = new GaussLegendreRule(0, 1, Points);
        var nodes = new (double Abscissa, double Weight)[Points];
        for (int i = 0; i < nodes.Length; i++)
        {
            nodes[i] = (rule.GetAbscissa(i), rule.GetWeight(i));
        }

        return nodes;
    }
}
