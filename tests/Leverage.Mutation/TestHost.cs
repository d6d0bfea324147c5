using System.Globalization;
using System.Reflection;

/// <summary>
/// Runs inside the tests' own program, before its Main: wakes one mutant after the other and runs the tests of its room, so that
/// nothing is started or compiled anew. The list comes from a file; each result is a line of another.
/// </summary>
internal static class StartupHook
{
    public static void Initialize()
    {
        if (Environment.GetEnvironmentVariable("LEVERAGE_MUTANTS") is not { } list)
        {
            return;
        }

        using var results = new StreamWriter(list + ".results", append: true) { AutoFlush = true };
        FieldInfo? awake = Assembly.Load("Leverage.Core").GetType("Leverage.Mutants")?.GetField("Awake", BindingFlags.NonPublic | BindingFlags.Static);
        // Not its static Run, which waits for threads and then ends the program.
        Type runner = Assembly.Load("xunit.v3.runner.inproc.console").GetType("Xunit.Runner.InProc.SystemConsole.ConsoleRunner")!;
        MethodInfo run = runner.GetMethod("EntryPoint", [typeof(TextReader), typeof(TextWriter)])!;
        Assembly tests = Assembly.Load("Leverage.Core.Tests");
        foreach (string line in File.ReadAllLines(list))
        {
            string[] parts = line.Split(' ');
            awake?.SetValue(null, int.Parse(parts[0], CultureInfo.InvariantCulture));
            object one = Activator.CreateInstance(runner, parts[1..], tests)!;
            int code = ((Task<int>)run.Invoke(one, [TextReader.Null, Console.Out])!).GetAwaiter().GetResult();
            results.WriteLine($"{parts[0]} {(code == 0 ? "survived" : "killed")}");
        }

        Environment.Exit(0);
    }
}
