using FsCheck;
using FsCheck.Fluent;

namespace Leverage.Hostile.Tests.Generated;

/// <summary>Texts nobody meant to write, and small damage to texts somebody did.</summary>
internal static class AnyText
{
    /// <summary>What people, spreadsheets and attackers put where it does not belong.</summary>
    internal static IReadOnlyList<string> Odd { get; } =
    [
        "", " ", "\t", "-", "--", "---", "0", "-1", "1", "1e400", "-1e400", "1e-400", "nan", "NaN", "∞", "-∞", "inf", "null", "true",
        "1,5", "1.5.5", ".", "/", "1/0", "1/0mm", "0/1in", "٣٤٥Nm", "１２mm", "½in", "1 000Nm", "1'000Nm", "0x10", "1e3Nm", "5e", "5e+mm",
        "\u202e460Nm", "\u200b", "\ufeff460Nm", "\u0301", "é", "ß", "İ", "ı", "😀", "\ud800", "\udc00", "\u0000", "\u0007", "\u001b[31m",
        "\u001b]0;owned\u0007", "a\nb", "a\rb", "\u2028", "<script>alert(1)</script>", "&amp;", "\"", "'", "`id`", "$(id)", "%s%n", "{0}",
        "=1+1", "+1", "@x", "|", "..", "no/such/folder", "con", "[suggest]", "@file", "-h", "--help", "--version", "/?",
    ];

    /// <summary>A text nobody meant.</summary>
    internal static Gen<string> Any { get; } = Gen.Frequency(
        (6, Gen.Elements<string>(Odd)),
        (2, ArbMap.Default.GeneratorFor<string>().Select(text => text ?? "")),
        (1, Gen.Choose(0, 14).SelectMany(power => Gen.Elements("9", "a", " ", "-", "x", "(", "[", "é").Select(one => Repeated(one, power)))));

    /// <summary>A text with one letter lost, doubled, changed, swapped, or with something put in.</summary>
    internal static Gen<string> Damaged(string text) =>
        from at in Gen.Choose(0, text.Length)
        from how in Gen.Choose(0, 6)
        from odd in Gen.Elements<string>(Odd)
        from letter in Gen.Choose(32, 126)
        select Damage(text, at, how, odd, (char)letter);

    private static string Damage(string text, int at, int how, string odd, char letter)
    {
        bool inside = at < text.Length;
        return how switch
        {
            0 when inside => text.Remove(at, 1),
            1 when inside => text.Insert(at, text[at].ToString()),
            2 when inside => text.Remove(at, 1).Insert(at, letter.ToString()),
            3 when at + 1 < text.Length => $"{text[..at]}{text[at + 1]}{text[at]}{text[(at + 2)..]}",
            4 => text.Insert(at, odd),
            5 => text[..at],
            _ => text.Insert(at, letter.ToString()),
        };
    }

    private static string Repeated(string one, int power) => string.Concat(Enumerable.Repeat(one, 1 << power));
}
