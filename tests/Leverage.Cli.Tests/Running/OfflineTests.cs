using System.Reflection;
using Leverage.Cli.Commands;
using Leverage.Cli.Tests.Shells;

namespace Leverage.Cli.Tests.Running;

/// <summary>The command line asks nothing of any network.</summary>
public sealed class OfflineTests
{
    public static TheoryData<string> Examples => [.. CommandList.All.Select(entry => entry.Build().Examples[0])];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_command_answers_where_there_is_no_network_at_all(string example)
    {
        Shell.Need("unshare");
        var (able, why) = Shell.Run("unshare", ["-n", "-r", "true"]);
        Assert.SkipUnless(able == 0, $"this machine allows no network namespace: {why.Trim()}");
        var (code, said) = Shell.Run("unshare", ["-n", "-r", "leverage", .. Ran.Words(example)]);
        Assert.Equal((0, Ran.Here(Ran.Words(example)).Answer), (code, said));
    }

    [Fact]
    public void A_namespace_without_interfaces_reaches_nothing()
    {
        Shell.Need("unshare");
        Assert.SkipUnless(Shell.Run("unshare", ["-n", "-r", "true"]).Code == 0, "this machine allows no network namespace");
        Assert.Equal(0, Shell.Run("unshare", ["-n", "-r", "bash", "-c", "! (exec 3<>/dev/udp/192.0.2.1/9) 2>/dev/null"]).Code);
    }

    [Fact]
    public void No_socket_of_a_network_is_opened_while_it_answers_and_draws()
    {
        Shell.Need("strace");
        string picture = Path.Combine(AppContext.BaseDirectory, "offline.png");
        string[] words = ["-f", "-qq", "-e", "trace=socket,connect", "leverage", .. Ran.Words(
            "loosen 460Nm --thread M24x1.5 --condition rusted --hex 36mm --drive 1/2 --bar 600mm --force-write --chart"), picture];
        var (code, said) = Shell.Run("strace", words);
        Assert.SkipWhen(said.Contains("ptrace", StringComparison.Ordinal), "this machine allows no strace");
        Assert.Equal(0, code);
        Assert.Contains("Nut takes", said, StringComparison.Ordinal);
        Assert.DoesNotContain("AF_INET", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("leverage")]
    [InlineData("Leverage.Core")]
    [InlineData("Leverage.Workshop")]
    [InlineData("Leverage.Charts")]
    public void Nothing_of_ours_refers_to_a_part_of_the_platform_that_talks(string assembly)
    {
        AssemblyName[] parts = Assembly.Load(assembly).GetReferencedAssemblies();
        Assert.NotEmpty(parts);
        Assert.DoesNotContain(parts, part => part.Name!.StartsWith("System.Net", StringComparison.Ordinal));
    }
}
