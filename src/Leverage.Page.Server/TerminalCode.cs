using System.Text;
using QRCoder;

namespace Leverage.Page.Server;

/// <summary>A QR code in a terminal, two rows of modules to a line of text.</summary>
internal static class TerminalCode
{
    /// <summary>The code of an address: light modules drawn, so that it reads on a dark terminal; readers take either.</summary>
    internal static string Of(string address)
    {
        using var generator = new QRCodeGenerator();
        using QRCodeData data = generator.CreateQrCode(address, QRCodeGenerator.ECCLevel.L);
        var rows = data.ModuleMatrix;
        var text = new StringBuilder();
        for (int y = 0; y < rows.Count; y += 2)
        {
            for (int x = 0; x < rows[y].Length; x++)
            {
                bool below = y + 1 < rows.Count && !rows[y + 1][x];
                text.Append((!rows[y][x], below) switch
                {
                    (true, true) => '█',
                    (true, false) => '▀',
                    (false, true) => '▄',
                    _ => ' ',
                });
            }

            text.Append('\n');
        }

        return text.ToString();
    }
}
