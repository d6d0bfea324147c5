using System.Collections.Concurrent;

namespace Leverage.Cli.Tests.Input;

/// <summary>Every refusal of the interface, on the real program; each case is started once, two at a time.</summary>
public sealed class BadInputTests
{
    private const string Lever = "loosen 460Nm --thread M24x1.5 --drive 1/2 --bar 600mm --bar-diameter 20mm";

    /// <summary>Command line, what the error is about, and what it must say.</summary>
    private static readonly (string Line, string Subject, string Says)[] Cases =
    [
        ("tighten --thread M12 --torque 85", "--torque", "no unit. Write 85Nm, or 85ft-lb (which is 115 N·m)"),
        ("loosen 460 --thread M24x1.5", "TORQUE", "no unit. Write 460Nm, or 460ft-lb"),
        ("loosen --hex 3mm --thread M24", "--hex", "the hexagon is smaller than its own thread M24. Write: --hex 36mm"),
        ("loosen 460Nm --bar 600", "--bar", "no unit. Write 600mm, or 600in (which is 15200 mm)"),
        (Lever + " --tube 26.9x2.6x900", "--tube", "no unit. Write 26.9x2.6x900mm, or 26.9x2.6x900in"),
        ("loosen 460Nm --body 82", "--body", "no unit. Write 82kg, or 82lb"),
        ("loosen 460Nm --force 450", "--force", "no unit. Write 450N, or 450lbf"),
        ("tighten --thread M12 --torque \"85 kN\"", "--torque", "kN is a force; a torque is force × length. Write: 85Nm"),
        ("loosen 460Nm --bar 82kg", "--bar", "kg is a mass. Write: 600mm"),
        ("tighten --thread M12 --torque 85mN·m", "--torque", "'mN·m' is no unit known here"),
        ("tighten --thread M12 --torque 1,500Nm", "--torque", "Write 1500Nm, or with a decimal point 1.500Nm"),
        ("tighten --thread M12 --torque 1,500,000Nm", "--torque", "a comma stands in the number"),
        ("tighten --thread M12x1,25", "--thread", "write a decimal point"),
        ("tighten --thread M12 --torque -85Nm", "--torque", "accepted is 0.01Nm to 50000Nm"),
        ("check -85Nm --thread M12", "TORQUE", "accepted is 0.01Nm to 50000Nm"),
        ("tighten --thread M12 --torque 0Nm", "--torque", "accepted is 0.01Nm to 50000Nm"),
        ("tighten --thread M12 --torque NaNNm", "--torque", "not a finite number"),
        ("tighten --thread M12 --friction infinity", "--friction", "not a finite number"),
        ("tighten --thread M12 --torque 1e400Nm", "--torque", "not a finite number"),
        ("loosen 460Nm --bar 3km", "--bar", "accepted is 0.1mm to 10000mm"),
        ("tighten --thread M12 --yield-share 150%", "--yield-share", "accepted is 0.1% to 100%"),
        ("tighten --thread M12 --angle 400deg", "--angle", "accepted is 0deg to 180deg"),
        ("tighten --thread M12x1.2", "--thread", "Nearest: M12x1.25"),
        ("tighten --thread M12 --grade 8.9", "--grade", "Nearest: 8.8"),
        ("tighten --thread M12 --grade 8", "--grade", "nut class"),
        ("tighten --thread 1/2-20 --grade 8", "--grade", "is written SAE 8"),
        ("tighten --thread M12 --lubrication oil", "--lubrication", "Nearest: oiled"),
        ("tighten --thread M12 --tapped cast-alumnium --engagement 15mm", "--tapped", "Nearest: cast-aluminium"),
        ("tighten --thread M12 --torsion elastc", "--torsion", "Write: plastic or elastic"),
        ("tighten --thread M12 --dw 10mm", "--dw", "must be larger than the hole"),
        ("tighten --thread M12 --adapter 60mm", "--adapter", "Write: --wrench 450mm"),
        ("tighten --thread M12 --wrench 450mm", "--wrench", "is of no use without adapter. Write: --adapter 60mm"),
        ("tighten --thread M12 --adapter 500mm --wrench 450mm --angle 180deg", "--adapter", "no lever is left"),
        ("tighten --thread M12 --engagement 15mm", "--engagement", "Write: --tapped cast-aluminium"),
        ("tighten", "--thread", "Write: --thread M12x1.25"),
        ("tighten --thread", "--thread", "its value is missing: write --thread SIZE"),
        ("tighten --thread M12 --thread M14", "--thread", "given more than once (M12, M14)"),
        ("check --thread M12", "TORQUE", "is missing"),
        (Lever + " --tube 33.7x3.2x1000mm --overlap 700mm", "--overlap", "600"),
        (Lever + " --tube 21.3x2.6x1000mm --overlap 250mm", "--tube", "16.1"),
        ("table friktion", "NAME", "Nearest: friction"),
        ("table friction olied", "FILTER", "Nearest: oiled"),
        ("table threads --csv", "--csv", "threads-metric, threads-unified"),
        ("table friction --csv --json", "--csv", "ask for one"),
    ];

