using System.Runtime.InteropServices;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>A run of columns of one row whose paths meet a floor at an angle that changes from point to point.</summary>
/// <param name="First">First column.</param>
/// <param name="Last">Last column.</param>
/// <param name="Share">By what the floor's loss is multiplied.</param>
/// <param name="Table">Its loss.</param>
internal readonly record struct FloorRun(int First, int Last, float Share, LossTable Table);

/// <summary>A run of columns with a constant amount of channel 0.</summary>
internal readonly record struct AmountRun(int First, int Last, int Amount);

/// <summary>
/// The floor term of one row: how many floors a path meets decides by what their losses are multiplied, so the runs of all
/// floors are laid over one another.
/// </summary>
internal sealed class FloorTerm
{
    private readonly FloorShadow[] floors;
    private readonly LossTable?[] tables;
    private readonly double[] constantsDb;
    private readonly float[] shares;
    private readonly LossChannels channels;

    public FloorTerm(FloorShadow[] floors, Func<int, Materials.LossCurve> curveOf, Func<int, double> floorShare, LossChannels channels)
    {
        this.floors = floors;
        this.channels = channels;
        tables = [.. floors.Select(floor => curveOf(floor.Construction).IsConstant ? null : channels.TableOf(floor.Construction))];
        constantsDb = [.. floors.Select(floor => curveOf(floor.Construction) is { IsConstant: true } curve ? curve.At(1).Value : 0)];
        shares = [.. Enumerable.Range(0, floors.Length + 1).Select(met => met == 0 ? 0 : (float)floorShare(met))];
    }

    /// <summary>A floor that all paths from the transmitter meet, if it is solid there.</summary>
    internal struct MetFloor(int floor, double share, int slab)
    {
        public readonly int Floor = floor;
        public readonly double Share = share;
        public int Slab = slab;
    }

    /// <summary>Scratch for one thread.</summary>
    public sealed class Scratch(FloorTerm term)
    {
        internal readonly List<MetFloor> Met = [];
        internal readonly List<(int First, int Last)> Found = [];
        internal readonly List<(int Column, int Floor)> Borders = [];
        internal readonly bool[] IsMet = new bool[term.floors.Length];

        /// <summary>Whether the runs are those of all rows of the slabs that the floors were last scanned in.</summary>
        internal bool IsOfSlabs { get; set; }

        /// <summary>Meets the floors of the row before.</summary>
        internal void MeetAs(Scratch before)
        {
            Met.Clear();
            Met.AddRange(before.Met);
        }

        /// <summary>Runs of constant amount.</summary>
        public List<AmountRun> Amounts { get; } = [];

        /// <summary>Runs at an angle.</summary>
        public List<FloorRun> Angles { get; } = [];
    }

    /// <summary>Notes which floors paths from a transmitter to the grid meet.</summary>
    public void Start(Position transmitter, Scratch scratch)
    {
        scratch.Met.Clear();
        scratch.Amounts.Clear();
        scratch.Angles.Clear();
        for (int i = 0; i < floors.Length; i++)
            if (floors[i].IsMetFrom(transmitter.Z)) scratch.Met.Add(new(i, floors[i].ShareFrom(transmitter), 0));

        // Without a floor every row is like the empty one before the first.
        scratch.IsOfSlabs = scratch.Met.Count == 0;
    }

    /// <summary>Whether a row has the runs that were found for the row before.</summary>
    public bool IsAsBefore(Position transmitter, int row, Scratch before)
    {
        if (!before.IsOfSlabs) return false;
        foreach (ref readonly MetFloor met in CollectionsMarshal.AsSpan(before.Met))
            if (!floors[met.Floor].IsAsBefore(transmitter, met.Share, row, met.Slab)) return false;
        return true;
    }

    /// <summary>Works out the runs of one row.</summary>
    public void FindRuns(Position transmitter, int row, Scratch scratch)
    {
        scratch.Amounts.Clear();
        scratch.Angles.Clear();
        scratch.Borders.Clear();
        scratch.IsOfSlabs = true;
        foreach (ref MetFloor met in CollectionsMarshal.AsSpan(scratch.Met))
        {
            scratch.Found.Clear();
            scratch.IsOfSlabs &= floors[met.Floor].AddRuns(transmitter, met.Share, row, ref met.Slab, scratch.Found);
            foreach ((int first, int last) in scratch.Found)
            {
                scratch.Borders.Add((first, met.Floor));
                scratch.Borders.Add((last + 1, met.Floor));
            }
        }

        if (scratch.Borders.Count > 0) LayOver(scratch);
    }

    private void LayOver(Scratch scratch)
    {
        Span<(int Column, int Floor)> borders = CollectionsMarshal.AsSpan(scratch.Borders);
        if (scratch.Met.Count > 1) SortByColumn(borders);
        scratch.IsMet.AsSpan().Clear();
        int met = 0;
        for (int i = 0; i < borders.Length; i++)
        {
            (int column, int floor) = borders[i];
            bool isMet = scratch.IsMet[floor] ^= true;
            met += isMet ? 1 : -1;
            if (met > 0 && borders[i + 1].Column > column) AddRun(scratch, column, borders[i + 1].Column - 1, met);
        }
    }

    // Few and nearly in order: a general sort would take longer than all the rest of a row.
    private static void SortByColumn(Span<(int Column, int Floor)> borders)
    {
        for (int i = 1; i < borders.Length; i++)
        {
            (int Column, int Floor) moved = borders[i];
            int to = i;
            for (; to > 0 && borders[to - 1].Column > moved.Column; to--) borders[to] = borders[to - 1];
            borders[to] = moved;
        }
    }

    private void AddRun(Scratch scratch, int first, int last, int met)
    {
        double constantDb = 0;
        for (int i = 0; i < floors.Length; i++)
        {
            if (!scratch.IsMet[i]) continue;
            constantDb += constantsDb[i];
            if (tables[i] is { } table) scratch.Angles.Add(new(first, last, shares[met], table));
        }

        if (constantDb > 0) scratch.Amounts.Add(new(first, last, channels.Quarters(shares[met] * constantDb)));
    }
}
