using System.Diagnostics;
using System.Globalization;

namespace Leverage.Benchmarks;

/// <summary>The outcome split timed in a few seconds, for the ratio against the NumPy script in the same run.</summary>
internal static class OutcomeTiming
{
    /// <summary>Prints chances and times, one figure a line.</summary>
    internal static void Print()
    {
        foreach (string condition in (ReadOnlySpan<string>)["rusted", "used"])
        {
            var benchmark = new OutcomeBenchmark { Condition = condition };
            benchmark.Build();
            double integral = Median(() => benchmark.Integral(), 300);
            long before = GC.GetAllocatedBytesForCurrentThread();
            double sample = Median(() => benchmark.MonteCarloSample(), 15) / OutcomeBenchmark.Samples;
            long bytes = (GC.GetAllocatedBytesForCurrentThread() - before) / (15L * OutcomeBenchmark.Samples);
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{condition} undone_percent {100 * benchmark.Integral():F3} integral_us {integral * 1e6:F1} sample_ns {sample * 1e9:F2} bytes_a_sample {bytes}"));
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
