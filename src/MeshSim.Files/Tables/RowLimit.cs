using MeshSim.Files.Diagnostics;

namespace MeshSim.Files.Tables;

/// <summary>Refuses tables of more rows than can be worked through, before any row is looked at.</summary>
internal static class RowLimit
{
    /// <summary>Whether a table has too many rows; then the first one too many is an error.</summary>
    /// <param name="table">The table.</param>
    /// <param name="most">Most rows.</param>
    /// <param name="what">What the rows are, in the plural.</param>
    /// <param name="problems">Takes the error.</param>
    public static bool IsExceeded(CsvTable table, int most, string what, DiagnosticList problems)
    {
        if (table.Rows.Count <= most) return false;
        problems.Error(
            table.Rows[most].Place,
            FormattableString.Invariant($"there are {table.Rows.Count} {what}; a home has at most {most}"),
            "plan a larger building in parts, each with its own folder");
        return true;
    }
}
