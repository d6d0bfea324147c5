using System.Globalization;
using System.Runtime.Versioning;

[assembly: SupportedOSPlatform("browser")]

namespace Leverage.Page;

/// <summary>The start of the page's code in the browser; everything is asked through <see cref="Door"/>.</summary>
internal static class Program
{
    private static void Main() =>
        CultureInfo.CurrentCulture = CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
}
