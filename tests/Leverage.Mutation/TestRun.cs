using System.Diagnostics;
using System.Globalization;

namespace Leverage.Mutation;

/// <summary>Runs the tests of the core against a changed core, in a copy of their folder: one program for many mutants.</summary>
internal sealed class TestRun : IDisposable
{
    /// <summary>Processor time without a result past which a mutant is taken as endless.</summary>
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(90);

    private readonly string _folder;
    private int _failed;

    public TestRun(string root, string built)
    {
        _folder = Path.Combine(root, "artifacts", "mutation-" + Environment.ProcessId.ToString(CultureInfo.InvariantCulture));
        foreach (string file in Directory.EnumerateFiles(built, "*", SearchOption.AllDirectories))
        {
            string copy = Path.Combine(_folder, Path.GetRelativePath(built, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }

    private string List => Path.Combine(_folder, "mutants.txt");

    private string Results => List + ".results";

    /// <summary>Wakes one mutant after the other; each with the tests to run. What is not started stays out of the answer.</summary>
    public Dictionary<int, Fate> Of(byte[] core, IReadOnlyList<(int Id, string Tests)> asked)
    {
        File.WriteAllBytes(Path.Combine(_folder, "Leverage.Core.dll"), core);
        var fates = new Dictionary<int, Fate>();
        var left = asked.ToList();
        while (left.Count > 0)
        {
            // Asleep first: statics get their true values, and the tests must pass.
            File.WriteAllLines(List, left.Select(one => one.Tests).Distinct(StringComparer.Ordinal).Select(tests => $"-1 -noColor {tests}")
                .Concat(left.Select(one => string.Create(CultureInfo.InvariantCulture, $"{one.Id} -stopOnFail -noColor {one.Tests}"))));
            File.Delete(Results);
            int before = fates.Count;
            bool ended = Run();
            Gather(fates);
            left.RemoveAll(one => fates.ContainsKey(one.Id));
            if (left.Count > 0)
            {
                bool stuck = fates.Count == before && _failed == 0;
                if (ended && stuck && !AsleepPassed())
                {
                    throw new InvalidOperationException($"the tests' program ended without a result: {File.ReadAllText(Path.Combine(_folder, "run.log"))}");
                }

                // The first without a result runs on without end, or took the tests' program down with it.
                if (!ended || stuck)
                {
                    fates[left[0].Id] = ended ? Fate.Crashed : Fate.NeverEnds;
                    left.RemoveAt(0);
                }
            }
        }

        return fates;
    }

    /// <summary>How a core with one mutant awake from the start fares.</summary>
    public Fate OfAlone(byte[] core, string which)
    {
        File.WriteAllBytes(Path.Combine(_folder, "Leverage.Core.dll"), core);
        File.WriteAllText(List, $"0 -stopOnFail -noColor {which}\n");
        File.Delete(Results);
        bool ended = Run();
        bool survived = File.Exists(Results) && File.ReadAllText(Results).Contains("survived", StringComparison.Ordinal);
        return !ended ? Fate.NeverEnds : survived ? Fate.Survived : Fate.KilledByTest;
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private bool AsleepPassed() => File.Exists(Results) && File.ReadLines(Results).Any(line => line == "-1 survived");

    private void Gather(Dictionary<int, Fate> fates)
    {
        foreach (string[] parts in (File.Exists(Results) ? File.ReadAllLines(Results) : []).Select(line => line.Split(' ')))
        {
            int id = int.Parse(parts[0], CultureInfo.InvariantCulture);
            if (id >= 0)
            {
                fates[id] = parts[1] == "survived" ? Fate.Survived : Fate.KilledByTest;
            }
            else if (parts[1] != "survived")
            {
                // A random test may fail by itself: once more before giving up.
                if (_failed++ < 3)
                {
                    Console.WriteLine("a test failed on the unchanged core: once more");
                    return;
                }

                string failed = string.Join('\n', File.ReadLines(Path.Combine(_folder, "run.log")).Where(line => line.Contains("[FAIL]", StringComparison.Ordinal)));
                throw new InvalidOperationException($"the tests do not pass on the unchanged core:\n{failed}");
            }
        }
    }

    /// <summary>One run of the program; false where it had to be stopped.</summary>
    private bool Run()
    {
        string hook = Path.Combine(AppContext.BaseDirectory, "Leverage.Mutation.dll");
        using Process process = Process.Start("bash", ["-c", $"LEVERAGE_MUTANTS='{List}' DOTNET_STARTUP_HOOKS='{hook}' "
            + $"exec dotnet exec '{_folder}/Leverage.Core.Tests.dll' > '{_folder}/run.log' 2>&1 < /dev/null"]);
        long seen = 0;
        TimeSpan since = TimeSpan.Zero;
        while (!process.WaitForExit(500))
        {
            long length = File.Exists(Results) ? new FileInfo(Results).Length : 0;
            TimeSpan now = Used(process);
            since = length == seen ? since : now;
            seen = length;
            if (now - since > Longest)
            {
                process.Kill(entireProcessTree: true);
                return false;
            }
        }

        return true;
    }

    private static TimeSpan Used(Process process)
    {
        try
        {
            return process.TotalProcessorTime;
        }
        catch (InvalidOperationException)
        {
            // It ended between two looks.
            return TimeSpan.Zero;
        }
    }
}
