using System.CommandLine;
using Leverage.Assessments;
using Leverage.Levers;
using Leverage.Workshop.Chest;
using UnitsNet;

namespace Leverage.Cli.Input;

/// <summary>Who pulls: a column of the stance table, or somebody of the chest.</summary>
internal sealed class PersonOptions
{
    private readonly ChestOption _chest;
    private readonly Asked<string?> _person = new Asked<string?>(
        "--person", "man|woman", "column of the stance table (man), or a name of the chest", text => text);

    private readonly Asked<Mass?> _body = QuantityOption.Mass("--body", "your mass (84.6kg; woman 66.8kg)", 250);
    private readonly Asked<Force?> _force = QuantityOption.Force("--force", "your own, read off a bathroom scale pushed so");

    /// <summary>Options whose names the chest knows.</summary>
    internal PersonOptions(ChestOption chest)
    {
        _chest = chest;
        _person.CompletionSources.Add("man", "woman");
    }

    /// <summary>The options, in the order the help shows them.</summary>
    internal IEnumerable<Option> Symbols => [_person, _body, _force];

    /// <summary>The force given for one stance, if any.</summary>
    internal Asked<Force?> Force => _force;

    /// <summary>Whether a column, a mass or a force was written out.</summary>
    internal bool IsWritten(Given given) =>
        given.Get(_person) is not null || given.Get(_body) is not null || given.Get(_force) is not null;

    /// <summary>The person of the chest that was named, if any.</summary>
    internal ChestPerson? Named(Given given) => _chest.Piece(
        given, _person, chest => chest.People, (chest, name) => chest.Person(name), text => Column(text) is not null, "man or woman");

    /// <summary>Puts mass, force and column into a request; somebody of the chest is put in by the caller.</summary>
    internal LooseningRequest Into(LooseningRequest request, Given given) => request with
    {
        Person = Named(given) is null && given.Get(_person) is { } word ? Column(word) : null,
        Body = given.Get(_body),
        Force = given.Get(_force),
    };

    private static Person? Column(string word) => word.Trim().ToUpperInvariant() switch
    {
        "MAN" => Person.Man,
        "WOMAN" => Person.Woman,
        _ => null,
    };
}
