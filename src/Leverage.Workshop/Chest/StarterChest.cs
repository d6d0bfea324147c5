namespace Leverage.Workshop.Chest;

/// <summary>A commented chest to start from.</summary>
public static class StarterChest
{
    /// <summary>Its text: a chest that can be read as it stands, with one piece of each kind.</summary>
    /// <returns>TOML.</returns>
    public static string Text()
    {
        using Stream stream = typeof(StarterChest).Assembly.GetManifestResourceStream("starter-chest.toml")
            ?? throw new InvalidOperationException("The starter chest is not in the program.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
