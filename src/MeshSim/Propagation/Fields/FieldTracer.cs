using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Propagation.Fields;

/// <summary>The path loss from one transmitter to every point of a grid, path by path.</summary>
public static class FieldTracer
{
    /// <summary>The path loss (dB) at every point. Rows are shared among threads; the values do not depend on how many there are.</summary>
    /// <param name="model">The model, made up for the building and the frequency.</param>
    /// <param name="transmitter">Where the transmitter is.</param>
    /// <param name="grid">Where the receivers are.</param>
    /// <param name="cancellation">Ends the work early.</param>
    /// <param name="maximumThreads">Most threads to use; −1 leaves it to the machine.</param>
    /// <exception cref="OperationCanceledException">The work was ended early.</exception>
    public static Field PathLoss(
        IPathLossModel model, Position transmitter, FieldGrid grid, CancellationToken cancellation, int maximumThreads = -1)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(grid);

        var values = new float[grid.Count];
        var options = new ParallelOptions { CancellationToken = cancellation, MaxDegreeOfParallelism = maximumThreads };
        Parallel.For(0, grid.Rows, options, row =>
        {
            Span<float> line = values.AsSpan(row * grid.Columns, grid.Columns);
            for (int column = 0; column < line.Length; column++)
                line[column] = (float)model.TotalBetween(transmitter, grid.At(column, row)).Value;
        });
        return new Field(grid, values);
    }
}
