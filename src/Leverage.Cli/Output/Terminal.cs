using System.Text;

namespace Leverage.Cli.Output;

/// <summary>Where answers and errors go. Closed pipes are quiet: what nobody reads need not be said.</summary>
internal sealed class Terminal : IDisposable
{
    private readonly bool _owned;

    /// <summary>A terminal on two writers, such as a test's.</summary>
    internal Terminal(TextWriter answers, TextWriter errors, bool colour)
        : this(answers, errors, colour, owned: false)
    {
    }

    private Terminal(TextWriter answers, TextWriter errors, bool colour, bool owned) =>
        (Answers, Errors, Colour, _owned) = (answers, errors, colour, owned);

    /// <summary>Standard output: answers and nothing else.</summary>
    internal TextWriter Answers { get; }

    /// <summary>Standard error: everything that is not an answer.</summary>
    internal TextWriter Errors { get; }

    /// <summary>Whether answers may be coloured: a terminal, and no NO_COLOR.</summary>
    internal bool Colour { get; }

    /// <summary>The terminal of this process.</summary>
    internal static Terminal OfProcess()
    {
        if (OperatingSystem.IsWindows() && !Console.IsOutputRedirected)
        {
            Console.OutputEncoding = Encoding.UTF8;
        }

        return new Terminal(
            Writer(Console.OpenStandardOutput()),
            Writer(Console.OpenStandardError()),
            !Console.IsOutputRedirected && Wanted(),
            owned: true);
    }

    /// <summary>Writes what is buffered; a pipe closed at the other end is no fault.</summary>
    public void Dispose()
    {
        foreach (TextWriter writer in (ReadOnlySpan<TextWriter>)[Answers, Errors])
        {
            try
            {
                writer.Flush();
            }
            catch (IOException)
            {
                // The reader has gone; it has all it wanted.
            }
        }

        if (_owned)
        {
            Answers.Dispose();
            Errors.Dispose();
        }
    }

    private static bool Wanted() =>
        string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"))
            && Environment.GetEnvironmentVariable("TERM") != "dumb";

    private static StreamWriter Writer(Stream stream) =>
        new(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), 8192) { NewLine = "\n" };
}
