using Leverage.Holding;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Workshop.Chest;
using Leverage.Workshop.Files;
using Leverage.Workshop.Ordering;

namespace Leverage.Workshop.Jobs;

/// <summary>Reads a job file, with the chest and the fastener list it names.</summary>
public sealed class JobReader
{
    private readonly string _path;
    private readonly IReadOnlyDictionary<string, string>? _beside;
    private readonly NameIndex<int> _names = new();
    private readonly List<InputException> _errors = [];

    private JobReader(string path, IReadOnlyDictionary<string, string>? beside = null) => (_path, _beside) = (path, beside);

    /// <summary>The job of a file.</summary>
    /// <param name="path">The file.</param>
    /// <returns>The job, every name in it checked.</returns>
    /// <exception cref="InputException">Something cannot be read or cannot be; the error says where.</exception>
    public static Job Read(string path) => new JobReader(path).Read(TomlFile.Read(path));

    /// <summary>The job of a text.</summary>
    /// <param name="path">What errors call the file; other files are looked for beside it.</param>
    /// <param name="text">Its text.</param>
    /// <returns>The job, every name in it checked.</returns>
    /// <exception cref="InputException">Something cannot be read or cannot be; the error says where.</exception>
    public static Job Parse(string path, string text) => new JobReader(path).Read(TomlFile.Parse(path, text));

    /// <summary>The job of a text that came with its neighbours: nothing is read from disk.</summary>
    /// <param name="path">What errors call the file.</param>
    /// <param name="text">Its text.</param>
    /// <param name="beside">Texts of the files it may name, by name.</param>
    /// <returns>The job, every name in it checked.</returns>
    /// <exception cref="InputException">Something cannot be read or cannot be; the error says where.</exception>
    public static Job Parse(string path, string text, IReadOnlyDictionary<string, string> beside) =>
        new JobReader(path, beside ?? throw new ArgumentNullException(nameof(beside))).Read(TomlFile.Parse(path, text));

    /// <summary>Reads all there is before refusing, so that all errors are told at once.</summary>
    private Job Read(TomlSection file)
    {
        file.Errors = _errors;
        string title = file.Text("title") ?? "";
        if (!file.Has("title"))
        {
            _errors.Add(file.Missing("title", "Rear axle shafts and gearbox out"));
        }

        ToolChest chest = Gathered(() => Chest(file)) ?? new ToolChest { Path = _path };
        Vehicle? vehicle = Gathered(() => VehicleReader.Read(file.Section("vehicle")));
        string[] atStart = [.. file.Values("at_start", TaskReader.Words).Select(item => item.Value)];
        IReadOnlyList<JobFastener> fasteners = Gathered(() => Fasteners(file, vehicle)) ?? [];
        var job = new Job
        {
            Title = title,
            Note = file.Text("note"),
            Vehicle = vehicle,
            Chest = chest,
            People = [.. file.Values("people", chest.Person).Select(item => item.Value)],
            HungMass = file.Quantity(TighteningFields.ByWeight, "hung_mass"),
            AtStart = atStart,
            Fasteners = fasteners,
            Tasks = Gathered(() => new TaskReader(_names).Read(file.Sections("tasks"), atStart, _errors)) ?? [],
        };
        file.Done();
        if (_errors.Count > 0)
        {
            throw InputException.All(_errors);
        }

        NeedThings(job);
        return job;
    }

    private T? Gathered<T>(Func<T> read)
    {
        try
        {
            return read();
        }
        catch (InputException e)
        {
            _errors.Add(e);
            return default;
        }
    }

    /// <summary>A chock holds by its height and a bar by its diameter, and only the chest knows them.</summary>
    private void NeedThings(Job job)
    {
        var states = job.AtStart.Concat(job.Rules.SelectMany(rules => rules.Gives)).ToHashSet(TaskRules.Names);
        foreach (var (state, kind, cure) in ((string, Restraint, string)[])
            [
                (JobStates.Chocked, Restraint.Chock, "kind = \"chock\" and height = \"100mm\""),
                (JobStates.StudBar, Restraint.Bar, "kind = \"bar\" and diameter = \"30mm\""),
            ])
        {
            if (states.Contains(state) && !job.Chest.Holds.Any(hold => hold.Kind == kind))
            {
                throw InputException.At(_path, $"the state \"{state}\" holds by a thing in the chest, and there is none. "
                    + $"Write it below [[holds]] in the chest, with {cure}.");
            }
        }
    }

    private ToolChest Chest(TomlSection file)
    {
        if (file.Peek("chest") is TomlTable)
        {
            TomlSection section = file.Section("chest")!;
            ToolChest chest = ChestReader.Pieces(_path, section);
            section.Done();
            return chest;
        }

        return file.Value("chest", text => Beside(text, ToolChest.Read, ToolChest.Parse)) ?? new ToolChest { Path = _path };
    }

    private List<JobFastener> Fasteners(TomlSection file, Vehicle? vehicle)
    {
        int told = _errors.Count;
        IReadOnlyList<TomlSection> sections = file.Sections("fasteners");
        if (file.Value("fastener_list", text => Beside(text, FastenerList.Read, FastenerList.Parse)) is { } list)
        {
            sections = sections.Count == 0 ? list : throw file.PlaceOf("fastener_list").Error(
                "fastener_list", "fasteners stand below [[fasteners]] too. Keep them in one of the two.");
        }

        var fasteners = new List<JobFastener>(sections.Count);
        foreach (TomlSection section in sections)
        {
            if (fasteners.Count == FastenerList.Most)
            {
                throw FastenerList.TooMany(section.Place);
            }

            section.Errors ??= [];
            JobFastener fastener = FastenerReader.Read(section);
            if (fastener.Name.Length > 0)
            {
                Name(section, fastener.Name, fasteners.Count);
            }

            NeedMass(section, fastener, vehicle);
            _errors.AddRange(section.Errors);
            fasteners.Add(fastener);
        }

        // A list that could not be read is not missing as well.
        return fasteners.Count > 0 || _errors.Count > told
            ? fasteners
            : throw file.Place.Error("fasteners are missing. Write them below [[fasteners]], or name a list: fastener_list = \"fasteners.csv\".");
    }

    private void Name(TomlSection section, string name, int index)
    {
        try
        {
            _names.Add(name, index, section.PlaceOf("name"));
        }
        catch (InputException e)
        {
            section.Refuse(e);
        }
    }

    /// <summary>What holds a wheel depends on the vehicle's mass: without it there would be half a plan.</summary>
    private static void NeedMass(TomlSection section, JobFastener fastener, Vehicle? vehicle)
    {
        if (fastener.Wheel is not null && vehicle?.Mass is null)
        {
            section.Refuse(section.PlaceOf("wheel").Error("wheel", "what holds a wheel depends on the vehicle's mass. "
                + "Give it below [vehicle], such as mass = \"1450kg\"."));
        }
    }

    /// <summary>Reads a file named in this one: its path counts from where this one is.</summary>
    private T Beside<T>(string name, Func<string, T> read, Func<string, string, T> parse)
    {
        if (_beside is not null)
        {
            return _beside.TryGetValue(name.Trim(), out string? text)
                ? parse(name.Trim(), text)
                : throw new InputException($"names '{name.Trim()}', which was not opened with it. Open both together.");
        }

        string path = Path.Combine(Path.GetDirectoryName(_path) ?? "", name.Trim());
        return File.Exists(path) ? read(path) : throw new InputException($"there is no file '{path}' beside this one.");
    }
}
