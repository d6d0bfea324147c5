namespace Leverage.Workshop.Jobs;

/// <summary>A job file to begin with: every key with a comment, and a small chest, so that it works as it stands.</summary>
public static class StarterJob
{
    private const string Resource = "starter-job.toml";

    /// <summary>Its text.</summary>
    /// <returns>TOML.</returns>
    public static string Text()
    {
        using Stream stream = typeof(StarterJob).Assembly.GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"The program was built without {Resource}.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
