using System.CommandLine;
using Leverage.Cli.Input;
using Leverage.Cli.Output;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Workshop.Chest;
using Leverage.Workshop.Picking;
using UnitsNet;

namespace Leverage.Cli.Commands;

/// <summary><c>leverage pick</c>: out of your own tools, which set-up is best for this nut.</summary>
internal sealed class PickCommand : LeverageCommand
{
    private static readonly FieldKind<IReadOnlyList<string>> Ways = Kinds.Rows("stances", "a stance", "stand-push");
    private static readonly FieldKind<Length> Depths = Kinds.Length("80mm");

    private readonly NutOptions _fields = new(LooseningFields.Pick, "your own tools");
    private readonly TextOption _stances = new("--stance", Ways, "how you can stand there: table stances, commas between (any)");
    private readonly TextOption _recess = new("--recess", Depths, "how far the nut sits back: extensions must reach it");
    private readonly Flag _more = new("--more", "every set-up, source and assumption");
    private readonly NewFile _starter = new("--new-chest", "write a commented chest to start from");

    /// <inheritdoc/>
    internal override string[] Examples =>
    [
        "pick 460Nm --thread M24x1.5 --condition rusted --hex 36mm --chest shared/pickup/chest.toml",
        "pick --hex 19mm --on wheel --chest shared/pickup/chest.toml",
    ];

    /// <inheritdoc/>
    internal override IEnumerable<Symbol> Symbols =>
    [.. _fields.Symbols, _stances, _recess, _more, _starter.Option];

    /// <inheritdoc/>
    internal override CommandAnswer Answer(ParsedLine parsed)
    {
        if (_starter.Write(parsed, StarterChest.Text) is { } written)
        {
            return written;
        }

        PickAssessment pick = Picker.Pick(Request(parsed));
        return new CommandAnswer(
            pick.Verdict,
            () => PickAnswers.Of(pick, parsed.Units).ToJson(),
            page => new PickPage(pick, parsed.Units, parsed.Get(_more)).Write(page));
    }

    private PickRequest Request(ParsedLine parsed)
    {
        ToolChest chest = _fields.Chest(parsed)
            ?? throw new InputException("chest", "is needed here; --new-chest FILE begins one.", new Cure("chest", "chest.toml"));
        ChestPerson? person = null;
        LooseningRequest nut = _fields.Read(parsed, chest, (request, called) =>
        {
            person = called;
            return request;
        });
        IReadOnlyList<string> stances = parsed.Read(_stances, Ways) ?? [];
        bool written = nut is not { Person: null, Body: null, Force: null };
        return nut.Force is not null && stances.Count != 1
            ? throw new InputException("force", "was measured in one stance: say which, or write forces in the chest.", new Cure("stance", "stand-push"))
            : new PickRequest
            {
                Nut = nut,
                Chest = chest,
                Stances = stances,
                Person = person ?? (written || chest.People.Count == 0 ? null : chest.People[0]),
                Recess = parsed.Read(_recess, Depths, Length.Zero),
            };
    }
}
