namespace Leverage.Cli.Tests.Docs;

/// <summary>DEVELOPERS.md shows a field that is there, in no more files than it says.</summary>
public sealed class FieldDiffTests
{
    [Fact]
    public void The_diff_of_a_field_is_the_code_as_it_stands_in_three_files()
    {
        string[] diff = File.ReadAllText(Path.Combine(Repository.Root, "DEVELOPERS.md")).Split("```diff\n")[1].Split("```")[0].Split('\n');
        Assert.Equal(3, diff.Count(line => line.StartsWith("--- ", StringComparison.Ordinal)));
        string file = "";
        int added = 0;
        foreach (string line in diff)
        {
            if (line.StartsWith("--- ", StringComparison.Ordinal))
            {
                file = File.ReadAllText(Path.Combine(Repository.Root, line[4..]));
            }
            else if (line.StartsWith('+'))
            {
                Assert.Contains($"{line[1..]}\n", file, StringComparison.Ordinal);
                added++;
            }
        }

        Assert.InRange(added, 5, 12);
    }
}
