namespace Leverage.Page.Server;

/// <summary>The code of the local network, kept on this machine for whoever runs the program.</summary>
internal static class CodeFile
{
    private const int Letters = 32;

    /// <summary>The kept code; one is made and kept where there is none.</summary>
    /// <exception cref="OptionException">It cannot be kept.</exception>
    internal static string Kept() => Kept(Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.ApplicationData, Environment.SpecialFolderOption.Create), "leverage", "page-code"));

    /// <summary>The code kept in a file.</summary>
    internal static string Kept(string path)
    {
        try
        {
            if (File.Exists(path) && File.ReadAllText(path).Trim() is { Length: Letters } kept && kept.All(char.IsAsciiHexDigitLower))
            {
                return kept;
            }

            string code = PageOptions.NewCode();
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            var mode = new FileStreamOptions { Mode = FileMode.Create, Access = FileAccess.Write };
            if (!OperatingSystem.IsWindows())
            {
                mode.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
            }

            using var writer = new StreamWriter(path, mode);
            writer.Write(code);
            return code;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new OptionException($"--keep-code: cannot keep it in {path}. Leave the option out, and a new one is made at each start.");
        }
    }
}
