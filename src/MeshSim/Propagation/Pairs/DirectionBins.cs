using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Propagation.Pairs;

/// <summary>
/// The stacks of one storey and the other ends of paths, sorted by direction as seen from one place. An end lies in one bin; a
/// stack in every bin that a path which meets it may lie in, and some more.
/// </summary>
internal sealed class DirectionBins
{
    private const int FewestBins = 8, MostBins = 256, Quadrants = 4;

    // Directions are rounded in single precision, bins are far wider; a stack that covers nearly half of all directions is put
    // into all bins, because rounding could turn it around.
    private const float SpareBins = 0.01f, LargestSpan = 1.99f;

    private readonly StackTable stacks;
    private readonly float[] directions;
    private readonly int[] firstBins, binCounts, endsOfBins, stacksOfBins, binOfEnd, ends;
    private int[] sortedStacks = new int[256];

    public DirectionBins(StackTable stacks, int endCount)
    {
        this.stacks = stacks;
        Count = FewestBins;
        while (Count < MostBins && (long)Count * Count < 2L * stacks.Count) Count *= 2;
        (firstBins, binCounts, Areas) = (new int[stacks.Count], new int[stacks.Count], new float[stacks.Count]);
        directions = new float[stacks.CornerX.Length];
        (endsOfBins, stacksOfBins) = (new int[Count + 1], new int[Count + 1]);
        (binOfEnd, ends) = (new int[endCount], new int[endCount]);
    }

    /// <summary>Number of bins.</summary>
    public int Count { get; }

    /// <summary>From where.</summary>
    public PlanPoint Place { get; private set; }

    /// <summary>Twice the signed area of the place and each stack, rounded; 0 only when it is 0.</summary>
    public float[] Areas { get; }

    /// <summary>The farthest coordinate of any stack from the place, lattice steps.</summary>
    public float FarthestSteps { get; private set; }

    /// <summary>The ends in a bin, by index.</summary>
    public ReadOnlySpan<int> EndsIn(int bin) => ends.AsSpan(endsOfBins[bin]..endsOfBins[bin + 1]);

    /// <summary>The stacks in a bin, in their order.</summary>
    public ReadOnlySpan<int> StacksIn(int bin) => sortedStacks.AsSpan(stacksOfBins[bin]..stacksOfBins[bin + 1]);

    /// <summary>Sorts the places after one. Those on the same plumb line cross no wall and lie in no bin.</summary>
    public void SortEnds(Position[] places, int from)
    {
        PlanPoint place = places[from].Plan;
        Array.Clear(endsOfBins);
        for (int to = from + 1; to < places.Length; to++)
        {
            PlanPoint end = places[to].Plan;
            binOfEnd[to] = end == place ? -1 : Math.Min((int)(Direction(end.X - place.X, end.Y - place.Y) * Count / Quadrants), Count - 1);
            if (binOfEnd[to] >= 0) endsOfBins[binOfEnd[to]]++;
        }

        ToEndsOfRuns(endsOfBins);
        for (int to = places.Length - 1; to > from; to--)
            if (binOfEnd[to] >= 0) ends[--endsOfBins[binOfEnd[to]]] = to;
    }

    /// <summary>Sorts the stacks.</summary>
    public void SortStacks(PlanPoint place)
    {
        Place = place;
        FindDirections();
        Array.Clear(stacksOfBins);
        for (int stack = 0; stack < stacks.Count; stack++)
        {
            FindBins(stack);
            for (int i = 0, bin = firstBins[stack]; i < binCounts[stack]; i++, bin = bin + 1 == Count ? 0 : bin + 1) stacksOfBins[bin]++;
        }

        ToEndsOfRuns(stacksOfBins);
        if (sortedStacks.Length < stacksOfBins[^1]) Array.Resize(ref sortedStacks, 2 * stacksOfBins[^1]);
        for (int stack = stacks.Count - 1; stack >= 0; stack--)
        {
            for (int i = 0, bin = firstBins[stack]; i < binCounts[stack]; i++, bin = bin + 1 == Count ? 0 : bin + 1)
                sortedStacks[--stacksOfBins[bin]] = stack;
        }
    }

    private void FindDirections()
    {
        (int[] xs, int[] ys) = (stacks.CornerX, stacks.CornerY);
        int farthest = 0;
        for (int corner = 0; corner < directions.Length; corner++)
        {
            int dx = xs[corner] - Place.X, dy = ys[corner] - Place.Y;
            farthest = Math.Max(farthest, Math.Max(Math.Abs(dx), Math.Abs(dy)));
            directions[corner] = Direction(dx, dy);
        }

        FarthestSteps = farthest;
    }

    private void FindBins(int stack)
    {
        int ax = stacks.StartX[stack] - Place.X, ay = stacks.StartY[stack] - Place.Y, bx = stacks.EndX[stack] - Place.X, by = stacks.EndY[stack] - Place.Y;
        long area = ((long)ax * by) - ((long)ay * bx);
        Areas[stack] = area;
        if (area == 0)
        {
            // In line with the stack: paths meet it only when the place is on it, and then in all directions.
            binCounts[stack] = ((long)ax * bx) + ((long)ay * by) > 0 ? 0 : Count;
            firstBins[stack] = 0;
            return;
        }

        (int start, int end) = stacks.Corners[stack];
        float atStart = directions[start], atEnd = directions[end], low = Math.Min(atStart, atEnd), span = Math.Abs(atStart - atEnd);
        if (span > Quadrants / 2) (low, span) = (Math.Max(atStart, atEnd), Quadrants - span);
        if (span > LargestSpan)
        {
            (firstBins[stack], binCounts[stack]) = (0, Count);
            return;
        }

        float perQuadrant = Count / Quadrants;
        int first = (int)MathF.Floor((low * perQuadrant) - SpareBins), last = (int)MathF.Floor(((low + span) * perQuadrant) + SpareBins);
        (firstBins[stack], binCounts[stack]) = ((first + Count) % Count, Math.Min(Count, last - first + 1));
    }

    // From counts to where each run ends; filling from the back turns that into where it starts.
    private static void ToEndsOfRuns(int[] counts)
    {
        for (int i = 1; i < counts.Length; i++) counts[i] += counts[i - 1];
    }

    // Grows with the angle from 0 at straight down to 4 after a full turn.
    private static float Direction(float dx, float dy)
    {
        float along = dy / (Math.Abs(dx) + Math.Abs(dy));
        float turned = dx >= 0 ? along : -along;
        return turned + (dx >= 0 ? 1 : 3);
    }
}
