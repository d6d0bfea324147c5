using Leverage.Assessments;
using Leverage.Holding;
using Leverage.Levers;
using Leverage.BreakLoose;
using Leverage.Reading;

namespace Leverage.Page.Asking;

/// <summary>Words that stand for a value, refused in the command line's own words.</summary>
internal static class Words
{
    /// <summary>A yes or no; an empty field is no.</summary>
    internal static bool Flag(string text) => OneOf(text, ("yes", true), ("on", true), ("no", false), ("off", false));

    /// <summary>What turns it.</summary>
    internal static ToolKind Tool(string text) =>
        OneOf(text, ("socket", ToolKind.Socket), ("ring", ToolKind.Ring), ("open", ToolKind.Open), ("key", ToolKind.Key));

    /// <summary>The part that is heated.</summary>
    internal static HeatedPart Heated(string text) =>
        OneOf(text, ("stud", HeatedPart.Stud), ("nut", HeatedPart.Nut), ("housing", HeatedPart.Housing));

    /// <summary>The column of the stance table.</summary>
    internal static Person Person(string text) => OneOf(text, ("man", Levers.Person.Man), ("woman", Levers.Person.Woman));

    /// <summary>The side of the vehicle.</summary>
    internal static Side Side(string text) => OneOf(text, ("left", Holding.Side.Left), ("right", Holding.Side.Right));

    /// <summary>The half shafts still in.</summary>
    internal static HalfShafts Shafts(string text) => OneOf(text, ("both", HalfShafts.Both), ("one", HalfShafts.One));

    private static T OneOf<T>(string text, params (string Word, T Value)[] choices)
    {
        foreach (var (word, value) in choices)
        {
            if (word.Equals(text, StringComparison.OrdinalIgnoreCase))
            {
                return value;
            }
        }

        throw new InputException($"'{text}' is not accepted here: write {string.Join(" or ", choices.Select(choice => choice.Word))}.");
    }
}
