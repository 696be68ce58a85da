using System.Numerics;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;

namespace MeshSim.Propagation.Pairs;

/// <summary>
/// Adds up what the walls of one storey cost the paths from one place to the places after it, from left to right on the plan.
/// The workspace of one thread.
/// </summary>
internal sealed class StoreySweep
{
    private readonly StackTable stacks;
    private readonly LossCurve[] curves;
    private readonly Position[] places;
    private readonly int[] layers, scratch;
    private readonly TargetGroups targets;
    private readonly DirectionKernel directions;
    private readonly CrossingKernel kernel;

    /// <summary>Makes a workspace.</summary>
    /// <param name="stacks">The storey's walls.</param>
    /// <param name="curves">By construction index.</param>
    /// <param name="places">All places, from left to right.</param>
    /// <param name="layers">The layer of each.</param>
    public StoreySweep(StackTable stacks, LossCurve[] curves, Position[] places, int[] layers)
    {
        (this.stacks, this.curves, this.places, this.layers) = (stacks, curves, places, layers);
        scratch = new int[places.Length];
        targets = new(places.Length);
        directions = new(stacks.Count);
        kernel = new(places.Length);
    }

    /// <summary>Prepares for places from x on.</summary>
    public void StartAt(int x) => directions.Load(stacks, x);

    /// <summary>Adds to the losses of the paths from a place to all later ones, dB, by place.</summary>
    public void AddFrom(int from, double[] lossesDb)
    {
        // Between two heights in one layer every point of the path is in it, and a crossed stack costs what it costs there.
        if (layers[from] >= 0) AddWhere(isLevel: true, from, lossesDb);
        AddWhere(isLevel: false, from, lossesDb);
    }

    private void AddWhere(bool isLevel, int from, double[] lossesDb)
    {
        targets.Clear();
        Position place = places[from];
        for (int to = from + 1; to < places.Length; to++)
        {
            bool isInLayer = layers[from] >= 0 && layers[to] == layers[from];
            if (isInLayer != isLevel || places[to].Plan == place.Plan) continue;
            if (isLevel || !stacks.Walls.IsClearBetween(Math.Min(place.Z, places[to].Z), Math.Max(place.Z, places[to].Z)))
                targets.Add(to, place.Plan, places[to].Plan);
        }

        if (targets.Count == 0) return;
        targets.Sort(scratch);
        LoadPaths(place.Plan, lossesDb);
        directions.Find(place.Plan, targets);
        for (int i = 0; i < directions.Count; i++)
        {
            int stack = directions.Found[i];
            SeenStack seen = stacks.SeenFrom(place.Plan, stack);
            double lossDb = isLevel ? stacks.LossDb(stack, layers[from]) : double.NaN;
            if (double.IsNaN(lossDb)) AddByPath(from, isLevel, stack, seen, directions.FirstGroups[i], directions.LastGroups[i]);
            else if (lossDb != 0) AddKnown(from, stack, seen, lossDb, directions.FirstGroups[i], directions.LastGroups[i]);
        }

        for (int i = 0; i < targets.Count; i++) lossesDb[targets.Targets[i]] = kernel.LossesDb[i];
    }

    private void LoadPaths(PlanPoint place, double[] lossesDb)
    {
        for (int i = 0; i < targets.Count; i++)
        {
            int to = targets.Targets[i];
            (kernel.Dx[i], kernel.Dy[i]) = (places[to].Plan.X - place.X, places[to].Plan.Y - place.Y);
            kernel.LossesDb[i] = lossesDb[to];
        }

        int padding = -targets.Count & (CrossingKernel.Lanes - 1);
        kernel.Dx.AsSpan(targets.Count, padding).Clear();
        kernel.Dy.AsSpan(targets.Count, padding).Clear();
    }

    private void AddKnown(int from, int stack, in SeenStack seen, double lossDb, int first, int last)
    {
        for (int next = first; next <= last; next++)
        {
            (next, uint ties) = kernel.AddWhereCrossed(next, last, seen, lossDb);
            for (uint left = ties; left != 0; left &= left - 1)
                AddExactly(from, (next * CrossingKernel.Lanes) + BitOperations.TrailingZeroCount(left), stack);
        }
    }

    private void AddByPath(int from, bool isLevel, int stack, in SeenStack seen, int first, int last)
    {
        for (int next = first; next <= last; next++)
        {
            (next, uint crossed, uint ties) = kernel.FindCrossed(next, last, seen);
            int index = next * CrossingKernel.Lanes;
            for (uint left = crossed; left != 0; left &= left - 1)
                AddCrossed(from, isLevel, index + BitOperations.TrailingZeroCount(left), stack, seen);
            for (uint left = ties; left != 0; left &= left - 1)
                AddExactly(from, index + BitOperations.TrailingZeroCount(left), stack);
        }
    }

    private void AddCrossed(int from, bool isLevel, int index, int stack, in SeenStack seen)
    {
        var path = new TracedPath(places[from], places[targets.Targets[index]]);
        int? layer = isLevel ? layers[from] : stacks.LayerAt(path.From.Z + (seen.ShareOf(path.Dx, path.Dy) * path.Dz));
        if (layer is { } sure) kernel.LossesDb[index] += stacks.LossDb(stack, sure, path);
        else AddExactly(from, index, stack);
    }

    private void AddExactly(int from, int index, int stack)
    {
        // The last group is padded with paths of no length.
        if (index >= targets.Count) return;
        var sum = new LossSum(curves) { OthersDb = kernel.LossesDb[index] };
        stacks.Visit(new TracedPath(places[from], places[targets.Targets[index]]), stack, ref sum);
        kernel.LossesDb[index] = sum.OthersDb;
    }
}
