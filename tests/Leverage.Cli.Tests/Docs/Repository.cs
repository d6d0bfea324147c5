namespace Leverage.Cli.Tests.Docs;

/// <summary>The repository the tests were built from.</summary>
internal static class Repository
{
    /// <summary>Its folder.</summary>
    public static string Root { get; } = Found();

    private static string Found()
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Leverage.sln")))
        {
            folder = Path.GetDirectoryName(folder)!;
        }

        return folder;
    }
}
