using System.Globalization;
using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;
using System.Text;

namespace Leverage.Page.Server;

/// <summary>What the terminal shows once the page is served: where to open it.</summary>
internal static class Welcome
{
    /// <summary>The words, with a code to scan when the local network is served.</summary>
    internal static string Of(PageServer server)
    {
        var text = new StringBuilder();
        text.Append("Leverage's page, on this machine: ").Append(Address("127.0.0.1", server)).Append('\n');
        if (server.Options.Lan)
        {
            Network(text, server);
        }

        return text.Append("Ctrl+C stops it.\n").ToString();
    }

    /// <summary>The page's address at a host.</summary>
    internal static string Address(string host, PageServer server) =>
        string.Create(CultureInfo.InvariantCulture, $"http://{host}:{server.Port}{server.Options.Base}/")
        + (server.Options.SetUp.Length > 0 ? $"#{server.Options.SetUp}" : "");

    private static void Network(StringBuilder text, PageServer server)
    {
        string[] hosts = [.. Hosts()];
        foreach (string host in hosts)
        {
            text.Append("On the local network: ").Append(Address(host, server)).Append('\n');
        }

        text.Append(hosts.Length == 0
            ? "No local network was found: only this machine can open it.\n"
            : $"\n{TerminalCode.Of(Address(hosts[0], server))}\nScan it with the phone. Whoever has this address can open the page until you stop it.\n");
    }

    /// <summary>Addresses of this machine on its networks, those with a gateway first.</summary>
    private static IEnumerable<string> Hosts() =>
        from card in NetworkInterface.GetAllNetworkInterfaces()
        where card is { OperationalStatus: OperationalStatus.Up, NetworkInterfaceType: not NetworkInterfaceType.Loopback }
        let properties = card.GetIPProperties()
        orderby properties.GatewayAddresses.Count == 0
        from address in properties.UnicastAddresses
        where address.Address.AddressFamily == AddressFamily.InterNetwork && !IPAddress.IsLoopback(address.Address)
        select address.Address.ToString();
}
