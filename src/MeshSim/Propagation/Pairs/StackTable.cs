using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;

namespace MeshSim.Propagation.Pairs;

/// <summary>
/// The panel stacks of one storey's walls in arrays, with what each costs in each layer of heights. A layer lies between two
/// neighbouring heights at which any panel begins or ends.
/// </summary>
internal sealed class StackTable
{
    // Heights are rounded far less than this, lattice steps.
    private const double SpareSteps = 1;

    private readonly PanelStack[] stacks;
    private readonly int[] levels;
    private readonly (double X, double Y)[] normals;

    // By stack, then by layer: null where there is no panel.
    private readonly LossCurve?[] curves;

    // The same, dB; not-a-number where the loss depends on the angle, 0 where there is no panel.
    private readonly double[] lossesDb;

    public StackTable(WallCrossings walls, LossCurve[] curvesOfConstructions)
    {
        Walls = walls;
        stacks = [.. walls.Stacks().Where(stack => walls.EndsOf(stack).Start != walls.EndsOf(stack).End)];
        normals = [.. stacks.Select(walls.NormalOf)];
        (PlanPoint Start, PlanPoint End)[] ends = [.. stacks.Select(walls.EndsOf)];
        (StartX, StartY) = ([.. ends.Select(pair => pair.Start.X)], [.. ends.Select(pair => pair.Start.Y)]);
        (EndX, EndY) = ([.. ends.Select(pair => pair.End.X)], [.. ends.Select(pair => pair.End.Y)]);
        levels = [.. stacks.SelectMany(walls.PanelsOf).SelectMany(panel => new[] { panel.Low, panel.High }).Distinct().Order()];
        Layers = Math.Max(0, levels.Length - 1);
        curves = new LossCurve?[stacks.Length * Layers];
        for (int i = 0; i < stacks.Length; i++)
        {
            foreach ((int low, int high, int construction) in walls.PanelsOf(stacks[i]))
            {
                for (int layer = 0; layer < Layers; layer++)
                    if (low <= levels[layer] && levels[layer] < high) curves[(i * Layers) + layer] = curvesOfConstructions[construction];
            }
        }

        lossesDb = [.. curves.Select(curve => curve is null ? 0 : curve.IsConstant ? curve.At(1).Value : double.NaN)];
    }

    /// <summary>The walls they were cut from.</summary>
    public WallCrossings Walls { get; }

    /// <summary>Number of stacks.</summary>
    public int Count => stacks.Length;

    /// <summary>Number of layers.</summary>
    public int Layers { get; }

    /// <summary>Where the stacks start, x.</summary>
    public int[] StartX { get; }

    /// <summary>Where the stacks start, y.</summary>
    public int[] StartY { get; }

    /// <summary>Where the stacks end, x.</summary>
    public int[] EndX { get; }

    /// <summary>Where the stacks end, y.</summary>
    public int[] EndY { get; }

    /// <summary>The layer that holds a height, or −1.</summary>
    public int LayerAt(int z)
    {
        int layer = levels.Length - 1;
        while (layer >= 0 && levels[layer] > z) layer--;
        return layer == levels.Length - 1 ? -1 : layer;
    }

    /// <summary>
    /// The layer that holds a rounded height: −1 when none does, null when a border of layers is so near that rounding might decide.
    /// </summary>
    public int? LayerAt(double z)
    {
        int layer = -1;
        foreach (int level in levels)
        {
            if (Math.Abs(z - level) <= SpareSteps) return null;
            if (level > z) return layer;
            layer++;
        }

        return -1;
    }

    /// <summary>The loss of a stack in a layer, dB: 0 where it has no panel, not-a-number where it depends on the angle.</summary>
    public double LossDb(int stack, int layer) => lossesDb[(stack * Layers) + layer];

    /// <summary>The loss of a stack in a layer to a path that properly crosses it there, dB: in the words of the tracer.</summary>
    /// <param name="stack">The stack.</param>
    /// <param name="layer">The layer, or −1 for none.</param>
    /// <param name="path">The path.</param>
    public double LossDb(int stack, int layer, in TracedPath path)
    {
        if (layer < 0) return 0;
        double knownDb = LossDb(stack, layer);
        return double.IsNaN(knownDb) ? curves[(stack * Layers) + layer]!.At(path.CosineTo(normals[stack].X, normals[stack].Y)).Value : knownDb;
    }

    /// <summary>A stack as seen from a place.</summary>
    public SeenStack SeenFrom(PlanPoint place, int stack)
    {
        double ax = StartX[stack] - place.X, ay = StartY[stack] - place.Y, bx = EndX[stack] - place.X, by = EndY[stack] - place.Y;
        double area = (ax * by) - (ay * bx);

        // In line with the stack a place is met by paths in all directions where it lies on it, and by none beyond its ends.
        if (area == 0) return new(0, 0, 0, 0, (ax * bx) + (ay * by) > 0 ? 1 : 0);
        double sign = area > 0 ? 1 : -1;
        return new(sign * ax, sign * ay, sign * bx, sign * by, sign * area);
    }

    /// <summary>Asks the tracer's question.</summary>
    public void Visit(in TracedPath path, int stack, ref LossSum sum) => Walls.Visit(path, stacks[stack], ref sum);
}
