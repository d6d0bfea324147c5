using Leverage.Reading;
using Leverage.Requests;

namespace Leverage.Page.Asking;

/// <summary>The request of an address: each field under its name.</summary>
internal static class Address
{
    /// <summary>Every field's name, in the order of the command line's help.</summary>
    internal static IReadOnlyList<string> Names { get; } = [.. LooseningFields.All.Select(field => field.Name)];

    /// <summary>The request an address makes.</summary>
    /// <exception cref="InputException">A field cannot be read; the error is about it.</exception>
    internal static LooseningRequest Read(Said said) => LooseningFields.All.Aggregate(
        new LooseningRequest(), (request, field) => said.Text(field.Name) is { } text ? field.Read(request, text) : request);
}
