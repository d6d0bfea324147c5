namespace Leverage.Outcomes;

/// <summary>
/// The strength of the weakest of several links, as tables over the log torque: its survival, and which link gives there.
/// </summary>
internal sealed class LinkMinimum
{
    private const int Cells = 1024;
    private const int Brackets = 1024;
    private readonly Strength[] _links;
    private readonly double[] _survival = new double[Cells + 1];
    private readonly double[] _shares;
    private readonly int[] _cellAt = new int[Brackets + 2];
    private readonly double _low;
    private readonly double _perCell;

    internal LinkMinimum(ReadOnlySpan<Strength> links)
    {
        _links = links.ToArray();
        _shares = new double[_survival.Length * _links.Length];
        if (_links.Length == 0)
        {
            // Nothing can give: one for every torque.
            Array.Fill(_survival, 1);
            return;
        }

        _low = double.PositiveInfinity;
        double high = double.PositiveInfinity;
        foreach (Strength link in _links)
        {
            double log = Math.Log(link.MedianNmm);
            _low = Math.Min(_low, log - Strength.Tail * link.Sigma);
            high = Math.Min(high, log + Strength.Tail * link.Sigma);
        }

        _perCell = Cells / (high - _low);
        for (int i = 0; i < _survival.Length; i++)
        {
            Fill(i, _low + i / _perCell);
        }

        for (int bracket = 0; bracket < _cellAt.Length; bracket++)
        {
            _cellAt[bracket] = Cell(1 - (double)bracket / Brackets, 0, Cells);
        }
    }

    /// <summary>Chance that no link has given at a log torque.</summary>
    internal double Survival(double logTorque)
    {
        double place = Math.Min(Math.Max((logTorque - _low) * _perCell, 0), Cells - 1e-9);
        int cell = (int)place;
        double low = _survival[cell];
        return low + (place - cell) * (_survival[cell + 1] - low);
    }

    /// <summary>Which link gives, at the torque of a drawn survival.</summary>
    internal int Which(double survival, double draw)
    {
        int bracket = (int)((1 - survival) * Brackets);
        int from = Cell(survival, _cellAt[bracket], Math.Min(Cells, _cellAt[bracket + 1] + 1)) * _links.Length;
        for (int i = 0; i < _links.Length - 1; i++)
        {
            if (draw < _shares[from + i])
            {
                return i;
            }
        }

        return _links.Length - 1;
    }

    /// <summary>The last cell, of those between two, whose survival is still above one.</summary>
    private int Cell(double survival, int low, int high)
    {
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            (low, high) = _survival[middle] > survival ? (middle, high) : (low, middle);
        }

        return low;
    }

    /// <summary>Survival of all links at a log torque, and the running sum of each link's share of the hazard.</summary>
    private void Fill(int cell, double log)
    {
        double product = 1;
        double hazard = 0;
        for (int i = 0; i < _links.Length; i++)
        {
            var (survival, density) = _links[i].At(log);
            product *= survival;
            hazard += survival > 0 ? density / survival : 1e12;
            _shares[cell * _links.Length + i] = hazard;
        }

        _survival[cell] = product;
        for (int i = 0; i < _links.Length; i++)
        {
            _shares[cell * _links.Length + i] /= Math.Max(hazard, double.Epsilon);
        }
    }
}
