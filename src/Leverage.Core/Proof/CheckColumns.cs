using Leverage.Tables;

namespace Leverage.Proof;

/// <summary>Where the columns of a checks file stand, looked up once a file and not once a cell.</summary>
internal sealed record CheckColumns(Table Table, int Formula, int Inputs, int Expected, int Unit, int Tolerance, int Source)
{
    /// <summary>The columns of a file.</summary>
    /// <exception cref="TableFormatException">The file lacks one of them.</exception>
    internal static CheckColumns Of(Table table) => new(
        table, table.Column("formula"), table.Column("inputs"), table.Column("expected"), table.Column("unit"), table.Column("tolerance"), table.Column("source"));
}
