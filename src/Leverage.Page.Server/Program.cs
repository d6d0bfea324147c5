using System.Globalization;

namespace Leverage.Page.Server;

/// <summary>The program <c>leverage-page</c>: serves the page on this machine until it is told to stop.</summary>
internal static class Program
{
    /// <summary>Reads the command line, serves, and says by the exit code how it ended.</summary>
    internal static async Task<int> Main(string[] args)
    {
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.DefaultThreadCurrentUICulture = CultureInfo.InvariantCulture;
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;
        try
        {
            return PageOptions.Read(args) is { } options ? await Serve(options) : Help();
        }
        catch (OptionException e)
        {
            return Refuse(e.Line, 2);
        }
        catch (IOException e)
        {
            return Refuse($"cannot listen there: {e.Message.ReplaceLineEndings(" ")} Another may be running; --port 0 takes any free port.", 1);
        }
    }

    private static async Task<int> Serve(PageOptions options)
    {
        await using PageServer server = PageServer.Build(options);
        await server.Start();
        Console.Out.Write(Welcome.Of(server));
        await server.UntilStopped();
        return 0;
    }

    private static int Help()
    {
        Console.Out.Write(PageOptions.Help);
        return 0;
    }

    private static int Refuse(string line, int code)
    {
        Console.Error.Write($"leverage-page: {line}\n");
        return code;
    }
}
