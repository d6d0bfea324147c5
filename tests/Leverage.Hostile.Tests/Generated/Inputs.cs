using FsCheck;
using FsCheck.Fluent;

namespace Leverage.Hostile.Tests.Generated;

/// <summary>
/// The mix. What takes a thousand times as long (a sheet, a picture, a search through a
/// chest) is drawn so much less often, so that ten million inputs can be run at all.
/// </summary>
internal static class Inputs
{
    private static readonly Gen<HostileInput> Readers = Gen.OneOf(
        Read("torque", Values.Torque), Read("length", Values.Length), Read("thread", Values.Thread), Read("tube", Values.Tube),
        Read("grade", Values.Grade), Read("force", Values.Of("FORCE")!), Read("mass", Values.Of("MASS")!), Read("stress", Values.Of("STRESS")!),
        Read("angle", Values.Of("ANGLE")!), Read("share", Values.Of("SHARE")!), Read("number", Values.Of("NUMBER")!), Read("rise", Values.Of("RISE")!));

    private static readonly Gen<HostileInput> Files = Gen.Frequency(
        (4, FileTexts.Chest(3).Select(text => new HostileInput(Door.File, ["chest"], text))),
        (3, FileTexts.List.Select(text => new HostileInput(Door.File, ["list"], "", text))),
        (2, FileTexts.Job.Select(text => new HostileInput(Door.File, ["job"], text))),
        (1, from text in FileTexts.JobWithList from list in FileTexts.List select new HostileInput(Door.File, ["job"], text, list)));

    private static readonly Gen<HostileInput> Pick =
        from words in CommandLines.With("pick", "460Nm", "--hex", "36mm", "--chest", HostileInput.TextFile)
        from chest in FileTexts.Chest(4)
        select new HostileInput(Door.Command, words, chest);

    private static readonly Gen<HostileInput> LoosenWithChest =
        from words in CommandLines.With("loosen", "460Nm", "--bar", "long bar", "--chest", HostileInput.TextFile)
        from chest in FileTexts.Chest(4)
        select new HostileInput(Door.Command, words, chest);

    private static readonly Gen<HostileInput> Job =
        from words in CommandLines.With("job", HostileInput.TextFile)
        from job in Gen.OneOf(FileTexts.Job, FileTexts.JobWithList)
        from list in FileTexts.List
        select new HostileInput(Door.Command, words, job, list);

    private static readonly Gen<HostileInput> WholeJob =
        from words in CommandLines.With("job", HostileInput.TextFile)
        from job in FileTexts.WholeJob
        select new HostileInput(Door.Command, words, job);

    /// <summary>Jobs and lists with whatever keys they can have, read; one in twenty planned and laid out too.</summary>
    internal static Gen<HostileInput> Jobs { get; } = Gen.Frequency(
        (3, FileTexts.Job.Select(text => new HostileInput(Door.File, ["job"], text))),
        (6, FileTexts.KeyedJob.Select(text => new HostileInput(Door.File, ["job"], text))),
        (3, from text in FileTexts.JobWithList from list in FileTexts.List select new HostileInput(Door.File, ["job"], text, list)),
        (7, from text in FileTexts.JobWithList from list in FileTexts.KeyedList select new HostileInput(Door.File, ["job"], text, list)),
        (1, FileTexts.KeyedJob.Select(text => new HostileInput(Door.File, ["plan"], text))));

    /// <summary>Any input.</summary>
    internal static Gen<HostileInput> Any { get; } = Gen.Frequency(
        (82_000, Readers),
        (5_000, Files),
        (6_000, CommandLines.Of("tighten")),
        (1_000, CommandLines.Of("check", "table")),
        (1_500, CommandLines.Of("slip")),
        (1_500, CommandLines.Of("loosen")),
        (2_000, CommandLines.Strays),
        (100, LoosenWithChest),
        (40, Pick),
        (40, Job),
        (2, WholeJob),
        (600, PageRequests.Refused),
        (200, PageRequests.Opened),
        (20, PageRequests.Whole));

    private static Gen<HostileInput> Read(string reader, Gen<string> texts) => texts.Select(text => new HostileInput(Door.Reader, [reader, text]));
}
