namespace Leverage.Tests.Proof;

/// <summary>The law test that holds each formula for all inputs: the list laws.csv.</summary>
internal static class Laws
{
    public static IReadOnlyDictionary<string, string> Tests { get; } = Read();

    private static Dictionary<string, string> Read()
    {
        string file = Path.Combine(AppContext.BaseDirectory, "Proof", "laws.csv");
        return File.ReadLines(file).Skip(1).Select(line => line.Split(','))
            .ToDictionary(cells => cells[0], cells => cells[1], StringComparer.Ordinal);
    }
}
