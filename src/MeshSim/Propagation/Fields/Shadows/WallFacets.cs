using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>
/// The walls of one storey cut at the jambs into facets, each from floor to ceiling, with what each height of it costs.
/// Facets refer to shared vertices, because shadow borders of facets that share an end cancel.
/// </summary>
internal sealed class WallFacets
{
    // By facet, then by layer.
    private readonly ChannelAmount[] amounts;
    private readonly int layers;

    public WallFacets(FloorPlan plan, Storey storey, Func<ConstructionName, int> indexOf, LossChannels channels)
    {
        // From low to high y, so that what one strip of rows needs lies together in memory.
        List<List<WallPanel>> stacks = [.. Stacks(plan, storey).OrderBy(stack => Math.Min(stack[0].Start.Y, stack[0].End.Y))];
        Levels = [.. stacks.SelectMany(stack => stack).SelectMany(panel => new[] { panel.Low, panel.High }).Distinct().Order()];
        layers = Math.Max(0, Levels.Length - 1);
        amounts = new ChannelAmount[stacks.Count * layers];
        IEnumerable<PlanPoint> ends = stacks.SelectMany(stack => new[] { stack[0].Start, stack[0].End });
        Vertices = [.. ends.Distinct().OrderBy(point => point.Y).ThenBy(point => point.X)];
        Dictionary<PlanPoint, int> vertexOf = Vertices.Select((point, i) => (point, i)).ToDictionary(pair => pair.point, pair => pair.i);
        (Starts, Ends) = (new int[stacks.Count], new int[stacks.Count]);
        for (int i = 0; i < stacks.Count; i++)
        {
            Starts[i] = vertexOf[stacks[i][0].Start];
            Ends[i] = vertexOf[stacks[i][0].End];
            SetProfile(stacks[i], amounts.AsSpan(i * layers, layers));
        }

        (IncidentFrom, Incident) = Incidence();
        HasAngles = Array.Exists(amounts, static amount => amount.Channel > 0);

        void SetProfile(List<WallPanel> stack, Span<ChannelAmount> profile)
        {
            foreach (WallPanel panel in stack)
            {
                ChannelAmount amount = channels.AmountOf(indexOf(panel.Construction), panel.Wall.Start, panel.Wall.End);
                for (int layer = 0; layer < profile.Length; layer++)
                    if (panel.Low <= Levels[layer] && Levels[layer] < panel.High) profile[layer] = amount;
            }
        }
    }

    /// <summary>All heights at which a panel begins or ends, lowest first. A layer lies from one, inclusive, to the next.</summary>
    public int[] Levels { get; }

    /// <summary>Places where facets end.</summary>
    public PlanPoint[] Vertices { get; }

    /// <summary>Vertex at which each facet starts.</summary>
    public int[] Starts { get; }

    /// <summary>Vertex at which each facet ends.</summary>
    public int[] Ends { get; }

    /// <summary>Where the facets of a vertex begin in <see cref="Incident"/>; one entry more than vertices.</summary>
    public int[] IncidentFrom { get; }

    /// <summary>Facets by vertex: 2 · facet, plus 1 where the facet ends there.</summary>
    public int[] Incident { get; }

    /// <summary>Number of facets.</summary>
    public int Count => Starts.Length;

    /// <summary>Whether any facet costs something that depends on the angle.</summary>
    public bool HasAngles { get; }

    /// <summary>What a facet costs in a layer; nothing in layer −1.</summary>
    public ChannelAmount Amount(int facet, int layer) => layer < 0 ? default : amounts[(facet * layers) + layer];

    /// <summary>The layer that holds a height, or −1.</summary>
    public int LayerAt(int z)
    {
        int layer = Levels.Length - 1;
        while (layer >= 0 && Levels[layer] > z) layer--;
        return layer == Levels.Length - 1 ? -1 : layer;
    }

    private static List<List<WallPanel>> Stacks(FloorPlan plan, Storey storey)
    {
        var stacks = new List<List<WallPanel>>();
        foreach (WallPanel panel in WallPanel.Of(plan, storey))
        {
            // A piece narrower than a lattice step has no extent, and nothing can cross it.
            if (panel.Start == panel.End) continue;
            bool isStacked = stacks.Count > 0 && stacks[^1][0] is var below
                && ReferenceEquals(below.Wall, panel.Wall) && below.Start == panel.Start && below.End == panel.End;
            if (isStacked) stacks[^1].Add(panel);
            else stacks.Add([panel]);
        }

        return stacks;
    }

    private (int[] From, int[] Incident) Incidence()
    {
        var from = new int[Vertices.Length + 1];
        for (int i = 0; i < Count; i++)
        {
            from[Starts[i] + 1]++;
            from[Ends[i] + 1]++;
        }

        for (int v = 0; v < Vertices.Length; v++) from[v + 1] += from[v];
        int[] next = [.. from];
        var incident = new int[2 * Count];
        for (int i = 0; i < Count; i++)
        {
            incident[next[Starts[i]]++] = 2 * i;
            incident[next[Ends[i]]++] = (2 * i) + 1;
        }

        return (from, incident);
    }
}
