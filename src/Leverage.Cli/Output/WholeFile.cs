using Leverage.Reading;

namespace Leverage.Cli.Output;

/// <summary>Writes a file whole or not at all, and never over one of the user's unless told to.</summary>
internal static class WholeFile
{
    private const int NoSpaceOnUnix = 28;
    private const int OverQuotaOnUnix = 122;
    private const int NoSpaceOnWindows = unchecked((int)0x80070070);
    private const string Memory = "/dev/shm";
    private static readonly string[] Devices = ["/dev", "/proc", "/sys"];

    /// <summary>
    /// Refuses a path that cannot be written, before any work is done: an existing file without --force-write, a folder
    /// that is not there.
    /// </summary>
    /// <param name="subject">The option that named the file.</param>
    /// <param name="path">The path given.</param>
    /// <param name="force">Whether --force-write was given.</param>
    /// <exception cref="InputException">The file may not or cannot be written.</exception>
    internal static void Check(string subject, string path, bool force)
    {
        if (Refusal(subject, path, force) is { } reason)
        {
            throw new InputException(subject, reason);
        }
    }

    /// <summary>Writes the file in full beside its place, then moves it there.</summary>
    /// <param name="subject">The option that named the file.</param>
    /// <param name="path">The path given.</param>
    /// <param name="force">Whether --force-write was given.</param>
    /// <param name="write">Writes the content.</param>
    /// <exception cref="InputException">The file may not or cannot be written.</exception>
    internal static void Write(string subject, string path, bool force, Action<Stream> write)
    {
        Check(subject, path, force);
        string beside = Path.Combine(Folder(subject, path), $".{Path.GetFileName(path)}.{Path.GetRandomFileName()}");
        try
        {
            using (var stream = new FileStream(beside, FileMode.CreateNew, FileAccess.Write, FileShare.None))
            {
                write(stream);
            }

            File.Move(beside, path, force);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentOutOfRangeException)
        {
            throw new InputException(subject, $"cannot write '{path}': {Reason(e)}.");
        }
        finally
        {
            Remove(beside);
        }
    }

    /// <summary>Whether a failed write says that the disk is full.</summary>
    internal static bool IsFull(Exception e) => e.HResult is NoSpaceOnUnix or NoSpaceOnWindows or OverQuotaOnUnix;

    /// <summary>Takes the unfinished file away; where its folder has gone, it has gone too.</summary>
    private static void Remove(string beside)
    {
        try
        {
            File.Delete(beside);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // What made the write fail is being said already; an unfinished file has a dot before its name and no reader.
        }
    }

    private static string? Refusal(string subject, string path, bool force) =>
        path.Trim().Length == 0 ? "the name of the file is empty."
        : PlainText.OneLine(path) != path ? $"cannot write '{path}': a character that does not print stands in the name."
        : Directory.Exists(path) ? $"'{path}' is a folder: name a file in it."
        : File.Exists(path) && !force ? $"'{path}' exists and was kept. Name another file, or add --force-write."
        : Folder(subject, path) is var folder && Devices.Any(device => IsIn(folder, device)) && !IsIn(folder, Memory)
            ? $"cannot write '{path}': no ordinary file can stand there. Name another place."
        : !Directory.Exists(folder) ? $"cannot write '{path}': there is no folder '{folder}'."
        : null;

    private static bool IsIn(string folder, string outer) => folder == outer || folder.StartsWith($"{outer}/", StringComparison.Ordinal);

    private static string Folder(string subject, string path)
    {
        try
        {
            return Path.GetDirectoryName(Path.GetFullPath(path)) ?? Path.GetPathRoot(Path.GetFullPath(path)) ?? ".";
        }
        catch (IOException)
        {
            throw new InputException(subject, $"cannot write '{path}': the folder this was started in has gone.");
        }
    }

    // The system's own texts are cut out of the published program, so the cause is worded here.
    private static string Reason(Exception e) => e switch
    {
        UnauthorizedAccessException => "no permission there",
        _ when IsFull(e) => "the disk is full",
        ArgumentOutOfRangeException => "a file as large as that is not allowed here", // What the runtime makes of EFBIG.
        PathTooLongException => "the name is too long",
        DirectoryNotFoundException => "there is no such folder",
        _ => "the disk or the folder refuses it",
    };
}
