namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>
/// How one storey's layers divide the paths from a transmitter's height to a grid's. A path meets a height at a fixed share of
/// its length, so the shadow of a layer is what lies between its walls enlarged by two factors about the transmitter. Cut 0 is
/// the wall itself; run i lies between cut i and the next, the last run reaches to infinity.
/// </summary>
internal sealed class HeightCuts
{
    private readonly List<Scale> scales = [];
    private readonly List<int> layers = [];

    /// <summary>Number of cuts, and of runs.</summary>
    public int Count => scales.Count;

    /// <summary>The layer that holds the grid's height: what a point exactly in a wall is in. −1 when none does.</summary>
    public int LayerOfGrid { get; private set; }

    /// <summary>The layer that holds the transmitter's height, or −1.</summary>
    public int LayerOfTransmitter { get; private set; }

    /// <summary>Whether a point exactly on the border between two runs belongs to the run nearer to the transmitter.</summary>
    public bool IsNearOwned { get; private set; }

    /// <summary>Whether any path meets the storey.</summary>
    public bool IsEmpty => LayerOfGrid < 0 && LayerOfTransmitter < 0 && layers.TrueForAll(static layer => layer < 0);

    /// <summary>By how much the walls are enlarged at a cut.</summary>
    public Scale ScaleAt(int cut) => scales[cut];

    /// <summary>The layer in a run, or −1.</summary>
    public int LayerOf(int run) => layers[run];

    /// <summary>Works it out for one pair of heights.</summary>
    public void Set(WallFacets facets, int transmitterZ, int gridZ)
    {
        scales.Clear();
        layers.Clear();
        scales.Add(Scale.One);
        (LayerOfGrid, LayerOfTransmitter) = (facets.LayerAt(gridZ), facets.LayerAt(transmitterZ));
        int[] levels = facets.Levels;
        int rise = gridZ - transmitterZ;

        // Heights fall into the layer whose lower level they reach, so a point on a border lies in the upper layer.
        IsNearOwned = rise > 0;
        if (rise > 0)
        {
            for (int j = levels.Length - 1; j >= 0; j--)
            {
                if (levels[j] >= gridZ || levels[j] <= transmitterZ) continue;
                AddCut(j, rise, levels[j] - transmitterZ, layerBefore: j);
            }
        }
        else if (rise < 0)
        {
            for (int j = 0; j < levels.Length; j++)
            {
                if (levels[j] <= gridZ || levels[j] >= transmitterZ) continue;
                AddCut(j, -rise, transmitterZ - levels[j], layerBefore: j - 1);
            }
        }

        // The last run is that next to the transmitter, on the grid's side.
        layers.Add(rise < 0 ? facets.LayerAt(transmitterZ - 1) : LayerOfTransmitter);

        void AddCut(int level, int numerator, int denominator, int layerBefore)
        {
            bool isOutside = layerBefore < 0 || layerBefore >= levels.Length - 1;
            layers.Add(isOutside ? -1 : layerBefore);
            scales.Add(new(numerator, denominator));
        }
    }
}
