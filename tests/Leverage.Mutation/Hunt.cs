namespace Leverage.Mutation;

/// <summary>Goes through the mutants of folders and tells how each ended.</summary>
internal sealed class Hunt(string root, string built, CoreCompiler compiler, TestRun tests)
{
    /// <summary>Files of the assessments that are rules and not wording or filling of blanks.</summary>
    private static readonly string[] Rules =
        ["Judgement.cs", "VerdictOf.cs", "Circumstances.cs", "NutFigures.cs", "HandFigures.cs", "LadderRank.cs", "TighteningRule.cs", "ReleaseAssessor.cs"];

    private const string Elsewhere = "-namespace- Leverage.Tests.Tables -namespace- Leverage.Tests.Reading -namespace- Leverage.Tests.Wording "
        + "-class- Leverage.Tests.Proof.CheckRowTests "
        + "-class- Leverage.Tests.Assessments.AnyRequestTests -class- Leverage.Tests.Assessments.AnyAssessmentLaws";

    private readonly Dictionary<int, Fate> _fates = [];

    /// <summary>Hunts through folders; gives the number of survivors.</summary>
    /// <param name="folders">The folders.</param>
    /// <param name="again">Only these, as told by an earlier run, each alone; null for all.</param>
    public int Folders(string[] folders, string[]? again)
    {
        List<Mutant> mutants = [.. Mutants(folders).Where(mutant => again?.Contains($"Survived  {mutant}") ?? true)];
        List<Mutant> alone = [.. mutants.Where(mutant => mutant.AtStart || again is not null)];
        List<List<Mutant>> groups = Groups(mutants.Except(alone));
        Say($"{mutants.Count} mutants in {groups.Count} groups");
        List<byte[]> cores = [.. groups.Select(group => compiler.With(group, alone))];
        foreach (var (core, group) in cores.Zip(groups))
        {
            ByChecks(core, group);
            ByTests(core, group, Near);
            Say($"group of {group.Count}: {group.Count(mutant => _fates[mutant.Id] == Fate.Survived)} left to the tests of the other rooms");
            Told(group);
        }

        foreach (var (core, group) in cores.Zip(groups))
        {
            ByTests(core, group, Far);
            Told(group);
        }

        // What works while a static value is made slept through it: those that are left are woken from the start.
        alone.AddRange(mutants.Where(mutant => !alone.Contains(mutant) && _fates[mutant.Id] == Fate.Survived).ToList());
        Say($"{alone.Count} that cannot sleep or slept, one by one");
        foreach (Mutant mutant in alone)
        {
            Alone(mutant);
            Told([mutant]);
        }

        return folders.Sum(folder => Tell(folder, mutants));
    }

    /// <summary>Changes cells of tables; gives the number of changes nobody noticed.</summary>
    public int Cells(int count)
    {
        int survived = 0;
        foreach (var (table, line, was, now, text) in TableCells.Sample(root, count, 20))
        {
            byte[] core = compiler.Original(table, text);
            bool dead = new CheckRun(built, core).Holds() != true || !SumsHold(core);
            survived += dead ? 0 : 1;
            if (!dead)
            {
                Say($"Survived  {table}({line}): {was} -> {now}");
            }
        }

        Say($"tables: {count} cells changed by one digit, {survived} unnoticed");
        return survived;
    }

    private bool SumsHold(byte[] core) => tests.OfAlone(core, "-class Leverage.Tests.Tables.ColumnSumsTests") == Fate.Survived;

    private List<Mutant> Mutants(string[] folders)
    {
        string core = Path.Combine(root, "src", "Leverage.Core");
        var found = new List<Mutant>();
        int last = 0;
        foreach (var (path, tree) in compiler.Trees.OrderBy(one => one.Key, StringComparer.Ordinal))
        {
            string file = Path.GetRelativePath(core, path);
            string folder = file.Split(Path.DirectorySeparatorChar)[0];
            bool wanted = folders.Contains(folder) && (folder != "Assessments" || Rules.Contains(Path.GetFileName(file)));
            if (wanted)
            {
                var finder = new MutantFinder(compiler.Model(tree), folder, file, file.EndsWith("VerdictOf.cs", StringComparison.Ordinal), () => ++last);
                finder.Visit(tree.GetRoot());
                found.AddRange(finder.Found);
            }
        }

        return found;
    }

