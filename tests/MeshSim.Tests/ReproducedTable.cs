namespace MeshSim.Tests;

/// <summary>A table of check values together with what this program makes of each row: shared by the tests and the page about them.</summary>
public sealed class ReproducedTable
{
    private readonly Func<PublishedRow, IEnumerable<Comparison>> compare;

    /// <summary>A table below the Data folder.</summary>
    /// <param name="file">Its path there.</param>
    /// <param name="rowCount">How many rows it has; a table that lost or gained one is refused.</param>
    /// <param name="keys">The columns that say what a row is about.</param>
    /// <param name="compare">The values of a row beside ours; the first is the one that the page samples.</param>
    public ReproducedTable(string file, int rowCount, string[] keys, Func<PublishedRow, IEnumerable<Comparison>> compare)
    {
        File = file;
        Keys = keys;
        Rows = PublishedTable.Read(file).Rows;
        this.compare = compare;
        if (Rows.Count != rowCount)
            throw new InvalidDataException(FormattableString.Invariant($"{file} has {Rows.Count} rows, not {rowCount}"));
    }

    public string File { get; }

    public IReadOnlyList<string> Keys { get; }

    public IReadOnlyList<PublishedRow> Rows { get; }

    /// <summary>The places of all rows, as theory data.</summary>
    public TheoryData<int> Places => [.. Enumerable.Range(0, Rows.Count)];

    public IEnumerable<Comparison> Compare(PublishedRow row) => compare(row);

    /// <summary>Asserts that one row is met.</summary>
    public void ShouldBeMetAt(int place) => Compare(Rows[place]).ShouldHold();

    /// <summary>Asserts that every row is met.</summary>
    public void ShouldBeMet() => Rows.SelectMany(Compare).ShouldHold();
}
