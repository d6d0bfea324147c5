using System.Diagnostics;
using System.Text;

namespace Leverage.Hostile.Tests.Faults;

/// <summary>How a run of the real program ended.</summary>
/// <param name="Code">Its exit code.</param>
/// <param name="Answer">Standard output, byte for byte.</param>
/// <param name="Errors">Standard error.</param>
internal sealed record Ended(int Code, byte[] Answer, string Errors)
{
    /// <summary>The answer as text.</summary>
    internal string Text => Encoding.UTF8.GetString(Answer);
}

/// <summary>The program as it is run by a person, in a folder of its own that is thrown away.</summary>
internal sealed class RealProgram : IDisposable
{
    private static readonly string Program = Path.Combine(AppContext.BaseDirectory, "leverage.dll");

    /// <summary>The folder the runs start in.</summary>
    internal string Folder { get; } = Directory.CreateTempSubdirectory("leverage-faults-").FullName;

    /// <inheritdoc/>
    public void Dispose()
    {
        if (Directory.Exists(Folder))
        {
            Directory.Delete(Folder, recursive: true);
        }
    }

    /// <summary>Runs the program.</summary>
    internal Ended Run(string words, params (string Name, string? Value)[] environment) =>
        Wait(Start("dotnet", [Program, .. words.Split(' ')], environment));

    /// <summary>Runs a line of the shell in which <c>$leverage</c> is the program: redirections, limits.</summary>
    internal Ended Shell(string line, params (string Name, string? Value)[] environment) =>
        Wait(Start("bash", ["-c", line.Replace("$leverage", $"dotnet '{Program}'", StringComparison.Ordinal)], environment));

    /// <summary>Writes a file into the folder.</summary>
    internal string Put(string name, byte[] bytes)
    {
        string path = Path.Combine(Folder, name);
        File.WriteAllBytes(path, bytes);
        return path;
    }

    /// <summary>Writes a text into the folder.</summary>
    internal string Put(string name, string text) => Put(name, Encoding.UTF8.GetBytes(text));

    /// <summary>Copies a shared example into the folder.</summary>
    internal void Copy(string name) => File.Copy(Path.Combine(AppContext.BaseDirectory, "shared", "pickup", name), Path.Combine(Folder, name));

    private Process Start(string program, string[] words, (string Name, string? Value)[] environment)
    {
        var start = new ProcessStartInfo(program)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
            UseShellExecute = false,
            WorkingDirectory = Folder,
        };
        foreach (string word in words)
        {
            start.ArgumentList.Add(word);
        }

        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        return Process.Start(start)!;
    }

    private static Ended Wait(Process process)
    {
        using (process)
        {
            using var answer = new MemoryStream();
            Task copied = process.StandardOutput.BaseStream.CopyToAsync(answer);
            string errors = process.StandardError.ReadToEnd();
            copied.Wait();
            process.WaitForExit();
            return new Ended(process.ExitCode, answer.ToArray(), errors);
        }
    }
}
