using System.Text;

namespace Leverage.Cli.Output;

/// <summary>
/// Where answers and errors go. Those of a process are kept until it ends and written in one piece. A pipe closed at the
/// other end is quiet, what nobody reads need not be said; an answer that cannot be written is a failure.
/// </summary>
internal sealed class Terminal : IDisposable
{
    /// <summary>A terminal on two writers, such as a test's.</summary>
    internal Terminal(TextWriter answers, TextWriter errors, bool colour) => (Answers, Errors, Colour) = (answers, errors, colour);

    /// <summary>Standard output: answers and nothing else.</summary>
    internal TextWriter Answers { get; }

    /// <summary>Standard error: everything that is not an answer.</summary>
    internal TextWriter Errors { get; }

    /// <summary>Whether answers may be coloured: a terminal, and no NO_COLOR.</summary>
    internal bool Colour { get; }

    /// <summary>The terminal of this process; <see cref="Written"/> ends it.</summary>
    internal static Terminal OfProcess()
    {
        if (OperatingSystem.IsWindows() && !Console.IsOutputRedirected)
        {
            Console.OutputEncoding = Encoding.UTF8;
        }

        return new Terminal(new StringWriter { NewLine = "\n" }, new StringWriter { NewLine = "\n" }, !Console.IsOutputRedirected && Wanted());
    }

    /// <summary>Writes what the process has to say.</summary>
    /// <param name="code">How it ended.</param>
    /// <returns>That, or the code of a failure where an answer could not be written.</returns>
    internal int Written(int code)
    {
        if (Fault(Answers, Console.OpenStandardOutput) is { } fault)
        {
            Errors.Write($"leverage: the answer cannot be written: {fault}.\n");
            code = ExitCode.Failed;
        }

        // Where errors cannot be written either, the exit code is all that is left to say it.
        Fault(Errors, Console.OpenStandardError);
        return code;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Answers.Dispose();
        Errors.Dispose();
    }

    private static string? Fault(TextWriter text, Func<Stream> open)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(text.ToString() ?? "");
        try
        {
            if (bytes.Length > 0)
            {
                using Stream stream = open();
                stream.Write(bytes);
            }

            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return WholeFile.IsFull(e) ? "the disk is full" : "standard output is closed or refuses it";
        }
    }

    private static bool Wanted() =>
        string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"))
            && Environment.GetEnvironmentVariable("TERM") != "dumb";
}
