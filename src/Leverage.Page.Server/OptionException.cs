namespace Leverage.Page.Server;

/// <summary>The command line cannot be used: one line that says what, why and the cure.</summary>
internal sealed class OptionException(string line) : Exception(line)
{
    /// <summary>The line.</summary>
    internal string Line => Message;
}
