using System.Diagnostics;
using System.Globalization;
using Leverage.Outcomes;

namespace Leverage.Benchmarks;

/// <summary>The outcome split timed in a few seconds, for the ratio against the NumPy script of the same run.</summary>
internal static class OutcomeTiming
{
    /// <summary>Prints chances and times, one set-up a line: a name and a figure, in turn.</summary>
    internal static void Print()
    {
        foreach (string setup in (ReadOnlySpan<string>)["held-hub", "loose-tube", "by-sight"])
        {
            var benchmark = new OutcomeBenchmark { SetUp = setup };
            benchmark.Build();
            double integral = Median(() => benchmark.Integral(), 300);
            double sample = Median(() => benchmark.MonteCarloSample(), 15) / OutcomeBenchmark.Samples;
            OutcomeShares all = benchmark.All();
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{setup} {integral * 1e6:F1} {sample * 1e9:F1} {all.ComesLoose} {all.StaysTight} {all.ToolGives} {all.StudTwistsOff} {all.CornersRound} {all.SlidesOff} {all.WheelTurns}"));
        }
    }

    /// <summary>Median over many runs of the processor's time, so that other work on the machine does not count.</summary>
    private static double Median(Func<double> run, int times)
    {
        for (int i = 0; i < Math.Max(20, times / 5); i++)
        {
            run();
        }

        double[] seconds = new double[times];
        for (int i = 0; i < times; i++)
        {
            TimeSpan before = Environment.CpuUsage.UserTime;
            long start = Stopwatch.GetTimestamp();
            run();
            double wall = Stopwatch.GetElapsedTime(start).TotalSeconds;
            double used = (Environment.CpuUsage.UserTime - before).TotalSeconds;
            seconds[i] = wall > 0.002 ? Math.Min(wall, used) : wall;
        }

        Array.Sort(seconds);
        return seconds[times / 2];
    }
}
