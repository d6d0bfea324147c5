using System.Runtime.CompilerServices;

namespace Leverage.Page.Tests;

/// <summary>Where the files that program and tests share are.</summary>
internal static class Repository
{
    internal static string Root { get; } = Path.GetFullPath(Path.Combine(Here(), "..", ".."));

    private static string Here([CallerFilePath] string path = "") => Path.GetDirectoryName(path)!;
}
