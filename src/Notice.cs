#:property PublishAot=false
#:property GenerateDocumentationFile=false
#:property NoWarn=MA0047

// Writes NOTICE anew, with the licences of every package the shipped programs and libraries use, out of the restored
// packages themselves: dotnet restore && dotnet run src/Notice.cs (in the repository's folder).
using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Xml.Linq;

string[] shipped = ["Leverage.Cli", "Leverage.Page", "Leverage.Page.Server"];
string cache = Environment.GetEnvironmentVariable("NUGET_PACKAGES")
    ?? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".nuget", "packages");
const string Notices = "src/Leverage.Package/notices";

Used[] all = [.. shipped.SelectMany(Packages)
    .Distinct(StringComparer.Ordinal).Order(StringComparer.OrdinalIgnoreCase).Select(Read)];
var text = new StringBuilder();
text.Append(CultureInfo.InvariantCulture, $"""
    Leverage is under the MIT licence, see LICENSE. Its programs and libraries use, and its folders and tool package
    carry, the packages below. Written by src/Notice.cs out of the packages themselves.

    Fonts: DejaVu Sans Condensed, regular and bold, 2.37: notices/fonts.txt.
    Inside SkiaSharp's and HarfBuzzSharp's native libraries: notices/drawing.txt.
    Native and self-contained programs and the page hold the .NET runtime, MIT, Copyright (c) .NET Foundation and Contributors;
    what is inside that: notices/runtime.txt. In the repository they stand in {Notices}, the fonts' in
    src/Leverage.Charts/Fonts/LICENSE.txt.


    """);
foreach (Used used in all)
{
    text.Append(CultureInfo.InvariantCulture, $"{used.Name} {used.Version}, {used.Licence}, {used.Owner}\n");
}

foreach (IGrouping<string, Used> same in all.GroupBy(used => used.Text, StringComparer.Ordinal))
{
    string names = string.Join('\n', same.Select(used => used.Name));
    text.Append(CultureInfo.InvariantCulture, $"\n{new string('-', 80)}\n{names}\n\n{same.Key}\n");
}

File.WriteAllText("NOTICE", text.ToString());
Directory.CreateDirectory(Notices);
Copy("skiasharp.nativeassets.linux.nodependencies", "THIRD-PARTY-NOTICES.txt", "drawing.txt");
Copy("microsoft.netcore.app.runtime.nativeaot.linux-x64", "THIRD-PARTY-NOTICES.TXT", "runtime.txt");
return;

// What a project's restore brought that is there when it runs; analyzers and build tools are not.
static IEnumerable<string> Packages(string project)
{
    using var assets = JsonDocument.Parse(File.ReadAllText($"src/{project}/obj/project.assets.json"));
    return [.. assets.RootElement.GetProperty("targets").EnumerateObject()
        .SelectMany(target => target.Value.EnumerateObject())
        .Where(library => library.Value.GetProperty("type").GetString() == "package" && Runs(library.Value))
        .Select(library => library.Name)];
}

static bool Runs(JsonElement library) => ((string[])["runtime", "native", "runtimeTargets"]).Any(kind =>
    library.TryGetProperty(kind, out JsonElement files) && files.EnumerateObject().Any(
        file => !file.Name.EndsWith("_._", StringComparison.Ordinal)));

Used Read(string package)
{
    string[] parts = package.Split('/');
    string folder = Path.Combine(cache, parts[0].ToLowerInvariant(), parts[1]);
    XElement about = XDocument.Load(Path.Combine(folder, $"{parts[0].ToLowerInvariant()}.nuspec")).Root!.Elements().First();
    string Value(string name) => about.Elements().FirstOrDefault(element => element.Name.LocalName == name)?.Value.Trim() ?? "";
    string licence = Value("license");
    string said = Value("copyright");
    bool isOwner = said.StartsWith("Copyright", StringComparison.Ordinal) || said.StartsWith('©');
    string owner = isOwner ? said : $"Copyright {Value("authors")}";
    string[] own = [.. Directory.EnumerateFiles(folder, "*.txt", SearchOption.AllDirectories)
        .Where(file => Path.GetFileName(file).StartsWith("LICENSE", StringComparison.OrdinalIgnoreCase)
            || Path.GetFileName(file).StartsWith("NOTICE", StringComparison.OrdinalIgnoreCase))
        .Order(StringComparer.Ordinal)];
    string words = own.Length == 0
        ? Standard(licence, owner)
        : string.Join("\n\n", own.Select(file => Tidy(File.ReadAllText(file))));
    return new Used(parts[0], parts[1], licence, owner, Tidy(words));
}

