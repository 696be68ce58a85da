using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;

namespace MeshSim.Propagation.Pairs;

/// <summary>The panel stacks of one storey's walls in arrays, with what each costs in each layer of heights.</summary>
internal sealed class StackTable
{
    private readonly PanelStack[] stacks;
    private readonly int[] levels;

    // By stack, then by layer; not-a-number where the loss depends on the angle, 0 where there is no panel.
    private readonly double[] lossesDb;

    public StackTable(WallCrossings walls, LossCurve[] curves)
    {
        Walls = walls;
        stacks = [.. walls.Stacks().Where(stack => walls.EndsOf(stack).Start != walls.EndsOf(stack).End)];
        (PlanPoint Start, PlanPoint End)[] ends = [.. stacks.Select(walls.EndsOf)];
        (StartX, StartY) = ([.. ends.Select(pair => pair.Start.X)], [.. ends.Select(pair => pair.Start.Y)]);
        (EndX, EndY) = ([.. ends.Select(pair => pair.End.X)], [.. ends.Select(pair => pair.End.Y)]);
        PlanPoint[] corners = [.. ends.SelectMany(pair => new[] { pair.Start, pair.End }).Distinct()];
        (CornerX, CornerY) = ([.. corners.Select(corner => corner.X)], [.. corners.Select(corner => corner.Y)]);
        Dictionary<PlanPoint, int> indexOf = corners.Select((corner, i) => (corner, i)).ToDictionary(pair => pair.corner, pair => pair.i);
        Corners = [.. ends.Select(pair => (indexOf[pair.Start], indexOf[pair.End]))];
        levels = [.. stacks.SelectMany(walls.PanelsOf).SelectMany(panel => new[] { panel.Low, panel.High }).Distinct().Order()];
        int layers = Math.Max(0, levels.Length - 1);
        lossesDb = new double[stacks.Length * layers];
        for (int i = 0; i < stacks.Length; i++)
        {
            foreach ((int low, int high, int construction) in walls.PanelsOf(stacks[i]))
            {
                double lossDb = curves[construction].IsConstant ? curves[construction].At(1).Value : double.NaN;
                for (int layer = 0; layer < layers; layer++)
                    if (low <= levels[layer] && levels[layer] < high) lossesDb[(i * layers) + layer] = lossDb;
            }
        }
    }

    /// <summary>The walls they were cut from.</summary>
    public WallCrossings Walls { get; }

    /// <summary>Number of stacks.</summary>
    public int Count => stacks.Length;

    /// <summary>Where the stacks start, x.</summary>
    public int[] StartX { get; }

    /// <summary>Where the stacks start, y.</summary>
    public int[] StartY { get; }

    /// <summary>Where the stacks end, x.</summary>
    public int[] EndX { get; }

    /// <summary>Where the stacks end, y.</summary>
    public int[] EndY { get; }

    /// <summary>The places where stacks end, each once, x.</summary>
    public int[] CornerX { get; }

    /// <summary>The places where stacks end, each once, y.</summary>
    public int[] CornerY { get; }

    /// <summary>At which corner each stack starts and at which it ends.</summary>
    public (int Start, int End)[] Corners { get; }

    /// <summary>The layer that holds a height, or −1.</summary>
    public int LayerAt(int z)
    {
        int layer = levels.Length - 1;
        while (layer >= 0 && levels[layer] > z) layer--;
        return layer == levels.Length - 1 ? -1 : layer;
    }

    /// <summary>The loss of a stack in a layer: 0 where it has no panel, not-a-number where it depends on the angle or outside all layers.</summary>
    public double LossDb(int stack, int layer) => layer < 0 ? double.NaN : lossesDb[(stack * (levels.Length - 1)) + layer];

    /// <summary>Asks the tracer's question.</summary>
    public void Visit(in TracedPath path, int stack, ref LossSum sum) => Walls.Visit(path, stacks[stack], ref sum);
}
