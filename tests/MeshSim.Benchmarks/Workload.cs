using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation;
using MeshSim.Propagation.Fields;
using MeshSim.Quantities;

namespace MeshSim.Benchmarks;

/// <summary>All transmitters of a generated building to all receivers of all its storeys.</summary>
public sealed class Workload
{
    private const double ReceiverHeightMetres = 1.1, PathLossExponent = 2;

    private readonly PathLossFields[] fields;
    private readonly float[][] outputs;
    private readonly WallBruteForceKernel bruteForce;

    public Workload(BuildingSize size, bool isAngled, ModelName model = ModelName.Detour, int most = 2)
    {
        (IsAngled, Name) = (isAngled, ModelNames.Of(model));
        Building = new(size, isAngled);
        double? detourDb = model == ModelName.Detour ? Detour.UsualDb : null;
        Model = new(Building.Plan, Building.Constructions, new Frequency(2440), PathLossExponent, detourDb);
        Grids = [.. Building.Plan.Storeys.Select(storey => FieldGrid.Over(Building.Plan, storey.Name, size.GridStepMetres, ReceiverHeightMetres))];
        fields = [.. Grids.Select(Model.FieldsOver)];
        outputs = [.. Enumerable.Range(0, most).Select(_ => new float[Grids.Max(grid => grid.Count)])];
        var random = new Random(2);
        Devices = [.. Enumerable.Range(0, DeviceCountOf(size)).Select(_ => Building.Plan.PositionOf(
            Building.Plan.Storeys[random.Next(size.Storeys)].Name,
            PlanPoint.FromMetres(random.NextDouble() * size.WidthMetres, random.NextDouble() * size.DepthMetres),
            GeneratedBuilding.HeightsMetres[random.Next(GeneratedBuilding.HeightsMetres.Length)]))];
        bruteForce = new(Building.Plan, Building.Constructions, Grids[0]);
    }

    /// <summary>Of the model.</summary>
    public string Name { get; }

    /// <summary>Whether losses depend on the angle.</summary>
    public bool IsAngled { get; }

    public GeneratedBuilding Building { get; }

    public LogDistance Model { get; }

    public FieldGrid[] Grids { get; }

    /// <summary>Link evaluations of one run.</summary>
    public long Links => Building.Transmitters.Length * Grids.Sum(grid => (long)grid.Count);

    /// <summary>Places whose pairs are asked for.</summary>
    public Position[] Devices { get; }

    /// <summary>Pairs of devices.</summary>
    public long Pairs => (long)Devices.Length * (Devices.Length - 1) / 2;

    public int Walls => Building.Plan.Storeys.Sum(storey => storey.Walls.Length);

    /// <summary>Every field of every transmitter; a thread takes one field after the other.</summary>
    public void Kernel(int threads)
    {
        int count = Building.Transmitters.Length * fields.Length, next = -1;
        if (threads == 1) TakeFields(0);
        else Parallel.For(0, threads, new ParallelOptions { MaxDegreeOfParallelism = threads }, TakeFields);

        void TakeFields(int thread)
        {
            for (int i = Interlocked.Increment(ref next); i < count; i = Interlocked.Increment(ref next))
            {
                PathLossFields grid = fields[i % fields.Length];
                grid.PathLoss(Building.Transmitters[i / fields.Length], outputs[thread].AsSpan(0, grid.Grid.Count));
            }
        }
    }

    /// <summary>All pairs of devices.</summary>
    public void PairTotals(int threads) => Model.TotalsAmong(Devices, CancellationToken.None, threads);

    /// <summary>Path by path from every stride-th device to all later ones. Returns its links.</summary>
    public long TracerPairs(int stride)
    {
        long links = 0;
        double sum = 0;
        for (int from = 0; from < Devices.Length; from += stride)
        {
            for (int to = from + 1; to < Devices.Length; to++, links++) sum += Model.TotalBetween(Devices[from], Devices[to]).Value;
        }

        outputs[0][0] = (float)sum;
        return links;
    }

    private static int DeviceCountOf(BuildingSize size) => size.Name switch { "S" => 60, "M" => 400, _ => 2000 };

    /// <summary>All transmitters one after the other, the rows of each field shared among threads.</summary>
    public void KernelByRows(int threads)
    {
        foreach (Position transmitter in Building.Transmitters)
            foreach (PathLossFields grid in fields) grid.PathLoss(transmitter, outputs[0].AsMemory(0, grid.Grid.Count), CancellationToken.None, threads);
    }

    /// <summary>Writes as much output as <see cref="Kernel"/> with one thread, and nothing else: the limit of the memory.</summary>
    public void WriteAlone()
    {
        foreach (Position transmitter in Building.Transmitters)
            foreach (FieldGrid grid in Grids) outputs[0].AsSpan(0, grid.Count).Fill(transmitter.Z);
    }

    /// <summary>Path by path on every stride-th row and column of the first grid, from the first transmitters. Returns its links.</summary>
    public long Tracer(int stride, int transmitters)
    {
        long links = 0;
        double sum = 0;
        FieldGrid grid = Grids[0];
        foreach (Position transmitter in Building.Transmitters.Take(transmitters))
        {
            for (int row = 0; row < grid.Rows; row += stride)
            {
                for (int column = 0; column < grid.Columns; column += stride, links++)
                    sum += Model.TotalBetween(transmitter, grid.At(column, row)).Value;
            }
        }

        outputs[0][0] = (float)sum;
        return links;
    }

    /// <summary>Eight points at a time against every wall, rows of the first grid. Returns its links.</summary>
    public long BruteForce(int stride, int transmitters)
    {
        long links = 0;
        foreach (Position transmitter in Building.Transmitters.Take(transmitters))
        {
            for (int row = 0; row < Grids[0].Rows; row += stride)
            {
                bruteForce.SumRow(transmitter, row, outputs[0]);
                links += Grids[0].Columns;
            }
        }

        return links;
    }
}
