using Leverage.Workshop.Jobs;

namespace Leverage.Workshop.Tests.Jobs;

/// <summary>Small job files for tests, and where the demo lies.</summary>
internal static class JobText
{
    internal const string Chest = """

        [[chest.bars]]
        name = "long bar"
        drive = "1/2"
        length = "600mm"
        diameter = "18mm"
        [[chest.sockets]]
        name = "sockets"
        drive = "1/2"
        size = ["17mm", "19mm", "36mm"]
        [[chest.torque_wrenches]]
        name = "small wrench"
        drive = "1/2"
        length = "300mm"
        from = "10Nm"
        to = "60Nm"
        accuracy = "4%"
        [[chest.torque_wrenches]]
        name = "big wrench"
        drive = "1/2"
        length = "500mm"
        from = "40Nm"
        to = "210Nm"
        accuracy = "4%"
        [[chest.holds]]
        name = "oak chocks"
        kind = "chock"
        height = "110mm"
        """;

    internal const string Head = """
        title = "A job"
        at_start = ["wheels down", "in gear", "parking brake", "left half shaft in", "right half shaft in"]
        [vehicle]
        mass = "1450kg"
        wheel_load_rear = "3100N"
        tyre_radius = "330mm"
        driven = "rear"

        """;

    internal const string AxleNut = """
        [[fasteners]]
        name = "axle nut"
        thread = "M24x1.5"
        hex = "36mm"
        torque = "380Nm"
        wheel = "rear left"

        """;

    internal static string Demo(string file) => Path.Combine(AppContext.BaseDirectory, "pickup", file);

    internal static Job Read(string text) => JobReader.Parse("job.toml", text);

    internal static string Refusal(string text) =>
        Assert.Throws<Leverage.Reading.InputException>(() => JobPlanner.Plan(Read(text))).Line;
}
