using System.Collections;
using Leverage.Reading;
using QRCoder;

namespace Leverage.Page.Answering;

/// <summary>A QR code as rows of modules, for the page to draw.</summary>
internal static class ScanCode
{
    private const int MostLetters = 1500;

    /// <summary>Rows of the code, 1 for a dark module.</summary>
    internal static string[] Rows(string text)
    {
        if (text.Length > MostLetters)
        {
            throw new InputException("code", "this set-up is too long for a code to scan. Send the link instead.");
        }

        using var generator = new QRCodeGenerator();
        using QRCodeData data = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.L);
        return [.. data.ModuleMatrix.Select(Row)];
    }

    private static string Row(BitArray row)
    {
        char[] modules = new char[row.Length];
        for (int i = 0; i < modules.Length; i++)
        {
            modules[i] = row[i] ? '1' : '0';
        }

        return new string(modules);
    }
}
