using Mono.Cecil;

namespace Leverage.Workshop.Tests.Rooms;

/// <summary>Rooms are namespaces in a fixed order; a room may use only those before it. Read off the compiled assemblies.</summary>
public sealed class RoomOrderTests
{
    private static readonly string[] Core =
    [
        "Reading", "Tables", "Constants", "Probability", "Threads", "Grades", "Friction", "Preload", "Stiffness", "Levers", "Tubes",
        "LoadPath", "Corners", "Holding", "BreakLoose", "Outcomes", "Requests", "Assessments", "Wording", "Proof",
    ];

    private static readonly string[] Workshop = ["Files", "Chest", "Picking", "Ordering", "Jobs", "Sheets"];

    /// <summary>The libraries and the order of their rooms.</summary>
    public static TheoryData<string, string, string[]> Libraries => new()
    {
        { "Leverage.Core", "Leverage.", Core },
        { "Leverage.Workshop", "Leverage.Workshop.", Workshop },
    };

    [Theory]
    [MemberData(nameof(Libraries))]
    public void A_room_uses_only_rooms_before_it(string library, string prefix, string[] order)
    {
        using AssemblyDefinition assembly = AssemblyDefinition.ReadAssembly(Path.Combine(AppContext.BaseDirectory, $"{library}.dll"));
        var rooms = order.Select((room, place) => (room, place)).ToDictionary(one => prefix + one.room, one => one.place, StringComparer.Ordinal);
        TypeDefinition[] types = [.. assembly.MainModule.GetTypes().Where(type => Room(type).StartsWith(prefix, StringComparison.Ordinal))];
        Assert.All(types.Select(Room).Distinct(), room => Assert.Contains(room, rooms.Keys));
        string[] against =
        [
            .. types.SelectMany(type => UsedRooms.By(type).Where(rooms.ContainsKey).Where(used => rooms[used] > rooms[Room(type)])
                .Select(used => $"{type.FullName} uses {used}")).Order(StringComparer.Ordinal),
        ];
        Assert.True(against.Length == 0, string.Join('\n', against));
        Assert.InRange(types.Length, 40, 2000);
    }

    /// <summary>The namespace of a type, nested ones by the type they are in.</summary>
    internal static string Room(TypeReference type)
    {
        TypeReference outermost = type.GetElementType();
        while (outermost.DeclaringType is { } outer)
        {
            outermost = outer;
        }

        return outermost.Namespace;
    }
}