    private static readonly ConcurrentDictionary<string, Lazy<Ran>> Runs = new(
        Cases.Select(c => KeyValuePair.Create(c.Line, new Lazy<Ran>(() => Ran.ForReal(Ran.Words(c.Line))))));

    static BadInputTests() => Parallel.ForEach(Runs.Values, new ParallelOptions { MaxDegreeOfParallelism = 4 }, run => _ = run.Value);

    public static TheoryData<string, string, string> Refused
    {
        get
        {
            var data = new TheoryData<string, string, string>();
            foreach (var (line, subject, says) in Cases)
            {
                data.Add(line, subject, says);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Refused))]
    public void A_refusal_is_one_line_on_stderr_that_names_the_option_and_the_cure(string line, string subject, string says)
    {
        Ran ran = Runs[line].Value;
        Assert.Equal((2, ""), (ran.Code, ran.Answer));
        Assert.StartsWith($"leverage: {subject}: ", ran.Errors, StringComparison.Ordinal);
        Assert.Contains(says, ran.Errors, StringComparison.Ordinal);
        Assert.DoesNotMatch(Docs.WordsTests.NotSaid(), ran.Errors);
        Assert.Equal(ran.Errors.Length - 1, ran.Errors.IndexOf('\n', StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("tihgten --thread M12", "there is no command 'tihgten'. Nearest: tighten.")]
    [InlineData("tighten --thread M12 --torqe 5Nm", "there is no option '--torqe' here. Nearest: --torque, --more.")]
    [InlineData("check --thread M12 --grad 8.8 96Nm", "there is no option '--grad' here. Nearest: --grade, --grip.")]
    [InlineData("tighten --thread M12 --torque 85 kN", "'kN' is one word too many: an option before it is missing, or a space stands in a value.")]
    [InlineData("tighten --thread M12 stray", "'stray' is one word too many")]
    [InlineData("tighten --thread M12 --json=yes", "'yes' is one word too many")]
    [InlineData("--bogus", "there is no option '--bogus' here.")]
    [InlineData("@nothing", "there is no command '@nothing'")]
    public void A_word_that_is_not_known_is_named_with_the_nearest(string line, string says)
    {
        Ran ran = Ran.Here(Ran.Words(line));
        Assert.Equal((2, ""), (ran.Code, ran.Answer));
        Assert.StartsWith($"leverage: {says}", ran.Errors, StringComparison.Ordinal);
        Assert.Single(ran.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }

    [Theory]
    [InlineData("460Nm", "460 N·m", "460N.m", "46 daN·m")]
    [InlineData("340ft-lb", "340 ft-lb", "340lbf.ft", "340 lb-ft")]
    [InlineData("47kgf.m", "47 kgf·m", "47kgf-m", "47 kgfm")]
    public void A_torque_may_be_written_in_many_ways(params string[] ways)
    {
        double[] torques = [.. ways.Select(
            way => Ran.Here("check", way, "--thread", "M24", "--json") is { Code: 0 } ran
                ? ran.Json().GetProperty("quotedNm").GetDouble()
                : double.NaN)];
        Assert.All(torques.Where(double.IsFinite), torque => Assert.Equal(torques[0], torque, 9));
        Assert.True(torques.Count(double.IsFinite) >= 3, string.Join(", ", ways.Zip(torques)));
    }
}
