using System.Text.RegularExpressions;

namespace Leverage.Tests.Tables;

/// <summary>The values of the sources whose comment calls them a judgement, as Type.Member.</summary>
internal static partial class JudgementMarks
{
    /// <summary>Rooms that speak of judgements and hold none.</summary>
    private static readonly string[] Without = ["Tables", "Wording", "obj", "bin"];

    public static IEnumerable<string> InSources()
    {
        string sources = Path.Combine(Root(), "src");
        return Directory.EnumerateFiles(sources, "*.cs", SearchOption.AllDirectories)
            .Where(file => !file.Split(Path.DirectorySeparatorChar).Intersect(Without).Any())
            .SelectMany(file => InFile(File.ReadAllLines(file)))
            .Distinct(StringComparer.Ordinal);
    }

    private static IEnumerable<string> InFile(string[] lines)
    {
        for (int i = 0; i < lines.Length; i++)
        {
            string comment = lines[i].Trim();
            if (!comment.StartsWith("//", StringComparison.Ordinal) || !Word().IsMatch(Attribute().Replace(comment, "")))
            {
                continue;
            }

            foreach (string name in Members(lines, i))
            {
                yield return name;
            }
        }
    }

    /// <summary>What the comment at a line belongs to: a parameter of a record, or the members declared below it.</summary>
    private static IEnumerable<string> Members(string[] lines, int comment)
    {
        int next = comment;
        while (lines[next].TrimStart().StartsWith("//", StringComparison.Ordinal) || lines[next].TrimStart().StartsWith('['))
        {
            next++;
        }

        if (Type().Match(lines[next]) is { Success: true } record)
        {
            yield return $"{record.Groups["name"].Value}.{Parameter().Match(lines[comment]).Groups["name"].Value}";
            yield break;
        }

        string type = lines[..next].Select(line => Type().Match(line)).Last(match => match.Success).Groups["name"].Value;
        do
        {
            yield return $"{type}.{Member().Match(lines[next]).Groups["name"].Value}";
            next++;
        }
        while (lines[next].Contains(" const ", StringComparison.Ordinal));
    }

    private static string Root()
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Leverage.sln")))
        {
            folder = Path.GetDirectoryName(folder)!;
        }

        return folder;
    }

    [GeneratedRegex(@"\bjudgement\b", RegexOptions.None, 1000)]
    private static partial Regex Word();

    [GeneratedRegex("\"[^\"]*\"", RegexOptions.None, 1000)]
    private static partial Regex Attribute();

    [GeneratedRegex(@"^\s*(?:\w+ )*(?:class|struct|record struct|record|enum) (?<name>\w+)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Type();

    [GeneratedRegex("<param name=\"(?<name>\\w+)\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Parameter();

    [GeneratedRegex(@"(?<name>\w+)\s*(?:[=({;]|$)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Member();
}
