using Leverage.Requests;

namespace Leverage.Page.Tests;

/// <summary>A question as the page asks it and as the command line asks it.</summary>
internal sealed record Question(string Door, string Query, IReadOnlyList<string> Command)
{
    /// <summary>Questions drawn over every field there is: the same ones at every run.</summary>
    internal static IReadOnlyList<Question> Draw(int loosen, int tighten, int check)
    {
        var random = new Random(17);
        return
        [
            .. Enumerable.Range(0, loosen).Select(i => Of("Loosen", "loosen", LooseningFields.All, Starts[i % Starts.Length], i % 3, random, i % 3 == 2)),
            .. Enumerable.Range(0, tighten).Select(i => Of("Tighten", "tighten", TighteningFields.All, Joints[i % Joints.Length], i % 3, random, i % 3 == 2)),
            .. Enumerable.Range(0, check).Select(i => Of("Check", "check", TighteningFields.Check, Quoted[i % Quoted.Length], i % 3, random, i % 3 == 2)),
        ];
    }

    private static readonly string[] Starts =
    [
        "hex=32mm&on=hub&bar=450mm&drive=1/2",
        "torque=460Nm&thread=M24x1.5&grade=10.9&condition=used&drive=3/4&bar=600mm&bar-diameter=22mm&tube=33.7x3.2x1200mm&overlap=400mm",
        "torque=110ft-lb&hex=3/4in&drive=1/2&bar=24in&condition=rusted",
        "thread=M12&condition=salted&tool=ring&bar=14in",
        "torque=100Nm + 90deg&thread=M14x1.5&drive=1/2&bar=500mm&tube=jack:900mm&bore=26mm&mass=1200kg&held-by=brake,gear",
        "torque=250Nm&hex=32mm&drive=3/4&bar=500mm&tube=1.66x0.14x48in&overlap=9in&held-by=none",
        "torque=120Nm&on=wheel&hex=19mm&drive=1/2&bar=600mm&on-stands=yes&mass=1400kg",
    ];

    private static readonly string[] Joints =
        ["thread=M12x1.25&grade=10.9&friction=0.12", "thread=1/2-20&torque=75ft-lb", "thread=M10&grade=8.8&lubrication=oiled", "thread=M16&torque=180Nm&then=90deg&grip=60mm"];

    private static readonly string[] Quoted = ["torque=130Nm&thread=M12x1.25&grade=10.9", "torque=20Nm&thread=M12", "torque=90ft-lb&thread=1/2-20&grade=SAE 8"];

    private static Question Of(string door, string command, IEnumerable<Field> fields, string start, int more, Random random, bool us)
    {
        Field[] all = [.. fields];
        var said = start.Split('&').Select(pair => pair.Split('=')).ToDictionary(pair => pair[0], pair => pair[1], StringComparer.Ordinal);
        for (int i = 0; i < more; i++)
        {
            Field field = all[random.Next(all.Length)];
            string[] names = [.. field.Kind.Names()];
            said[field.Name] = field.Kind.IsFlag ? "yes" : names.Length > 0 ? names[random.Next(names.Length)] : field.Kind.Example;
        }

        return new(
            door,
            string.Join('&', said.Select(pair => $"{pair.Key}={Uri.EscapeDataString(pair.Value)}")) + (us ? "&units=us" : ""),
            [command, .. said.SelectMany(pair => Words(all.First(field => field.Name == pair.Key), pair.Value)), .. us ? ["--units", "us"] : Array.Empty<string>()]);
    }

    private static string[] Words(Field field, string value) =>
        field.Kind.IsFlag ? [$"--{field.Name}"] : field.InPlace ? [value] : [$"--{field.Name}", value];
}
