namespace Leverage.Tests.Proof;

/// <summary>Formulas no printed number checks, with the law test that covers each: the list law-only.csv.</summary>
internal static class LawOnly
{
    public static IReadOnlyDictionary<string, string> Tests { get; } = Read();

    private static Dictionary<string, string> Read()
    {
        string file = Path.Combine(AppContext.BaseDirectory, "Proof", "law-only.csv");
        return File.ReadLines(file).Skip(1).Select(line => line.Split(','))
            .ToDictionary(cells => cells[0], cells => cells[1], StringComparer.Ordinal);
    }
}
