using System.Collections.Immutable;
using MeshSim.Quantities;

namespace MeshSim.Placement;

/// <summary>
/// How much some outlets cover, and what keeps them from covering more. Patches of floor are end devices of their own, so that
/// everything about reaching holds for them too.
/// </summary>
internal sealed class CoverageProblem
{
    private readonly ImmutableArray<FloorPatch> patches;
    private readonly NodeSet absent;
    private readonly CutFinder finder;
    private readonly CriticalRelays critical;
    private readonly UsefulOutlets useful;
    private readonly ImmutableArray<int> devices;

    /// <summary>Puts devices and floor together.</summary>
    /// <param name="everyday">The devices.</param>
    /// <param name="patches">The floor.</param>
    public CoverageProblem(Situation everyday, ImmutableArray<FloorPatch> patches)
    {
        this.patches = patches;
        RepeaterProblem bare = everyday.Problem;
        DeviceCount = bare.DeviceCount;
        Graph = WithFloor(bare, patches).LinksAtLeast(bare.DesignMargin);
        absent = new(Graph.Problem.NodeCount);
        foreach (int node in everyday.WithoutPower) absent.Add(node < DeviceCount ? node : node + patches.Length);
        devices = [.. everyday.Devices];
        finder = new(Graph);
        critical = new(Graph);
        useful = new(Graph, absent);
    }

    /// <summary>The links that count. Nodes: devices, patches, outlets.</summary>
    public ReachGraph Graph { get; }

    /// <summary>Number of devices; the patches follow them.</summary>
    public int DeviceCount { get; }

    /// <summary>Everything that could count: a device reached, a device with two ways, a patch reached.</summary>
    public ImmutableArray<CoverageItem> Items() =>
    [
        .. devices.Select(device => new CoverageItem(CoverageKind.Reached, device, 1)),
        .. devices.Select(device => new CoverageItem(CoverageKind.TwoWays, device, 1)),
        .. patches.Select((patch, i) => new CoverageItem(CoverageKind.Patch, DeviceCount + i, patch.Points)),
    ];

    /// <summary>What some outlets cover.</summary>
    public HashSet<CoverageItem> Covered(IEnumerable<int> outlets, IReadOnlyCollection<CoverageItem> items)
    {
        NodeSet present = Graph.Chosen(outlets).Without(absent);
        critical.Find(present);
        Dictionary<int, int[]> without = [];
        return [.. items.Where(item => critical.Hops[item.Node] <= Graph.Problem.HopLimit && (item.Kind != CoverageKind.TwoWays || HasTwo(item.Node)))];

        bool HasTwo(int node) => critical.On(node).All(lost => HopsWithout(lost)[node] <= Graph.Problem.HopLimit);

        int[] HopsWithout(int lost)
        {
            if (without.TryGetValue(lost, out int[]? known)) return known;
            NodeSet rest = present.Copy();
            rest.Remove(lost);
            int[] hops = new int[Graph.Problem.NodeCount];
            Graph.CountHops(Graph.Problem.Coordinator, rest, hops);
            return without[lost] = hops;
        }
    }

    /// <summary>Adds up what is covered.</summary>
    public static Coverage Sum(IEnumerable<CoverageItem> items)
    {
        ILookup<CoverageKind, int> points = items.ToLookup(item => item.Kind, item => item.Points);
        return new(points[CoverageKind.Reached].Sum(), points[CoverageKind.TwoWays].Sum(), points[CoverageKind.Patch].Sum());
    }

    /// <summary>
    /// Why some outlets do not cover an item: cuts of which at least one outlet, or two where one may be lost, would have to be chosen.
    /// </summary>
    public IEnumerable<Cut> CutsMissedBy(IEnumerable<int> outlets, CoverageItem item)
    {
        NodeSet present = Graph.Chosen(outlets).Without(absent);
        int[] hops = new int[Graph.Problem.NodeCount];
        Graph.CountHops(Graph.Problem.Coordinator, present, hops);
        (int[] byDevice, int[] fromCoordinator) = useful.To(item.Node);
        int need = item.Kind == CoverageKind.TwoWays ? Survivals.Need : 1;
        if (hops[item.Node] > Graph.Problem.HopLimit)
        {
            foreach (int[] order in new[] { byDevice, fromCoordinator })
                foreach (int[] cut in finder.Disjoint(item.Node, present.Copy(), order)) yield return new(cut, need, []);
            yield break;
        }

        critical.Find(present);
        foreach (int lost in critical.On(item.Node).ToList())
        {
            NodeSet rest = present.Copy();
            rest.Remove(lost);
            int outlet = lost - Graph.Problem.DeviceCount;
            int[] order = Array.FindAll(byDevice, other => other != outlet);
            if (finder.Grow(item.Node, rest, order) is not { } cut) continue;
            yield return outlet < 0 ? Cut.One(cut) : new([.. cut.Append(outlet).Order()], need, []);
        }
    }

    private static RepeaterProblem WithFloor(RepeaterProblem bare, ImmutableArray<FloorPatch> patches)
    {
        int own = bare.DeviceCount, first = own + patches.Length;
        Decibels heard = bare.DesignMargin, unheard = new(double.NegativeInfinity);
        return new([.. bare.Relays, .. patches.Select(_ => false)], bare.Coordinator, bare.OutletCount, bare.HopLimit, bare.DesignMargin, Margin);

        Decibels Margin(int a, int b)
        {
            (int low, int high) = (Math.Min(a, b), Math.Max(a, b));
            if (IsPatch(low)) return patches[low - own].Heard[Old(high)] ? heard : unheard;
            if (IsPatch(high)) return patches[high - own].Heard[Old(low)] ? heard : unheard;
            return bare.Margin(Old(low), Old(high));
        }

        bool IsPatch(int node) => node >= own && node < first;

        int Old(int node) => node < own ? node : node - patches.Length;
    }
}

/// <summary>What can be covered.</summary>
internal enum CoverageKind
{
    /// <summary>A device is reached.</summary>
    Reached,

    /// <summary>A device is reached whichever router or repeater is off.</summary>
    TwoWays,

    /// <summary>A patch of floor is reached.</summary>
    Patch,
}

/// <summary>Something that is covered or not.</summary>
/// <param name="Kind">What is asked.</param>
/// <param name="Node">Of which node.</param>
/// <param name="Points">What it counts for.</param>
internal readonly record struct CoverageItem(CoverageKind Kind, int Node, int Points);
