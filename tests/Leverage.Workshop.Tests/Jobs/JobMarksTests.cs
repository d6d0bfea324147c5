using Leverage.Reading;
using Leverage.Workshop.Jobs;

namespace Leverage.Workshop.Tests.Jobs;

public static class JobMarksTests
{
    private const string Job = "title = \"T\"   # the head\n\n[[fasteners]]\nname = \"hub  nut\"  # the left one\ntorque = \"380Nm\"\n\n[[tasks]]\nname = \"Lift it\"\nneeds = [\n  \"jack\",\n]";

    [Theory]
    [InlineData("fasteners", "hub nut", "held", "150Nm", "name = \"hub  nut\"  # the left one", "held = \"150Nm\"")]
    [InlineData("fasteners", "Hub Nut", "done", "true", "name = \"hub  nut\"  # the left one", "done = true")]
    [InlineData("fasteners", "hub nut", "came_loose", "90Nm|a\"b", "name = \"hub  nut\"  # the left one", "came_loose = [\"90Nm\", \"a\\\"b\"]")]
    [InlineData("tasks", "Lift it", "done", "true", "name = \"Lift it\"", "done = true")]
    public static void A_mark_becomes_a_line_below_the_name_and_all_else_stays(string table, string name, string key, string values, string above, string line)
    {
        foreach (string ending in (string[])["\n", "\r\n"])
        {
            string text = Job.Replace("\n", ending, StringComparison.Ordinal);
            string expected = text.Replace(above, above + ending + line, StringComparison.Ordinal);
            Assert.Equal(expected, JobMarks.Written("job.toml", text, new JobMark(table, name, key, values.Split('|'))));
        }
    }

    [Fact]
    public static void A_mark_takes_the_place_of_an_older_one_and_none_takes_it_out()
    {
        string held = JobMarks.Written("job.toml", Job, new("fasteners", "hub nut", "held", ["150Nm"]))!;
        string more = JobMarks.Written("job.toml", held, new("fasteners", "hub nut", "held", ["175Nm"]))!;
        Assert.Equal(held.Replace("150Nm", "175Nm", StringComparison.Ordinal), more);
        Assert.Equal(Job, JobMarks.Written("job.toml", more, new("fasteners", "hub nut", "held", [])));
        Assert.Equal(Job.Replace("\nneeds = [\n  \"jack\",\n]", "\n", StringComparison.Ordinal), JobMarks.Written("job.toml", Job, new("tasks", "Lift it", "needs", [])));
        Assert.Equal(Job, JobMarks.Written("job.toml", Job, new("tasks", "Lift it", "done", [])));
    }

    [Theory]
    [InlineData("name;torque\nhub nut;380Nm\nplug;50Nm\n", "held", "150Nm", "name;torque;held\nhub nut;380Nm;150Nm\nplug;50Nm\n")]
    [InlineData("sep=;\n\n\"Name\";held;torque\nplug;;50Nm\n\"hub nut\";;\"380 Nm\"", "held", "150Nm", "sep=;\n\n\"Name\";held;torque\nplug;;50Nm\n\"hub nut\";150Nm;\"380 Nm\"")]
    [InlineData("name,torque,note\r\nhub nut,380Nm\r\n", "done", "true", "name,torque,note,done\r\nhub nut,380Nm,,yes\r\n")]
    [InlineData("name;torque;came loose\nhub nut;380Nm;90Nm\n", "came_loose", "90Nm|95Nm", "name;torque;came loose\nhub nut;380Nm;\"90Nm; 95Nm\"\n")]
    public static void In_a_list_it_becomes_a_cell(string text, string key, string values, string expected)
    {
        string? written = JobMarks.Written("list.csv", text, new("fasteners", "hub nut", key, values.Split('|')));
        Assert.Equal(expected, written);
        Assert.NotEmpty(FastenerList.Parse("list.csv", written!));
    }

    [Fact]
    public static void What_is_in_no_file_is_written_into_none()
    {
        Assert.Null(JobMarks.Written("job.toml", Job, new("fasteners", "plug", "held", ["150Nm"])));
        Assert.Null(JobMarks.Written("job.toml", "fasteners = [ { name = \"plug\" } ]", new("fasteners", "plug", "held", ["150Nm"])));
        Assert.Null(JobMarks.Written("list.csv", "name;torque\nhub nut;380Nm\n", new("tasks", "hub nut", "done", ["true"])));
        Assert.Throws<InputException>(() => JobMarks.Written("job.toml", "title =", new("fasteners", "plug", "held", ["150Nm"])));
    }
}
