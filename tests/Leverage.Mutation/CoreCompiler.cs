using System.Collections.Immutable;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Diagnostics;
using Microsoft.CodeAnalysis.Text;

namespace Leverage.Mutation;

/// <summary>Compiles the core in memory, whole or with one file or one table changed.</summary>
internal sealed class CoreCompiler
{
    private const string Switch = """
        namespace Leverage;
        internal static class Mutants
        {
            internal static int Awake = -1;
            internal static bool Tired;
            internal static bool On(int id) => Tired ? throw new System.TimeoutException() : Awake == id;
        }
        """;

    private readonly CSharpParseOptions _parse = new(LanguageVersion.Latest);
    private readonly string _root;
    private readonly CSharpCompilation _whole;

    public CoreCompiler(string root, string built)
    {
        _root = root;
        string core = Path.Combine(root, "src", "Leverage.Core");
        string[] files = [.. Directory.EnumerateFiles(core, "*.cs", SearchOption.AllDirectories)
            .Where(file => !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)),
            .. Directory.EnumerateFiles(Path.Combine(core, "obj", "Release", "net10.0"), "*.cs")];
        Trees = files.ToDictionary(file => file, file => CSharpSyntaxTree.ParseText(File.ReadAllText(file), _parse, file));
        string[] platform = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator);
        var references = platform.Where(path => Path.GetFileName(path).StartsWith("System.", StringComparison.Ordinal)
                || Path.GetFileName(path) is "netstandard.dll" or "mscorlib.dll" or "Microsoft.Win32.Primitives.dll")
            .Concat(Directory.EnumerateFiles(built, "*.dll").Where(path => Path.GetFileName(path) is "MathNet.Numerics.dll" or "Sep.dll"
                or "UnitsNet.dll" or "csFastFloat.dll"))
            .Select(path => MetadataReference.CreateFromFile(path));
        var options = new CSharpCompilationOptions(
            OutputKind.DynamicallyLinkedLibrary, optimizationLevel: OptimizationLevel.Release, nullableContextOptions: NullableContextOptions.Enable);
        var bare = CSharpCompilation.Create("Leverage.Core", Trees.Values, references, options);
        CSharpGeneratorDriver.Create(Generators(), parseOptions: _parse).RunGeneratorsAndUpdateCompilation(bare, out var whole, out _);
        _whole = (CSharpCompilation)whole;
    }

    /// <summary>The sources by path.</summary>
    public IReadOnlyDictionary<string, SyntaxTree> Trees { get; }

    /// <summary>Types of a file's expressions.</summary>
    public SemanticModel Model(SyntaxTree tree) => _whole.GetSemanticModel(tree);

    /// <summary>The core as it stands, or with a table's text replaced.</summary>
    public byte[] Original(string? table = null, string? text = null) =>
        Emit(_whole, table, text, []) ?? throw new InvalidOperationException("the core itself does not compile here");

    /// <summary>The core with mutants that do not touch each other, each asleep until its number is called; what cannot sleep is left out.</summary>
    public byte[] With(List<Mutant> group, List<Mutant> leftOut)
    {
        while (true)
        {
            var errors = new List<(string File, int At)>();
            if (Emit(Sleeping(group), null, null, errors) is { } image)
            {
                return image;
            }

            var bad = errors.SelectMany(error => Blamed(group, error)).ToHashSet();
            leftOut.AddRange(bad);
            group.RemoveAll(bad.Contains);
            if (bad.Count == 0)
            {
                throw new InvalidOperationException("no mutant is to blame for an error in " + errors[0].File);
            }
        }
    }

    /// <summary>The mutants an error lies in; else the last one before it in its file, whose names reach on; else all of the file.</summary>
    private static List<Mutant> Blamed(List<Mutant> group, (string File, int At) error)
    {
        var inFile = group.Where(mutant => error.File.EndsWith(mutant.File, StringComparison.Ordinal)).OrderBy(mutant => mutant.Whole.Start).ToList();
        Mutant? last = inFile.LastOrDefault(mutant => Start(mutant, inFile) <= error.At);
        return last is not null ? [last] : inFile;
    }

    /// <summary>Where a mutant's text starts once those before it have grown.</summary>
    private static int Start(Mutant mutant, List<Mutant> inFile) =>
        mutant.Whole.Start + inFile.Where(other => other.Whole.Start < mutant.Whole.Start).Sum(Growth);

    /// <summary>The core with one mutant awake; null where that does not compile.</summary>
    public byte[]? With(Mutant mutant)
    {
        SyntaxTree tree = TreeOf(mutant.File);
        return Emit(_whole.ReplaceSyntaxTree(tree, tree.WithChangedText(tree.GetText().WithChanges(mutant.Change))), null, null, []);
    }

    private SyntaxTree TreeOf(string file) => Trees[Path.Combine(_root, "src", "Leverage.Core", file)];

    private CSharpCompilation Sleeping(List<Mutant> group)
    {
        CSharpCompilation compilation = _whole.AddSyntaxTrees(CSharpSyntaxTree.ParseText(Switch, _parse));
        foreach (var inFile in group.GroupBy(mutant => mutant.File, StringComparer.Ordinal))
        {
            SyntaxTree tree = TreeOf(inFile.Key);
            compilation = compilation.ReplaceSyntaxTree(
                tree, tree.WithChangedText(tree.GetText().WithChanges(inFile.OrderBy(mutant => mutant.Whole.Start).Select(mutant => Asleep(tree, mutant)))));
        }

        return compilation;
    }

    private static TextChange Asleep(SyntaxTree tree, Mutant mutant)
    {
        string whole = tree.GetText().ToString(mutant.Whole);
        int at = mutant.Change.Span.Start - mutant.Whole.Start;
        string changed = whole[..at] + mutant.Change.NewText + whole[(at + mutant.Change.Span.Length)..];
        string id = mutant.Id.ToString(System.Globalization.CultureInfo.InvariantCulture);
        return new TextChange(mutant.Whole, $"(global::Leverage.Mutants.On({id}) ? ({changed}) : ({whole}))");
    }

    private static int Growth(Mutant mutant) =>
        mutant.Whole.Length + mutant.Change.NewText!.Length - mutant.Change.Span.Length + mutant.Id.ToString(System.Globalization.CultureInfo.InvariantCulture).Length
            + "(global::Leverage.Mutants.On() ? () : ())".Length;

    private byte[]? Emit(CSharpCompilation compilation, string? table, string? text, List<(string File, int At)> errors)
    {
        using var image = new MemoryStream();
        var resources = Resources("tables", "tables").Concat(Resources("shared/checks", "checks")).Concat(Resources("shared/measured", "measured")).Select(found =>
            new ResourceDescription(found.Name, () => found.Name == table
                ? new MemoryStream(System.Text.Encoding.UTF8.GetBytes(text!))
                : File.OpenRead(found.Path), true));
        var result = compilation.Emit(image, manifestResources: resources);
        errors.AddRange(result.Diagnostics.Where(one => one.Severity == DiagnosticSeverity.Error)
            .Select(one => (one.Location.SourceTree?.FilePath ?? "", one.Location.SourceSpan.Start)));
        return result.Success ? image.ToArray() : null;
    }

    private IEnumerable<(string Name, string Path)> Resources(string folder, string prefix) =>
        Directory.EnumerateFiles(Path.Combine(_root, folder), "*.csv").Select(path => ($"{prefix}/{Path.GetFileName(path)}", path));

    private static ImmutableArray<ISourceGenerator> Generators()
    {
        string sdk = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(typeof(object).Assembly.Location)!, "..", "..", "..", "packs"));
        string json = Directory.EnumerateFiles(sdk, "System.Text.Json.SourceGeneration.dll", SearchOption.AllDirectories).Last();
        return [.. new AnalyzerFileReference(json, new Loader()).GetGenerators(LanguageNames.CSharp)];
    }

    private sealed class Loader : IAnalyzerAssemblyLoader
    {
        public void AddDependencyLocation(string fullPath)
        {
        }

        public System.Reflection.Assembly LoadFromPath(string fullPath) => System.Reflection.Assembly.LoadFrom(fullPath);
    }
}
