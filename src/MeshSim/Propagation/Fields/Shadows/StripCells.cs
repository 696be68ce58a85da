namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>
/// The changes of one channel on one strip of rows: what the sums gain from one column to the next. The rows of a column lie side
/// by side: a steep border changes one or two vectors, and the sums of all rows go on with one addition.
/// </summary>
internal sealed class StripCells
{
    // A border reaches a column or two beyond the last; a whole line of the cache keeps what follows apart.
    private const int SpareColumns = 8;

    // Rows that a border does not cover write to spare cells, each border to others than the few before it: a processor that
    // guesses which loads depend on which stores guesses wrong when the same cell is met again too soon.
    private const int SparesOfRow = 16;

    private readonly LineAligned<int> cells;
    private readonly int firstSpare;

    /// <summary>All zero.</summary>
    /// <param name="columns">Number of columns, padded to whole vectors.</param>
    public StripCells(int columns)
    {
        firstSpare = (columns + SpareColumns) * ShadowLines.StripRows;
        cells = new(firstSpare + (SparesOfRow * ShadowLines.StripRows));
    }

    /// <summary>Index of cells, one for each row, that count for nothing.</summary>
    public int SpareOf(int line) => firstSpare + (line % SparesOfRow * ShadowLines.StripRows);

    /// <summary>Column by column, then the spare cells.</summary>
    public Span<int> All => cells.Values;

    /// <summary>Adds to one cell.</summary>
    public void Add(int lane, int column, int amount) => cells.Values[(column * ShadowLines.StripRows) + lane] += amount;
}
