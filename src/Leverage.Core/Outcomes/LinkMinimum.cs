namespace Leverage.Outcomes;

/// <summary>The strength of the weakest of several links: its survival as a table over the log torque.</summary>
internal sealed class LinkMinimum
{
    private const int Cells = 2048;
    private readonly Strength[] _links;
    private readonly double[] _survival = new double[Cells + 1];
    private readonly double _low;
    private readonly double _perCell;

    internal LinkMinimum(ReadOnlySpan<Strength> links)
    {
        _links = links.ToArray();
        _low = double.PositiveInfinity;
        double high = double.PositiveInfinity;
        foreach (Strength link in _links)
        {
            double log = Math.Log(link.MedianNmm);
            _low = Math.Min(_low, log - Strength.Tail * link.Sigma);
            high = Math.Min(high, log + Strength.Tail * link.Sigma);
        }

        _perCell = Cells / (high - _low);
        for (int i = 0; i <= Cells && _links.Length > 0; i++)
        {
            _survival[i] = Exact(_low + i / _perCell);
        }
    }

    /// <summary>Chance that no link has given at a log torque.</summary>
    internal double Survival(double logTorque)
    {
        double place = (logTorque - _low) * _perCell;
        if (!(place > 0))
        {
            return 1;
        }

        if (place >= Cells)
        {
            return 0;
        }

        int cell = (int)place;
        return _survival[cell] + (place - cell) * (_survival[cell + 1] - _survival[cell]);
    }

    /// <summary>Which link gives, once the weakest stands no more than the torque whose survival was drawn.</summary>
    internal int Which(double survival, double draw)
    {
        double log = At(survival);
        double total = 0;
        for (int i = 0; i < _links.Length; i++)
        {
            total += Hazard(i, log);
        }

        double left = draw * total;
        for (int i = 0; i < _links.Length - 1; i++)
        {
            left -= Hazard(i, log);
            if (left < 0)
            {
                return i;
            }
        }

        return _links.Length - 1;
    }

    private double At(double survival)
    {
        int low = 0;
        int high = Cells;
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            (low, high) = _survival[middle] > survival ? (middle, high) : (low, middle);
        }

        return _low + low / _perCell;
    }

    private double Hazard(int link, double log)
    {
        var (survival, density) = _links[link].At(log);
        return survival > 0 ? density / survival : double.MaxValue / 16;
    }

    private double Exact(double log)
    {
        double product = 1;
        foreach (Strength link in _links)
        {
            product *= link.At(log).Survival;
        }

        return product;
    }
}
