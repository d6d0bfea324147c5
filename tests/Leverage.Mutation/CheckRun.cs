using System.Reflection;
using System.Runtime.Loader;

namespace Leverage.Mutation;

/// <summary>Works out every row of shared/checks with a changed core, in this process: what the test of the rows does.</summary>
internal sealed class CheckRun
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(20);
    private readonly AssemblyLoadContext _context = new("mutants", isCollectible: true);
    private readonly Type _prover;
    private readonly FieldInfo? _awake;

    public CheckRun(string built, byte[] core)
    {
        _context.Resolving += (_, name) => Path.Combine(built, $"{name.Name}.dll") is var path && File.Exists(path)
            ? AssemblyLoadContext.Default.LoadFromAssemblyPath(path)
            : null;
        Assembly loaded = _context.LoadFromStream(new MemoryStream(core));
        _prover = loaded.GetType("Leverage.Proof.Prover")!;
        _awake = loaded.GetType("Leverage.Mutants")?.GetField("Awake", BindingFlags.NonPublic | BindingFlags.Static);
    }

    /// <summary>Whether all rows hold, and no known disagreement has moved; null where it does not end.</summary>
    public bool? Holds(int mutant = -1)
    {
        bool? holds = null;
        _awake?.SetValue(null, mutant);
        var thread = new Thread(() => holds = Try(), 16 << 20) { IsBackground = true };
        thread.Start();
        bool ended = thread.Join(Longest);
        _awake?.SetValue(null, -1);
        if (!ended)
        {
            // The next mutant it passes ends the loop.
            _awake?.DeclaringType!.GetField("Tired", BindingFlags.NonPublic | BindingFlags.Static)!.SetValue(null, true);
        }

        return ended ? holds : null;
    }

    private bool Try()
    {
        try
        {
            var topics = (System.Collections.IEnumerable)_prover.GetMethod("Run", [])!.Invoke(null, null)!;
            bool all = topics.Cast<object>().All(topic => (bool)topic.GetType().GetProperty("Holds")!.GetValue(topic)!);
            object apart = _prover.GetMethod("Disagreements")!.Invoke(null, null)!;
            var outcomes = (System.Collections.IEnumerable)apart.GetType().GetProperty("Outcomes")!.GetValue(apart)!;
            return all && outcomes.Cast<object>().All(one => !(bool)one.GetType().GetProperty("Holds")!.GetValue(one)!);
        }
        catch (TargetInvocationException)
        {
            return false;
        }
    }
}
