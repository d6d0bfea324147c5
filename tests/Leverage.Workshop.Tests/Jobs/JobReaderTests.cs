using Leverage.Assessments;
using Leverage.Requests;
using Leverage.Workshop.Jobs;

namespace Leverage.Workshop.Tests.Jobs;

public static class JobReaderTests
{
    [Fact]
    public static void A_job_is_read_with_every_key()
    {
        Job job = JobText.Read("""
            title = "A job"
            note = "n"
            people = "me"
            hung_mass = "25kg"
            at_start = "wheels  down"
            [vehicle]
            name = "v"
            mass = "1450kg"
            wheel_load_front = "4000N"
            wheel_load_rear = "3100N"
            tyre_radius = "330mm"
            ground = "gravel"
            driven = ["front", "rear"]
            parking_brake_on = "front"
            [[chest.people]]
            name = "me"
            person = "woman"
            [[fasteners]]
            name = "f"
            place = "p"
            thread = "1/2-20"
            grade = "SAE 5"
            hex = "3/4in"
            torque = "75ft-lb"
            condition = "rusted"
            prevailing = "5Nm"
            count = 6        # alike
            new_part = "n"
            new_part_count = 1
            lubrication = "oiled"
            left_hand = true
            soaked = true
            tool = "ring"
            worn = "rounded"
            engaged = "40%"
            nut_class = "8"
            stances = ["lie-push", "lie-pull"]
            wheel = "front right"
            held_by = "h"
            adapter = "60mm"
            pattern = "row"
            note = "m"
            [[tasks]]
            name = "t"
            needs = "wheels down"
            ends = ["wheels down"]
            gives = "up"
            loosens = "f"
            photograph = "it"
            note = "k"
            [[tasks]]
            name = "u"
            after = "t"
            takes_off = "f"
            """);

        JobFastener f = Assert.Single(job.Fasteners);
        Assert.Equal(["wheels down"], job.AtStart);
        Assert.Equal(25, job.HungMass?.Kilograms);
        Assert.Equal("me", Assert.Single(job.People).Name);
        Assert.Equal([Axle.Front, Axle.Rear], job.Vehicle!.Driven);
        Assert.Equal(Axle.Front, job.Vehicle.ParkingBrakeOn);
        Assert.Equal("1/2-20", f.Thread?.Designation);
        Assert.Equal(19.05, f.AcrossFlats!.Value.Millimeters, 6);
        Assert.Equal(75 * 1.3558179483, f.BookTorque!.Value.NewtonMeters, 6);
        Assert.Equal((6, 1, TighteningPattern.Row), (f.Count, f.NewPartCount, f.Pattern));
        Assert.Equal((true, true, ToolKind.Ring), (f.LeftHand, f.Soaked, f.Tool));
        Assert.Equal(("rounded", 0.4, "8"), (f.Worn, f.Engaged, f.NutClass));
        Assert.Equal("front right", f.Wheel?.Words);
        Assert.Equal([0], job.Tasks[0].Loosens);
        Assert.Equal([0], job.Tasks[1].TakesOff);
        Assert.Equal("it", job.Tasks[0].Photograph);
    }

