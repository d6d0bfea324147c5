using Leverage.BreakLoose;
using Leverage.Probability;

namespace Leverage.Outcomes;

/// <summary>The integral of the chances, in stretches: wide panels where neither nut nor link scatters, narrow ones where they do.</summary>
internal ref struct RiskIntegral
{
    /// <summary>Points of the Gauss–Legendre rule on each panel.</summary>
    private const int Points = 22;

    /// <summary>Panel width in units of the narrowest spread; 22 points hold such a panel to 4e-7.</summary>
    private const double PanelSigmas = 12;

    private static readonly (double Abscissa, double Weight)[] Rule = GaussNodes.Of(Points);

    private readonly BreakLooseTorque _nut;
    private readonly LogNormalCurve _hand;
    private readonly double _logCap;
    private readonly ReadOnlySpan<RiskCurve> _links;
    private readonly StudCurve? _stud;
    private readonly Sliding? _tube;
    private readonly IReadOnlyList<double> _breaks;
    private readonly Span<LinkShare> _shares;
    private double _border;

    /// <summary>The integral over nut, hand, links, stud and tube; <paramref name="shares"/>, one for each link, is filled.</summary>
    internal RiskIntegral(BreakLooseTorque nut, Strength hand, ReadOnlySpan<RiskCurve> links, StudCurve? stud, Sliding? tube, Span<LinkShare> shares)
    {
        (_nut, _hand, _logCap, _stud, _tube) = (nut, new LogNormalCurve(hand), Math.Log(hand.CapNmm), stud, tube);
        _links = links;
        _shares = shares;
        _breaks = [.. (stud?.Breaks ?? nut.Breaks).Concat(tube?.Bends(nut.LogLow, nut.LogHigh) ?? []).Order()];
        SlidesOff = tube?.Friction.Below(tube.LeastToStay) ?? 0;
    }

    /// <summary>Chance that the tube slides before anything else happens; the chances below are of what then happens if it does not.</summary>
    internal double SlidesOff { get; }

    /// <summary>Chance that the nut turns first.</summary>
    internal double ComesLoose { get; private set; }

    /// <summary>Chance that the nut turns first and the tube then slides off, of all tubes.</summary>
    internal double SlidesAsItTurns { get; private set; }

    /// <summary>Chance that the hand stops first.</summary>
    internal double StaysTight { get; private set; }

    /// <summary>Chance that the stud twists off first.</summary>
    internal double StudTwistsOff { get; private set; }

    /// <summary>Runs from where the first thing can happen to where everything has.</summary>
    internal void Run()
    {
        double high = Math.Min(Math.Min(_nut.LogHigh, _hand.High), Math.Min(_logCap, _stud?.High ?? double.PositiveInfinity));
        foreach (RiskCurve link in _links)
        {
            high = Math.Min(high, link.High);
        }

        (_border, double scatter) = (high, double.PositiveInfinity);
        foreach (RiskCurve link in _links)
        {
            if (link.Low < high)
            {
                (_border, scatter) = (Math.Min(_border, link.Low), Math.Min(scatter, link.Sigma));
            }
        }

        if (_stud is not null && _stud.Low < high)
        {
            (_border, scatter) = (Math.Min(_border, _stud.Low), Math.Min(scatter, _stud.Sigma));
        }

        // Below this neither hand nor link can fail: whatever the nut takes there, it turns.
        double low = Math.Min(_border, _hand.Low);
        if (_tube?.LeastAsItTurns is not null)
        {
            low = Math.Min(low, _nut.LogLow);
        }

        ComesLoose = Math.Max(0, 1 - _nut.At(low).Survival);

        // Below its lowest torque the nut holds for certain: its spread, however narrow, sets no step there.
        double turns = Math.Clamp(_nut.LogLow, low, high);
        double turning = Math.Min(_hand.Sigma, _nut.Narrowest);
        Stretch(low, Math.Min(turns, _border), _hand.Sigma);
        Stretch(turns, _border, turning);
        Stretch(_border, turns, Math.Min(_hand.Sigma, scatter));
        Stretch(Math.Max(turns, _border), high, Math.Min(turning, scatter));
        if (!double.IsPositiveInfinity(_logCap))
        {
            // A capped hand stops dead there: all that is left stays tight.
            StaysTight += _hand.At(_logCap).Survival * Links(_logCap) * Sum(_logCap).Holds;
        }
    }

    private void Stretch(double from, double to, double narrowest)
    {
        if (!(to > from))
        {
            return;
        }

        foreach (double jump in _breaks)
        {
            if (jump > from && jump < to)
            {
                Panels(from, jump, narrowest);
                from = jump;
            }
        }

        Panels(from, to, narrowest);
    }

    private void Panels(double from, double to, double narrowest)
    {
        int panels = (int)Math.Ceiling((to - from) / (PanelSigmas * narrowest));
        double width = (to - from) / panels;
        for (int panel = 0; panel < panels; panel++)
        {
            foreach (var (abscissa, weight) in Rule)
            {
                Point(from + width * (panel + abscissa), width * weight);
            }
        }
    }

    private void Point(double u, double weight)
    {
        double all = IsLinked(u) ? Links(u) : 1;
        var (handHolds, handStops) = _hand.At(u);
        var (holds, turns, twists) = Sum(u);
        double loose = weight * turns * handHolds * all;
        ComesLoose += loose;
        StaysTight += weight * holds * handStops * all;
        StudTwistsOff += weight * twists * handHolds * all;
        if (loose > 0 && _tube is { LeastAsItTurns: { } least, Friction: var friction })
        {
            SlidesAsItTurns += loose * Math.Max(0, friction.Below(least(Math.Exp(u))) - SlidesOff);
        }

        double after = weight * holds * handHolds;
        for (int i = _links.Length - 1; i >= 0 && IsLinked(u); i--)
        {
            ref LinkShare link = ref _shares[i];
            link.Gives += after * link.Density * link.Before;
            after *= link.Survival;
        }
    }

    /// <summary>Whether a link or the stud can give there.</summary>
    private readonly bool IsLinked(double u) => u >= _border;

    /// <summary>Over all cases of the nut: both it and the stud hold; the nut turns and the stud holds; the stud twists off and the nut holds.</summary>
    private readonly (double Holds, double Turns, double Twists) Sum(double u)
    {
        if (_stud is null || !IsLinked(u))
        {
            var (survival, density) = _nut.At(u);
            return (survival, density, 0);
        }

        double torque = Math.Exp(u);
        var (holds, turns, twists) = (0.0, 0.0, 0.0);
        foreach (ref readonly NutCase one in _nut.Cases)
        {
            var (stands, goes) = _stud.At(one, torque);
            var (survival, density) = _nut.At(one, u);
            holds += survival * stands;
            turns += density * stands;
            twists += survival * goes;
        }

        return (holds, turns, twists);
    }

    /// <summary>Chance that all links hold; fills what their shares are made of.</summary>
    private readonly double Links(double u)
    {
        double product = 1;
        for (int i = 0; i < _links.Length; i++)
        {
            ref LinkShare link = ref _shares[i];
            (link.Survival, link.Density) = _links[i].At(u);
            link.Before = product;
            product *= link.Survival;
        }

        return product;
    }
}

/// <summary>A link in the integral: what it is like at the point looked at, and the chance that it gives.</summary>
internal record struct LinkShare(double Survival, double Density, double Before, double Gives);
