using System.Diagnostics;
using System.Runtime.InteropServices;

namespace Leverage.Cli.Tests.Shells;

/// <summary>Another program of the machine, with <c>leverage</c> on its path.</summary>
internal static class Shell
{
    /// <summary>Skips the test, loudly, where a program is not installed.</summary>
    public static void Need(string program) => Assert.SkipUnless(
        Environment.GetEnvironmentVariable("PATH")!.Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, program))),
        $"{program} is not installed on this machine");

    /// <summary>Runs a program on some input; both its outputs in one.</summary>
    public static (int Code, string Said) Run(string program, string[] args, string input = "", string? folder = null)
    {
        var start = new ProcessStartInfo(program, args)
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = folder ?? AppContext.BaseDirectory,
        };
        start.Environment["PATH"] = $"{AppContext.BaseDirectory}{Path.PathSeparator}{start.Environment["PATH"]}";
        start.Environment["DOTNET_ROOT"] = Path.GetFullPath(Path.Combine(RuntimeEnvironment.GetRuntimeDirectory(), "../../.."));
        start.Environment["LC_ALL"] = "C.UTF-8";
        using Process process = Process.Start(start)!;
        process.StandardInput.Write(input);
        process.StandardInput.Close();
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, said + errors.GetAwaiter().GetResult());
    }
}
