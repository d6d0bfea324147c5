using System.Reflection;
using System.Runtime.CompilerServices;
using PublicApiGenerator;

namespace Leverage.Workshop.Tests.Api;

/// <summary>What the library promises its users: nothing public comes, goes or changes unseen.</summary>
public sealed class PublicApiTests
{
    public static TheoryData<string> Libraries => ["Leverage.Core", "Leverage.Workshop"];

    [Theory]
    [MemberData(nameof(Libraries))]
    public void The_public_face_of_a_library_is_the_approved_one(string library)
    {
        string found = Assembly.Load(library).GeneratePublicApi(new ApiGeneratorOptions { IncludeAssemblyAttributes = false })
            .ReplaceLineEndings("\n").Trim() + "\n";
        string approved = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Api", $"{library}.txt"));
        if (found == approved)
        {
            return;
        }

        string file = Path.Combine(AppContext.BaseDirectory, "Api", $"{library}.found.txt");
        File.WriteAllText(file, found);
        Assert.Fail($"""
            The public face of {library} is not the approved one. First difference:
            {FirstDifference(approved, found)}
            If that is meant, approve it and say in CHANGELOG.md what changes for users:
              cp '{file}' '{Path.Combine(Here(), $"{library}.txt")}'
            """);
    }

    [Fact]
    public void A_difference_is_told_by_its_line() =>
        Assert.Equal("line 2, approved: b\nline 2, found:    c", FirstDifference("a\nb\n", "a\nc\n"));

    private static string FirstDifference(string approved, string found)
    {
        string[] before = approved.Split('\n');
        string[] now = found.Split('\n');
        int line = before.Zip(now).TakeWhile(pair => pair.First == pair.Second).Count();
        string Line(string[] lines) => line < lines.Length ? lines[line].Trim() : "(nothing)";
        return FormattableString.Invariant($"line {line + 1}, approved: {Line(before)}\nline {line + 1}, found:    {Line(now)}");
    }

    private static string Here([CallerFilePath] string path = "") => Path.GetDirectoryName(path)!;
}
