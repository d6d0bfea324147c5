using System.CommandLine;
using Leverage.Assessments;
using Leverage.Cli.Input;
using Leverage.Cli.Output;
using Leverage.Reading;
using Leverage.Tables;
using Leverage.Workshop.Chest;
using Leverage.Workshop.Picking;
using UnitsNet;

namespace Leverage.Cli.Commands;

/// <summary><c>leverage pick</c>: out of your own tools, which set-up is best for this nut.</summary>
internal sealed class PickCommand : LeverageCommand
{
    private readonly NutOptions _nut = new("what has to turn it (socket or spanner, the best)");
    private readonly ChestOption _chest = new("your own tools");
    private readonly Asked<IReadOnlyList<string>?> _stances = new Asked<IReadOnlyList<string>?>(
        "--stance", "LIST", "how you can stand there: table stances, commas between (any)", Stances);

    private readonly Asked<Length?> _recess = QuantityOption.Length("--recess", "how far the nut sits back: extensions must reach it");
    private readonly PersonOptions _person;
    private readonly HandleOptions _handle = new();
    private readonly HoldOptions _hold;
    private readonly NewFile _starter = new("--new-chest", "write a commented chest to start from");

    /// <summary>The command with its options.</summary>
    internal PickCommand() => (_person, _hold) = (new PersonOptions(_chest), new HoldOptions(_chest));

    /// <inheritdoc/>
    internal override string Example =>
        "pick 460Nm --thread M24x1.5 --condition rusted --hex 36mm --chest shared/pickup/chest.toml";

    /// <inheritdoc/>
    internal override IEnumerable<Symbol> Symbols =>
    [
        .. _nut.Symbols, _chest.Symbol, _stances, _recess, .. _person.Symbols, .. _handle.Symbols, .. _hold.Symbols, _starter.Option,
    ];

    /// <inheritdoc/>
    internal override CommandAnswer Answer(Given given)
    {
        if (_starter.Write(given, StarterChest.Text) is { } written)
        {
            return written;
        }

        PickAssessment pick = Given.Options(() => Picker.Pick(Request(given)));
        return new CommandAnswer(
            pick.Verdict,
            () => PickAnswers.Of(pick, given.Units).ToJson(),
            page => new PickPage(pick, given.Units).Write(page));
    }

    private PickRequest Request(Given given)
    {
        ToolChest chest = given.Need(_chest.Symbol, "write for example --chest chest.toml; start one with --new-chest chest.toml.");
        IReadOnlyList<string> stances = given.Get(_stances) ?? [];
        if (given.Get(_person.Force) is not null && stances.Count != 1)
        {
            throw new InputException(_person.Force.Name, "was measured in one stance: give --stance with that one, or forces in the chest.");
        }

        return new PickRequest
        {
            Nut = _handle.Into(_person.Into(_nut.Read(given) with { Hold = _hold.Read(given) }, given), given),
            Chest = chest,
            Tool = _nut.Tool(given),
            Stances = stances,
            Person = _person.Named(given) ?? (_person.IsWritten(given) ? null : First(chest)),
            Recess = given.Get(_recess) ?? Length.Zero,
        };
    }

    private static ChestPerson? First(ToolChest chest) => chest.People.Count > 0 ? chest.People[0] : null;

    private static IReadOnlyList<string> Stances(string text) =>
    [
        .. text.Split(',', StringSplitOptions.TrimEntries)
            .Select(word => RowLookup.Named("stances", word, "a stance").Key)
            .Distinct(StringComparer.Ordinal),
    ];
}
