using System.Globalization;
using System.Security.Cryptography;
using Leverage.Reading;

namespace Leverage.Page.Serving;

/// <summary>How the page is served.</summary>
/// <param name="Port">Port; 0 for any free one.</param>
/// <param name="Code">Code that every address starts with; null on this machine alone, where none is needed.</param>
internal sealed record PageOptions(int Port, string? Code)
{
    /// <summary>Port when none is said, so that a bookmark of yesterday works today.</summary>
    internal const int UsualPort = 8460;

    /// <summary>What <c>--help</c> says.</summary>
    internal const string Help = """
        leverage-page: drag the overlap of a slipped-over extension and see it let go.

          leverage-page [--port PORT] [--lan]

          --port PORT   port to listen on (8460); 0 takes any free one
          --lan         serve the local network too, behind a code made anew at each start; off by default
          --help        this page

        Nothing is stored, and nothing is asked of any other machine. Ctrl+C stops it.

        """;

    /// <summary>Whether other machines may ask.</summary>
    internal bool Lan => Code is not null;

    /// <summary>What every path starts with.</summary>
    internal string Base => Code is null ? "" : $"/{Code}";

    /// <summary>Reads the command line.</summary>
    /// <param name="args">Its words.</param>
    /// <returns>The options; null when help is asked for.</returns>
    /// <exception cref="InputException">A word is not known or a port is none.</exception>
    internal static PageOptions? Read(string[] args)
    {
        var (port, lan) = (UsualPort, false);
        for (int i = 0; i < args.Length; i++)
        {
            switch (args[i])
            {
                case "--help" or "-h":
                    return null;
                case "--lan":
                    lan = true;
                    break;
                case "--port":
                    port = PortOf(++i < args.Length ? args[i] : "");
                    break;
                default:
                    throw new InputException($"there is no option '{args[i]}' here. All of them: leverage-page --help.");
            }
        }

        return new PageOptions(port, lan ? NewCode() : null);
    }

    /// <summary>A code nobody guesses: 128 random bits, made anew at each start.</summary>
    internal static string NewCode() => RandomNumberGenerator.GetHexString(32, lowercase: true);

    private static int PortOf(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int port) && port <= 65535
            ? port
            : throw new InputException("--port", $"cannot use '{text}': accepted is 0 to 65535. Write for example --port {UsualPort}.");
}
