using FsCheck.Xunit;
using Leverage.Outcomes;
using Leverage.Probability;

namespace Leverage.Tests.Outcomes;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class LogNormalSpreadLaws
{
    [Property]
    public void A_spread_through_two_percentiles_passes_through_them(Sized median, Sized sigma)
    {
        var spread = new Spread(median.Log(1, 1e6), sigma.Log(0.001, 1));
        Near.Equal(spread.Sigma, LogNormalSpread.SigmaFromP10P90(spread.Quantile(0.1), spread.Quantile(0.9)), 1e-6);
        Near.Equal(spread.Sigma, LogNormalSpread.SigmaFromP5P95(spread.Quantile(0.05), spread.Quantile(0.95)), 1e-6);
        Near.Equal(spread.Median, spread.Quantile(0.5), 1e-9);
    }

    [Property]
    public void Percentiles_lie_evenly_about_the_median_on_the_scale_of_ratios(Sized median, Sized sigma, Sized share)
    {
        var spread = new Spread(median.Log(1, 1e6), sigma.Log(0.001, 1));
        double p = share.Even(0.001, 0.499);
        Near.Equal(spread.Median * spread.Median, spread.Quantile(p) * spread.Quantile(1 - p), 1e-9);
        Assert.True(spread.Quantile(p) < spread.Median);
    }

    [Property]
    public void A_capped_strength_passes_its_cap_at_no_share(Sized median, Sized cap, Sized share)
    {
        double middle = median.Log(1e3, 1e6);
        var strength = new Strength(middle, 0.3, middle * cap.Log(0.5, 2));
        double p = share.Even(0.01, 0.99);
        Near.Equal(Math.Min(strength.CapNmm, new Spread(middle, 0.3).Quantile(p)), strength.Quantile(p));
    }
}