    /// <summary>Groups in which no mutant touches another.</summary>
    private static List<List<Mutant>> Groups(IEnumerable<Mutant> mutants)
    {
        var groups = new List<List<Mutant>>();
        foreach (Mutant mutant in mutants)
        {
            List<Mutant>? free = groups.Find(group => !group.Exists(other => other.File == mutant.File && other.Whole.IntersectsWith(mutant.Whole)));
            if (free is null)
            {
                groups.Add(free = []);
            }

            free.Add(mutant);
        }

        return groups;
    }

    private void ByChecks(byte[] core, List<Mutant> group)
    {
        var checks = new CheckRun(built, core);
        if (checks.Holds() != true)
        {
            throw new InvalidOperationException("a check does not hold on the unchanged core: nothing can be shown");
        }

        foreach (Mutant mutant in group)
        {
            bool? holds = checks.Holds(mutant.Id);
            _fates[mutant.Id] = holds switch { true => Fate.Open, false => Fate.KilledByCheck, null => Fate.NeverEnds };
            checks = holds is null ? new CheckRun(built, core) : checks;
        }
    }

    private void ByTests(byte[] core, List<Mutant> group, Func<Mutant, string> which)
    {
        var open = group.Where(mutant => _fates[mutant.Id] is Fate.Open or Fate.Survived).Select(mutant => (mutant.Id, which(mutant))).ToList();
        foreach (var (id, fate) in tests.Of(core, open))
        {
            _fates[id] = fate;
        }
    }

    private void Alone(Mutant mutant)
    {
        if (compiler.With(mutant) is not { } core)
        {
            _fates[mutant.Id] = Fate.NotCompiled;
            return;
        }

        bool? holds = new CheckRun(built, core).Holds();
        Fate fate = holds switch { true => tests.OfAlone(core, Near(mutant)), false => Fate.KilledByCheck, null => Fate.NeverEnds };
        _fates[mutant.Id] = fate == Fate.Survived ? tests.OfAlone(core, Far(mutant)) : fate;
    }

    private static string Near(Mutant mutant) => $"-namespace Leverage.Tests.{mutant.Folder}";

    /// <summary>Tests of the other rooms, without those that cannot notice a formula and the slow ones that draw whole requests.</summary>
    private static string Far(Mutant mutant) => $"-namespace- Leverage.Tests.{mutant.Folder} {Elsewhere}"
        + (mutant.Folder is "BreakLoose" or "Levers" or "LoadPath" ? "" : " -namespace- Leverage.Tests.Outcomes");

    private void Told(List<Mutant> mutants)
    {
        foreach (Mutant mutant in mutants.Where(mutant => _fates[mutant.Id] is Fate.Survived or Fate.NeverEnds or Fate.Crashed))
        {
            Say($"{_fates[mutant.Id]}  {mutant}");
        }
    }

    private int Tell(string folder, List<Mutant> mutants)
    {
        var fates = mutants.Where(mutant => mutant.Folder == folder).Select(mutant => _fates[mutant.Id]).Where(fate => fate != Fate.NotCompiled).ToList();
        int Count(Fate fate) => fates.Count(one => one == fate);
        var (check, test, endless, survive) = (Count(Fate.KilledByCheck), Count(Fate.KilledByTest), Count(Fate.NeverEnds) + Count(Fate.Crashed), Count(Fate.Survived));
        Say($"{folder}: {fates.Count} mutants, {check} killed by a check, {test} by a test, {endless} never end or crash, {survive} survive");
        return survive;
    }

    private static void Say(FormattableString line) => Console.WriteLine(FormattableString.Invariant(line));
}
