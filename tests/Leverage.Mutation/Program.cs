// Changes one operator, comparison, function, constant or table cell at a time in the core's formulas and rules, and shows which
// tests notice. Run through tests/mutate.sh, which builds the tests first.
// Usage: ROOT BUILT-TESTS [folder …] [--cells N] [--again LOG], where LOG is what an earlier run said: only its survivors, each alone
using Leverage.Mutation;

string root = args[0];
string built = args[1];
string? Given(string name) => Array.IndexOf(args, name) is var at and >= 0 ? args[at + 1] : null;
int cells = int.Parse(Given("--cells") ?? "0", System.Globalization.CultureInfo.InvariantCulture);
string[]? survivors = Given("--again") is { } log ? [.. File.ReadLines(log).Where(line => line.StartsWith("Survived  ", StringComparison.Ordinal))] : null;
string[] folders = [.. args[2..].TakeWhile(arg => !arg.StartsWith('-'))];
var compiler = new CoreCompiler(root, built);
using var tests = new TestRun(root, built);
var hunt = new Hunt(root, built, compiler, tests);
int survived = folders.Length > 0 ? hunt.Folders(folders, survivors) : 0;
return survived + (cells > 0 ? hunt.Cells(cells) : 0) == 0 ? 0 : 1;
