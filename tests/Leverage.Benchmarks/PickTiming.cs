using System.Diagnostics;
using System.Globalization;
using Leverage.Assessments;
using Leverage.Requests;
using Leverage.Threads;
using Leverage.Workshop.Chest;
using Leverage.Workshop.Files;
using Leverage.Workshop.Picking;
using UnitsNet;

namespace Leverage.Benchmarks;

/// <summary>Picking out of the big chest: nanoseconds and bytes for one set-up, without the search for what to buy.</summary>
internal static class PickTiming
{
    private const int Runs = 25;

    /// <summary>Prints the figures on one line.</summary>
    internal static void Print()
    {
        var request = new PickRequest
        {
            Nut = new LooseningRequest
            {
                BookTorque = Torque.FromNewtonMeters(460),
                Thread = ThreadCatalog.Named("M24x1.5"),
                Condition = "rusted",
                AcrossFlats = Length.FromMillimeters(36),
            },
            Chest = ChestReader.Read("big chest", TomlFile.Parse("big chest", BigChest.Text())),
            Advise = false,
        };
        int setups = Picker.Pick(request).Tally.Setups;
        double[] seconds = new double[Runs];
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < Runs; i++)
        {
            TimeSpan start = Environment.CpuUsage.UserTime;
            long clock = Stopwatch.GetTimestamp();
            Picker.Pick(request);
            seconds[i] = Math.Min(Stopwatch.GetElapsedTime(clock).TotalSeconds, (Environment.CpuUsage.UserTime - start).TotalSeconds);
        }

        long bytes = (GC.GetAllocatedBytesForCurrentThread() - before) / (Runs * (long)setups);
        Array.Sort(seconds);
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"setups {setups} ns_a_setup {1e9 * seconds[Runs / 2] / setups:F0} bytes_a_setup {bytes} ms {1e3 * seconds[Runs / 2]:F1}"));
    }
}
