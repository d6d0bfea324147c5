using System.Globalization;
using System.Security.Cryptography;

namespace Leverage.Page.Server;

/// <summary>How the page is served.</summary>
/// <param name="Port">Port; 0 for any free one.</param>
/// <param name="Code">Code that every address starts with; null on this machine alone, where none is needed.</param>
/// <param name="Folder">Folder of the page's files.</param>
/// <param name="SetUp">What the printed addresses carry behind their #, such as <c>loosen?hex=36mm</c>.</param>
internal sealed record PageOptions(int Port, string? Code, string Folder, string SetUp = "")
{
    /// <summary>Port when none is said, so that a bookmark of yesterday works today.</summary>
    internal const int UsualPort = 8460;

    /// <summary>What <c>--help</c> says.</summary>
    internal const string Help = """
        leverage-page: hands the page to this machine or the local network. The page works everything out in the browser.

          leverage-page [--port PORT] [--lan [--keep-code]] [--set-up ADDRESS] [--folder FOLDER]

          --port PORT       port to listen on (8460); 0 takes any free one
          --lan             serve the local network too, behind a code made anew at each start; off by default
          --keep-code       keep that code on this machine, so that a bookmark of yesterday works today
          --set-up ADDRESS  address of a set-up of yours: the printed address and its QR code carry it
          --folder FOLDER   the page's files (page, beside this program)
          --help            this page

        Only files are handed out: no question is answered here and nothing is asked of any other machine. Ctrl+C stops it.

        """;

    /// <summary>Whether other machines may ask.</summary>
    internal bool Lan => Code is not null;

    /// <summary>What every path starts with.</summary>
    internal string Base => Code is null ? "" : $"/{Code}";

    /// <summary>Reads the command line.</summary>
    /// <param name="args">Its words.</param>
    /// <returns>The options; null when help is asked for.</returns>
    /// <exception cref="OptionException">A word is not known or a port is none.</exception>
    internal static PageOptions? Read(string[] args)
    {
        var (port, lan, keep, folder, setUp) = (UsualPort, false, false, UsualFolder(), "");
        for (int i = 0; i < args.Length; i++)
        {
            switch (args[i])
            {
                case "--help" or "-h":
                    return null;
                case "--lan":
                    lan = true;
                    break;
                case "--keep-code":
                    keep = true;
                    break;
                case "--port":
                    port = PortOf(Value(args, ++i));
                    break;
                case "--folder":
                    folder = Value(args, ++i);
                    break;
                case "--set-up":
                    string address = Value(args, ++i);
                    setUp = address[(address.IndexOf('#', StringComparison.Ordinal) + 1)..];
                    break;
                default:
                    throw new OptionException($"there is no option '{args[i]}' here. All of them: leverage-page --help.");
            }
        }

        return keep && !lan
            ? throw new OptionException("--keep-code: is of no use without --lan. Write: leverage-page --lan --keep-code.")
            : new PageOptions(port, lan ? keep ? CodeFile.Kept() : NewCode() : null, folder, setUp);
    }

    /// <summary>A code nobody guesses: 128 random bits.</summary>
    internal static string NewCode() => RandomNumberGenerator.GetHexString(32, lowercase: true);

    /// <summary>The files beside the program, or those of the repository it was built in.</summary>
    private static string UsualFolder()
    {
        string beside = Path.Combine(AppContext.BaseDirectory, "page");
        string built = Path.GetFullPath(Path.Combine(AppContext.BaseDirectory, "..", "..", "..", "..", "..", "artifacts", "page"));
        return Directory.Exists(beside) || !Directory.Exists(built) ? beside : built;
    }

    private static string Value(string[] args, int i) =>
        i < args.Length ? args[i] : throw new OptionException($"{args[i - 1]}: its value is missing. All options: leverage-page --help.");

    private static int PortOf(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int port) && port <= 65535
            ? port
            : throw new OptionException($"--port: cannot use '{text}': accepted is 0 to 65535. Write for example --port {UsualPort}.");
}
