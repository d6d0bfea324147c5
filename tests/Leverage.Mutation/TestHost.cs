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
        FieldInfo? awake = Assembly.Load("Leverage.Core").GetType("Leverage.Mutants")?.GetField("Awake");
        MethodInfo run = Assembly.Load("xunit.v3.runner.inproc.console")
            .GetType("Xunit.Runner.InProc.SystemConsole.ConsoleRunner")!.GetMethod("Run", [typeof(string[])])!;
        foreach (string line in File.ReadAllLines(list))
        {
            string[] parts = line.Split(' ');
            awake?.SetValue(null, int.Parse(parts[0], CultureInfo.InvariantCulture));
            int code = ((Task<int>)run.Invoke(null, [parts[1..]])!).GetAwaiter().GetResult();
            results.WriteLine($"{parts[0]} {(code == 0 ? "survived" : "killed")}");
        }

        Environment.Exit(0);
    }
}
