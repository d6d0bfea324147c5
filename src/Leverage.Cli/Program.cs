using System.Globalization;
using Leverage.Cli.Output;

namespace Leverage.Cli;

/// <summary>The program <c>leverage</c>.</summary>
internal static class Program
{
    /// <summary>Reads the command line, answers, and says by the exit code how it went.</summary>
    internal static int Main(string[] args)
    {
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.DefaultThreadCurrentUICulture = CultureInfo.InvariantCulture;
        using Terminal terminal = Terminal.OfProcess();
        return terminal.Written(CommandLine.Run(args, terminal));
    }
}