static string Standard(string licence, string owner) => licence switch
{
    "MIT" => $"MIT License\n\n{owner}\n\n{Texts.Granted}, subject to the following conditions:\n\n{Texts.Kept}\n\n{Texts.AsIs}",
    "MIT-0" => $"MIT No Attribution\n\n{owner}\n\n{Texts.Granted}.\n\n{Texts.AsIs}",
    "BSD-2-Clause" => $"BSD 2-Clause License\n\n{owner}\n\n{Texts.Bsd}",
    _ => throw new InvalidOperationException($"No text is known here for the licence '{licence}': add it to src/Notice.cs."),
};

static string Tidy(string text) =>
    string.Join('\n', text.ReplaceLineEndings("\n").Split('\n').Select(line => line.TrimEnd())).Trim();

void Copy(string package, string file, string to)
{
    string folder = Directory.EnumerateDirectories(Path.Combine(cache, package)).Order(StringComparer.Ordinal).Last();
    File.WriteAllText(Path.Combine(Notices, to), Tidy(File.ReadAllText(Path.Combine(folder, file))) + "\n");
}

internal sealed record Used(string Name, string Version, string Licence, string Owner, string Text);

internal static class Texts
{
    internal const string Granted = """
        Permission is hereby granted, free of charge, to any person obtaining a copy
        of this software and associated documentation files (the "Software"), to deal
        in the Software without restriction, including without limitation the rights
        to use, copy, modify, merge, publish, distribute, sublicense, and/or sell
        copies of the Software, and to permit persons to whom the Software is
        furnished to do so
        """;

    internal const string Kept = """
        The above copyright notice and this permission notice shall be included in all
        copies or substantial portions of the Software.
        """;

    internal const string AsIs = """
        THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR
        IMPLIED, INCLUDING BUT NOT LIMITED TO THE WARRANTIES OF MERCHANTABILITY,
        FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE
        AUTHORS OR COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER
        LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR OTHERWISE, ARISING FROM,
        OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE
        SOFTWARE.
        """;

    internal const string Bsd = """
        Redistribution and use in source and binary forms, with or without
        modification, are permitted provided that the following conditions are met:

        1. Redistributions of source code must retain the above copyright notice,
           this list of conditions and the following disclaimer.

        2. Redistributions in binary form must reproduce the above copyright notice,
           this list of conditions and the following disclaimer in the documentation
           and/or other materials provided with the distribution.

        THIS SOFTWARE IS PROVIDED BY THE COPYRIGHT HOLDERS AND CONTRIBUTORS "AS IS"
        AND ANY EXPRESS OR IMPLIED WARRANTIES, INCLUDING, BUT NOT LIMITED TO, THE
        IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS FOR A PARTICULAR PURPOSE
        ARE DISCLAIMED. IN NO EVENT SHALL THE COPYRIGHT HOLDER OR CONTRIBUTORS BE
        LIABLE FOR ANY DIRECT, INDIRECT, INCIDENTAL, SPECIAL, EXEMPLARY, OR
        CONSEQUENTIAL DAMAGES (INCLUDING, BUT NOT LIMITED TO, PROCUREMENT OF
        SUBSTITUTE GOODS OR SERVICES; LOSS OF USE, DATA, OR PROFITS; OR BUSINESS
        INTERRUPTION) HOWEVER CAUSED AND ON ANY THEORY OF LIABILITY, WHETHER IN
        CONTRACT, STRICT LIABILITY, OR TORT (INCLUDING NEGLIGENCE OR OTHERWISE)
        ARISING IN ANY WAY OUT OF THE USE OF THIS SOFTWARE, EVEN IF ADVISED OF THE
        POSSIBILITY OF SUCH DAMAGE.
        """;
}
