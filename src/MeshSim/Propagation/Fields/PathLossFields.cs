using System.Collections.Concurrent;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation.Fields.Shadows;

namespace MeshSim.Propagation.Fields;

/// <summary>
/// The path loss from any transmitter to every point of one grid, a whole storey at once. Prepared once for a building, its
/// losses and a grid, then asked for any number of transmitters from any number of threads.
/// </summary>
/// <remarks>
/// It gives what the path-by-path model gives: the same decisions in the same whole numbers, losses that depend on the angle
/// within <see cref="AngleStepDb"/> / 2 for each crossing, all others within <see cref="RoundingDb"/>. A grid point exactly on
/// a wall gets half of its loss.
/// </remarks>
public sealed class PathLossFields
{
    private readonly ShadowScene scene;
    private readonly ConcurrentBag<ShadowWorkspace> idle = [];

    /// <summary>Prepares a building and a grid.</summary>
    /// <param name="plan">The building.</param>
    /// <param name="physics">What paths cost.</param>
    /// <param name="grid">Where the receivers are.</param>
    /// <exception cref="ArgumentException">The tracer does not accept the building.</exception>
    public PathLossFields(FloorPlan plan, FieldPhysics physics, FieldGrid grid)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(physics);
        ArgumentNullException.ThrowIfNull(grid);

        Grid = grid;
        scene = new(plan, physics, grid);
    }

    /// <summary>Most by which a loss changes with the angle within one entry of its table, dB.</summary>
    public static double AngleStepDb => LossTable.StepDb;

    /// <summary>Where the receivers are.</summary>
    public FieldGrid Grid { get; }

    /// <summary>Largest error of a crossing whose loss does not depend on the angle, dB: half the unit of the sum.</summary>
    public double RoundingDb => 0.5 / scene.Channels.UnitsPerDecibel;

    /// <summary>The path loss (dB) at every point.</summary>
    /// <param name="transmitter">Where the transmitter is.</param>
    public Field PathLoss(Position transmitter)
    {
        var values = new float[Grid.Count];
        PathLoss(transmitter, values);
        return new(Grid, values);
    }

    /// <summary>
    /// Writes the path loss (dB) at every point, row by row. Allocates nothing once its workspaces have grown to their size.
    /// </summary>
    /// <param name="transmitter">Where the transmitter is.</param>
    /// <param name="lossesDb">As many as the grid has points.</param>
    /// <exception cref="ArgumentException">The buffer has another size.</exception>
    public void PathLoss(Position transmitter, Span<float> lossesDb)
    {
        if (lossesDb.Length != Grid.Count) throw new ArgumentException($"must have {Grid.Count} values", nameof(lossesDb));

        var taker = new RowCopier(lossesDb, Grid.Columns);
        Sum(transmitter, ref taker);
    }

    /// <summary>Writes the path loss (dB) at every point with several threads, each a band of rows. The same bytes as with one.</summary>
    /// <param name="transmitter">Where the transmitter is.</param>
    /// <param name="lossesDb">As many as the grid has points.</param>
    /// <param name="cancellation">Ends the work early.</param>
    /// <param name="maximumThreads">Most threads to use; −1 leaves it to the machine.</param>
    /// <exception cref="ArgumentException">The buffer has another size.</exception>
    /// <exception cref="OperationCanceledException">The work was ended early.</exception>
    public void PathLoss(Position transmitter, Memory<float> lossesDb, CancellationToken cancellation, int maximumThreads = -1)
    {
        if (lossesDb.Length != Grid.Count) throw new ArgumentException($"must have {Grid.Count} values", nameof(lossesDb));

        var options = new ParallelOptions { CancellationToken = cancellation, MaxDegreeOfParallelism = maximumThreads };
        int bands = maximumThreads > 0 ? maximumThreads : Environment.ProcessorCount;
        ShadowWorkspace cast = TakeWorkspace();
        cast.Cast(transmitter);
        Parallel.For(0, bands, options, band =>
        {
            ShadowWorkspace workspace = TakeWorkspace();
            var taker = new RowCopier(lossesDb.Span, Grid.Columns);
            workspace.SumBand(cast, band, bands, ref taker);
            idle.Add(workspace);
        });
        idle.Add(cast);
    }

    /// <summary>The best of many transmitters at every point, without a field for each.</summary>
    /// <param name="servers">The transmitters and what each has to spend.</param>
    /// <param name="enough">The level that counts as served, in the unit of the levels.</param>
    /// <param name="cancellation">Ends the work early.</param>
    /// <param name="maximumThreads">Most threads to use; −1 leaves it to the machine. The values do not depend on it.</param>
    /// <exception cref="OperationCanceledException">The work was ended early.</exception>
    public ServiceField BestOf(IReadOnlyList<Server> servers, double enough, CancellationToken cancellation, int maximumThreads = -1)
    {
        ArgumentNullException.ThrowIfNull(servers);

        var service = new ServiceField(Grid);
        var gates = new Lock[ShadowLines.StripCount(Grid.Rows)];
        for (int i = 0; i < gates.Length; i++) gates[i] = new();
        var options = new ParallelOptions { CancellationToken = cancellation, MaxDegreeOfParallelism = maximumThreads };
        Parallel.For(0, servers.Count, options, index =>
        {
            var taker = new ServiceTaker(service, gates, index, servers[index].Level, enough);
            Sum(servers[index].Position, ref taker);
        });
        return service;
    }

    private void Sum<TTaker>(Position transmitter, ref TTaker taker)
        where TTaker : struct, IRowTaker, allows ref struct
    {
        ShadowWorkspace workspace = TakeWorkspace();
        workspace.Sum(transmitter, ref taker);
        idle.Add(workspace);
    }

    private ShadowWorkspace TakeWorkspace() => idle.TryTake(out ShadowWorkspace? workspace) ? workspace : new(scene);

    private readonly ref struct RowCopier(Span<float> values, int columns) : IRowTaker
    {
        private readonly Span<float> values = values;

        public void Take(int row, ReadOnlySpan<float> lossesDb) => lossesDb.CopyTo(values[(row * columns)..]);
    }

    // Which of two transmitters comes first does not matter to the larger, to the lower index among equals, or to a count.
    private readonly struct ServiceTaker(ServiceField service, Lock[] gates, int index, double level, double enough) : IRowTaker
    {
        public void Take(int row, ReadOnlySpan<float> lossesDb)
        {
            lock (gates[row / ShadowLines.StripRows])
                service.Offer(row, index, level, enough, lossesDb);
        }
    }
}
