using System.Reflection;
using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Leverage.Cli.Tests.Docs;

/// <summary>The few lines of C# that README and package show to users of the library.</summary>
public sealed partial class LibraryExampleTests
{
    /// <summary>What a new project has without asking for it.</summary>
    private const string Given = "global using System; global using System.Collections.Generic; global using System.IO; global using System.Linq;";

    [Fact]
    public void The_example_compiles_without_a_warning_and_prints_what_the_README_says()
    {
        var (code, printed) = Example("README.md");
        Assert.Equal(printed, Run(Compile(code)));
    }

    [Fact]
    public void The_package_shows_the_same_example() =>
        Assert.Equal(Example("README.md"), Example("src/Leverage.Package/library.md"));

    [Fact]
    public void The_example_is_five_lines_of_statements_at_most()
    {
        string[] lines = Example("README.md").Code.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.InRange(lines.Count(line => !line.StartsWith("using ", StringComparison.Ordinal)), 1, 5);
    }

    private static (string Code, string Printed) Example(string file)
    {
        Match match = Assert.Single(Blocks().Matches(File.ReadAllText(Path.Combine(Repository.Root, file))));
        return (match.Groups["code"].Value, match.Groups["printed"].Value);
    }

    private static byte[] Compile(string code)
    {
        string[] platform = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator);
        var compilation = CSharpCompilation.Create(
            "example",
            [Parsed(Given), Parsed(code)],
            platform.Select(path => MetadataReference.CreateFromFile(path)),
            new CSharpCompilationOptions(OutputKind.ConsoleApplication, nullableContextOptions: NullableContextOptions.Enable));
        using var program = new MemoryStream();
        var result = compilation.Emit(program, cancellationToken: TestContext.Current.CancellationToken);
        Assert.Empty(result.Diagnostics.Where(told => told.Severity >= DiagnosticSeverity.Warning));
        return program.ToArray();
    }

    private static SyntaxTree Parsed(string code) =>
        CSharpSyntaxTree.ParseText(code, CSharpParseOptions.Default.WithLanguageVersion(LanguageVersion.Latest));

    private static string Run(byte[] program)
    {
        MethodInfo main = Assembly.Load(program).EntryPoint!;
        TextWriter before = Console.Out;
        using var printed = new StringWriter { NewLine = "\n" };
        try
        {
            Console.SetOut(printed);
            main.Invoke(null, [Array.Empty<string>()]);
        }
        finally
        {
            Console.SetOut(before);
        }

        return printed.ToString();
    }

    [GeneratedRegex(@"^```csharp\n(?<code>.*?)^```\n\n```text\n(?<printed>.*?)^```$", RegexOptions.Singleline | RegexOptions.Multiline, 5000)]
    private static partial Regex Blocks();
}
