using System.Numerics;
using System.Runtime.InteropServices;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>One channel while strips pass over it: the changes of the strip and the borders that reach it.</summary>
internal sealed class StripChannel(int paddedColumns)
{
    private readonly StripCells cells = new(paddedColumns);

    // Apart, so that no border has to be asked which kind it is: that is as good as random.
    private readonly List<ActiveLine> steep = [], others = [];
    private readonly List<DoubtfulRows> doubts = [];
    private int steepBegun, othersBegun;

    /// <summary>Whether anything may change in the strip.</summary>
    public bool IsTouched { get; private set; }

    /// <summary>The changes: of <see cref="StripCells"/>.</summary>
    public Span<int> Cells => cells.All;

    /// <summary>Forgets all borders.</summary>
    public void Clear()
    {
        steep.Clear();
        others.Clear();
        (steepBegun, othersBegun) = (0, 0);
    }

    /// <summary>Takes a border that begins in the strip.</summary>
    public void Activate(in ActiveLine line) => (line.IsSteep ? steep : others).Add(line);

    /// <summary>Writes the changes of all borders; those that end here are forgotten.</summary>
    public void Scatter(ShadowLines shadows, int firstRow)
    {
        IsTouched = steep.Count + others.Count > 0;
        doubts.Clear();
        steepBegun = ScatterKernel.ScatterSteep(cells, firstRow, CollectionsMarshal.AsSpan(steep), steepBegun, shadows.Rests, doubts);
        othersBegun = ScatterKernel.Scatter(cells, firstRow, CollectionsMarshal.AsSpan(others), othersBegun, shadows.Rests, doubts);
        CollectionsMarshal.SetCount(steep, steepBegun);
        CollectionsMarshal.SetCount(others, othersBegun);
        foreach ((int line, uint rows) in doubts)
        {
            for (uint left = rows; left != 0; left &= left - 1)
                Decide(shadows, line, firstRow, BitOperations.TrailingZeroCount(left));
        }
    }

    /// <summary>Adds from a column on, in one row of the strip.</summary>
    public void Add(int lane, int column, int amount)
    {
        IsTouched = true;
        cells.Add(lane, column, amount);
    }

    private void Decide(ShadowLines shadows, int index, int firstRow, int lane)
    {
        int jump = shadows.Lines[index].Jump;
        (int column, int tieJump, bool isTie) = shadows.Decide(index, firstRow + lane);
        cells.Add(lane, column, isTie ? tieJump : jump);
        if (isTie) cells.Add(lane, column + 1, jump - tieJump);
    }
}
