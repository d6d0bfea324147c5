// Changes one operator, comparison, function, constant or table cell at a time in the core's formulas and rules, and shows which
// tests notice. Run through tests/mutate.sh, which builds the tests first.
// Usage: ROOT BUILT-TESTS [folder …] [--cells N]
using Leverage.Mutation;

string root = args[0];
string built = args[1];
int at = Array.IndexOf(args, "--cells");
int cells = at < 0 ? 0 : int.Parse(args[at + 1], System.Globalization.CultureInfo.InvariantCulture);
string[] folders = [.. args[2..(at < 0 ? args.Length : at)]];
var compiler = new CoreCompiler(root, built);
using var tests = new TestRun(root, built);
var hunt = new Hunt(root, built, compiler, tests);
int survived = folders.Length > 0 ? hunt.Folders(folders) : 0;
return survived + (cells > 0 ? hunt.Cells(cells) : 0) == 0 ? 0 : 1;
