using System.Text;
using Leverage.Cli;
using Leverage.Cli.Output;
using Leverage.Hostile.Tests.Generated;
using Leverage.Hostile.Tests.Schemas;

namespace Leverage.Hostile.Tests.Running;

/// <summary>The whole command line in this process, in a folder of its own: what it writes is looked at and thrown away.</summary>
internal static class CommandTrial
{
    private static readonly string Folder = Enter();
    private static readonly string TextFile = Path.Combine(Folder, "in", "text.toml");

    internal static string? Broken(HostileInput input)
    {
        Put(TextFile, input.Text);
        Put(Path.Combine(Folder, "in", HostileInput.BesideName), input.Beside);
        string[] words = [.. input.Words.Select(Placed)];
        using var answers = new StringWriter();
        using var errors = new StringWriter();
        using var terminal = new Terminal(answers, errors, colour: false);
        int code = CommandLine.Run(words, terminal);
        bool json = words.Contains("--json", StringComparer.Ordinal);
        return Manners.Broken(code, answers.ToString(), errors.ToString(), json)
            ?? (json ? Unlike(words, answers.ToString()) : null)
            ?? Left(code);
    }

    /// <summary>An answer in JSON that its command's published schema does not allow.</summary>
    private static string? Unlike(string[] words, string answer) =>
        answer.StartsWith('{') && words.FirstOrDefault(Published.Has) is { } command ? Published.Broken(command, answer) : null;

    /// <summary>A file left behind by a refusal, or half a file by anything.</summary>
    private static string? Left(int code)
    {
        string? broken = null;
        foreach (string file in Directory.EnumerateFileSystemEntries(Folder))
        {
            if (file == Path.Combine(Folder, "in"))
            {
                continue;
            }

            broken ??= code == 2 ? $"a refusal left '{file}'" : Path.GetFileName(file).StartsWith('.') ? $"half a file: '{file}'" : null;
            File.Delete(file);
        }

        return broken;
    }

    private static string Placed(string word) => word.Contains('{', StringComparison.Ordinal)
        ? word.Replace(HostileInput.TextFile, TextFile, StringComparison.Ordinal).Replace(HostileInput.Folder, Folder, StringComparison.Ordinal)
        : word;

    private static void Put(string file, string? text)
    {
        if (text is not null)
        {
            File.WriteAllBytes(file, Bytes(text));
        }
    }

    /// <summary>UTF-8; half a surrogate pair, which has none, becomes a byte that no text has.</summary>
    private static byte[] Bytes(string text) => text.AsSpan().IndexOfAnyInRange('\ud800', '\udfff') < 0
        ? Encoding.UTF8.GetBytes(text)
        : [.. text.EnumerateRunes().SelectMany(rune => rune == Rune.ReplacementChar ? [0xff] : Encoding.UTF8.GetBytes(rune.ToString()))];

    private static string Enter()
    {
        string shared = Directory.Exists("/dev/shm") ? "/dev/shm" : Path.GetTempPath();
        string folder = Directory.CreateDirectory(Path.Combine(shared, $"leverage-hostile-{Path.GetRandomFileName()}")).FullName;
        Directory.CreateDirectory(Path.Combine(folder, "in"));
        Environment.CurrentDirectory = folder;
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(folder, recursive: true);
        return folder;
    }
}