    [Theory]
    [InlineData("tile = \"x\"", "job.toml(1,1): tile: is no key known here. Nearest: title.")]
    [InlineData("title = \"x\"", "job.toml(1,1): fasteners are missing.")]
    [InlineData("title = \"x\"\nfasteners = []", "job.toml(1,1): fasteners are missing.")]
    [InlineData("title = \"x\"\nfastener_list = \"none.csv\"", "job.toml(2,17): fastener_list: there is no file 'none.csv' beside this one.")]
    [InlineData("title = \"x\"\nchest = \"none.toml\"", "job.toml(2,9): chest: there is no file 'none.toml' beside this one.")]
    [InlineData("title = \"x\"\n[[fasteners]]\nname = \"a\"\ntorque = \"10Nm\"\ntorqe = \"1\"", "job.toml(5,1): torqe: is no key known in fasteners. Nearest: torque.")]
    [InlineData("title = \"x\"\n[[fasteners]]\nname = \"a\"\ntorque = \"1,500Nm\"", "job.toml(4,10): torque: cannot read '1,500Nm'")]
    [InlineData("title = \"x\"\n[[fasteners]]\nname = \"a\"\ntorque = \"10\"", "job.toml(4,10): torque: cannot read '10'")]
    [InlineData("title = \"x\"\n[[fasteners]]\nname = \"a\"", "job.toml(3,8): fasteners: nothing says how tight 'a' is.")]
    [InlineData("title = \"x\"\n[[fasteners]]\nname = \"a\"\ntorque = \"10Nm\"\ncount = 1.5", "job.toml(5,9): count: '1.5' is no whole number.")]
    [InlineData("title = \"x\"\n[[fasteners]]\nname = \"a\"\ntorque = \"10Nm\"\ncount = 0", "job.toml(5,9): count: cannot use '0'")]
    [InlineData("title = \"x\"\n[[fasteners]]\nname = \"a\"\ntorque = \"10Nm\"\ngrade = \"8.8\"", "job.toml(5,9): grade: is of no use without thread.")]
    [InlineData("title = \"x\"\n[[fasteners]]\nname = \"a\"\ntorque = \"10Nm\"\nwheel = \"spare\"", "job.toml(5,9): wheel: 'spare' is no wheel.")]
    [InlineData("title = \"x\"\n[[fasteners]]\nname = \"a\"\ntorque = \"10Nm\"\nwheel = \"rear left\"", "job.toml(5,9): wheel: what holds a wheel depends on the vehicle's mass.")]
    [InlineData("title = \"x\"\n[[fasteners]]\nname = \"a\"\ntorque = \"10Nm\"\ncondition = \"rusty\"", "job.toml(5,13): condition: 'rusty' is not a condition known here. Nearest: rusted")]
    public static void What_cannot_be_is_refused_with_line_and_column(string text, string start) =>
        Assert.StartsWith(start, JobText.Refusal(text), StringComparison.Ordinal);

    [Theory]
    [InlineData("[[fasteners]]\nname = \"AXLE nut\"\ntorque = \"1Nm\"", "job.toml(15,8): name: 'AXLE nut' is there already, on line 9.")]
    [InlineData("[[tasks]]\nname = \"t\"\ntakes_off = \"axle nutt\"", "job.toml(16,13): takes_off: 'axle nutt' is not a fastener here. Nearest: axle nut.")]
    [InlineData("[[tasks]]\nname = \"t\"\nneeds = [\"in gear\", \"weels down\"]", "job.toml(16,21): needs: nothing gives 'weels down'")]
    [InlineData("[[tasks]]\nname = \"t\"\n[[tasks]]\nname = \"T\"", "job.toml(17,8): name: there are two tasks 'T'")]
    [InlineData("[[tasks]]\nname = \"t\"\nneed = \"in gear\"", "job.toml(16,1): need: is no key known in tasks. Nearest: needs.")]
    [InlineData("[[tasks]]\nname = \"t\"\ntakes_off = \"axle nut\"\n[[tasks]]\nname = \"u\"\ntakes_off = \"axle nut\"", "job.toml(19,13): takes_off: 't' names it already")]
    [InlineData("[[tasks]]\nname = \"t\"\ngives = \"chocked\"", "job.toml: the state \"chocked\" holds by a thing in the chest, and there is none.")]
    [InlineData("[[tasks]]\nname = \"t\"\nafter = \"u\"\n[[tasks]]\nname = \"u\"\nafter = \"t\"", "job.toml(15,8): tasks: there is no order of work, 2 tasks wait for each other: 'u' comes after 't'; 't' comes after 'u'.")]
    public static void A_name_or_order_that_cannot_be_is_refused_with_line_and_column(string more, string start) =>
        Assert.StartsWith(start, JobText.Refusal(JobText.Head + JobText.AxleNut + more), StringComparison.Ordinal);

    [Fact]
    public static void The_starter_file_works_as_it_stands()
    {
        JobPlan plan = JobPlanner.Plan(JobText.Read(StarterJob.Text()));

        Assert.Equal("Loosen the nuts on the ground", plan.Tasks[0].Task.Name);
        Assert.All(plan.Loosening, planned => Assert.NotNull(planned.Choice));
    }

    [Fact]
    public static void The_starter_file_names_every_key_there_is()
    {
        string text = StarterJob.Text();
        string unknown = JobText.Refusal("title = \"x\"\n[[fasteners]]\nname = \"a\"\ntorque = \"10Nm\"\nzzz = \"1\"");
        string[] keys = unknown[(unknown.IndexOf("Known: ", StringComparison.Ordinal) + 7)..].TrimEnd('.').Split(", ");

        Assert.Contains("lubrication", keys);
        Assert.All(keys.Except(["prevailing"]), key => Assert.Contains($"{key} = ", text, StringComparison.Ordinal));
    }
}
