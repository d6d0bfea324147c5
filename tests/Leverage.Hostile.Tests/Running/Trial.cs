using System.Diagnostics;
using System.Globalization;
using Leverage.Hostile.Tests.Generated;

namespace Leverage.Hostile.Tests.Running;

/// <summary>Gives one input to its door and holds the outcome to the manners.</summary>
internal static class Trial
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(2);

    /// <summary>What this input does that it must not; null for nothing.</summary>
    /// <remarks>A machine that is busy elsewhere can stop anything for seconds: processor time counts where it is less, and what is slow once is tried again.</remarks>
    internal static string? Of(HostileInput input)
    {
        using Watchdog watch = Watchdog.Over(input);
        for (int tries = 0; ; tries++)
        {
            long start = Stopwatch.GetTimestamp();
            TimeSpan before = Environment.CpuUsage.TotalTime;
            string? broken = Once(input);
            TimeSpan took = TimeSpan.FromTicks(Math.Min(Stopwatch.GetElapsedTime(start).Ticks, (Environment.CpuUsage.TotalTime - before).Ticks));
            if (broken is not null || took < Longest)
            {
                return broken;
            }

            if (tries == 2)
            {
                return string.Create(CultureInfo.InvariantCulture, $"it took {took.TotalSeconds:F1} s, three times");
            }
        }
    }

    private static string? Once(HostileInput input)
    {
        try
        {
            return input.Door switch
            {
                Door.Reader => ReaderTrial.Broken(input),
                Door.File => FileTrial.Broken(input),
                Door.Command => CommandTrial.Broken(input),
                _ => PageTrial.Broken(input),
            };
        }
        catch (Exception e)
        {
            return $"unhandled: {e.ToString()}";
        }
    }
}

/// <summary>Ends the process with the input on standard error where one never comes back.</summary>
internal sealed class Watchdog : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private static volatile HostileInput? Running;
    private static long Since;
    private static readonly Timer Bark = new(_ => Look(), null, Patience, TimeSpan.FromSeconds(5));

    private static readonly Watchdog Only = new();

    internal static Watchdog Over(HostileInput input)
    {
        GC.KeepAlive(Bark);
        Volatile.Write(ref Since, Stopwatch.GetTimestamp());
        Running = input;
        return Only;
    }

    /// <inheritdoc/>
    public void Dispose() => Running = null;

    private static void Look()
    {
        if (Running is { } input && Stopwatch.GetElapsedTime(Volatile.Read(ref Since)) > Patience)
        {
            Console.Error.WriteLine($"a hang: {input.ToString()}");
            Environment.Exit(70);
        }
    }
}
