using System.Runtime.InteropServices;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>Takes the rows of a field as they are finished.</summary>
internal interface IRowTaker
{
    /// <summary>Takes one row; the span is used again for the next.</summary>
    /// <param name="row">Which.</param>
    /// <param name="lossesDb">The path loss at each column, dB.</param>
    void Take(int row, ReadOnlySpan<float> lossesDb);
}

/// <summary>
/// Turns borders of shadows into rows of path loss, strip by strip. The workspace of one thread; it allocates only until its
/// lists have grown to their size.
/// </summary>
internal sealed class RowSummer
{
    private readonly ShadowScene scene;
    private readonly GridFrame frame;
    private readonly int pitch;
    private readonly int[]?[] cells;
    private readonly bool[] isTouched;
    private readonly float[] lossesDb, alongX, squaredAlongX, inverses;
    private readonly FloorTerm.Scratch floors;
    private readonly List<ActiveLine>?[] active;
    private readonly List<(int Line, uint Rows)> doubts = [];

    public RowSummer(ShadowScene scene)
    {
        this.scene = scene;
        frame = scene.Frame;
        int padded = (frame.Columns + WideRowKernel.Lanes - 1) / WideRowKernel.Lanes * WideRowKernel.Lanes;

        // A vector of cells beyond the last column, and no two rows of a strip at the same place of a 4 KB page.
        pitch = padded + 24;
        floors = new(scene.Floors);
        cells = new int[scene.Channels.Count][];
        active = new List<ActiveLine>[scene.Channels.Count];
        isTouched = new bool[scene.Channels.Count];
        (lossesDb, alongX, squaredAlongX, inverses) = (new float[padded], new float[padded], new float[padded], new float[padded]);
    }

    /// <summary>Sums a range of strips.</summary>
    public void Sum<TTaker>(ShadowLines shadows, int firstStrip, int endStrip, ref TTaker taker)
        where TTaker : struct, IRowTaker, allows ref struct
    {
        for (int column = 0; column < alongX.Length; column++)
        {
            double metres = Lattice.ToMetres((long)frame.OriginX + ((long)column * frame.Step) - shadows.Transmitter.Plan.X);
            (alongX[column], squaredAlongX[column]) = ((float)metres, (float)(metres * metres));
        }

        scene.Floors.Start(shadows.Transmitter, floors);
        foreach (List<ActiveLine>? lines in active) lines?.Clear();
        for (int strip = 0; strip < firstStrip; strip++) Activate(shadows, strip, firstStrip * ShadowLines.StripRows);
        for (int strip = firstStrip; strip < endStrip; strip++)
        {
            int firstRow = strip * ShadowLines.StripRows, endRow = Math.Min(frame.Rows, firstRow + ShadowLines.StripRows);
            Activate(shadows, strip, firstRow);
            Scatter(shadows, strip, firstRow);
            for (int row = firstRow; row < endRow; row++)
            {
                SumRow(shadows, row, row - firstRow);
                taker.Take(row, lossesDb.AsSpan(0, frame.Columns));
            }

            Array.Clear(isTouched);
        }
    }

    private void Activate(ShadowLines shadows, int strip, int firstRow)
    {
        ReadOnlySpan<ShadowLine> lines = shadows.Lines;
        for (int line = shadows.FirstLine(strip); line >= 0; line = shadows.NextLine(line))
        {
            ref readonly ShadowLine border = ref lines[line];
            if (border.Last >= firstRow) (active[border.Channel] ??= []).Add(new(border.Alpha, border.Beta, border.First, border.Last, border.Jump, line));
        }
    }

    private Span<int> CellsOf(int channel)
    {
        isTouched[channel] = true;
        return cells[channel] ??= new int[ScatterKernel.CellCount(pitch)];
    }

    private void Scatter(ShadowLines shadows, int strip, int firstRow)
    {
        for (int channel = 0; channel < active.Length; channel++)
        {
            if (active[channel] is not { Count: > 0 } lines) continue;
            int kept = ScatterKernel.Scatter(CellsOf(channel), new(pitch, frame.Columns, firstRow), CollectionsMarshal.AsSpan(lines), doubts);
            foreach ((int line, uint rows) in doubts)
            {
                for (uint left = rows; left != 0; left &= left - 1)
                    Decide(shadows, line, firstRow, System.Numerics.BitOperations.TrailingZeroCount(left));
            }

            CollectionsMarshal.SetCount(lines, kept);
        }

        ReadOnlySpan<ShadowStep> steps = shadows.Steps;
        for (int index = shadows.FirstStep(strip); index >= 0; index = shadows.NextStep(index))
            CellsOf(steps[index].Channel)[((steps[index].Row - firstRow) * pitch) + steps[index].Column] += steps[index].Jump;
    }

    private void Decide(ShadowLines shadows, int index, int firstRow, int lane)
    {
        ref readonly ShadowLine line = ref shadows.Lines[index];
        (int column, int tieJump, bool isTie) = shadows.Decide(index, firstRow + lane);
        Span<int> row = CellsOf(line.Channel).Slice(lane * pitch, pitch);
        if (isTie)
        {
            row[column] += tieJump;
            row[column + 1] += line.Jump - tieJump;
        }
        else
        {
            row[column] += line.Jump;
        }
    }

    private void SumRow(ShadowLines shadows, int row, int lane)
    {
        Position transmitter = shadows.Transmitter;
        double dy = Lattice.ToMetres((long)frame.At(0, row).Y - transmitter.Plan.Y), dz = Lattice.ToMetres((long)frame.Z - transmitter.Z);
        var geometry = new RowGeometry((float)((dy * dy) + (dz * dz)), (float)dy);
        scene.Floors.FindRuns(transmitter, row, floors);

        Span<int> first = CellsOf(0).Slice(lane * pitch, pitch);
        if (!scene.Distance.GoesRound)
            foreach (AmountRun run in floors.Amounts) AddRun(first, run);
        foreach ((ObjectShadows shadow, int amount) in scene.Objects)
        {
            (int from, int to) = shadow.Run(transmitter, row);
            if (from <= to) AddRun(first, new(from, to, amount));
        }

        SumWalls(shadows, row, lane, geometry, scene.Distance.GoesRound ? AddWholeRows(scene.Distance) : scene.Distance);
        if (scene.Distance.GoesRound) AddPartRows();
        if (floors.Angles.Count == 0) return;

        if (scene.Channels.Count == 1) RowKernel.InvertSquares(inverses, squaredAlongX, geometry);
        foreach (FloorRun run in floors.Angles)
        {
            int length = run.Last - run.First + 1;
            Span<float> ofRun = lossesDb.AsSpan(run.First, length);
            RowKernel.AddFloor(ofRun, inverses.AsSpan(run.First, length), (float)(dz * dz), run.Share, run.Table);
        }
    }

    // A way round asks for the whole sum of walls before anything is added to it.
    private void SumWalls(ShadowLines shadows, int row, int lane, RowGeometry geometry, DistanceLaw law)
    {
        Span<int> first = CellsOf(0).Slice(lane * pitch, pitch);
        int start = shadows.Base(0, row);
        bool isConstant = scene.Channels.Count == 1, goesRoundLater = law.GoesRound && !isConstant;
        if (goesRoundLater) RowKernel.Sum(lossesDb, first, start, law.DecibelsPerQuarter);
        else if (WideRowKernel.IsSupported) WideRowKernel.SumWithDistance(lossesDb, first, start, squaredAlongX, geometry, law);
        else RowKernel.SumWithDistance(lossesDb, first, start, squaredAlongX, geometry, law);
        if (!isConstant) SumAngles(shadows, row, lane, geometry);
        if (goesRoundLater && WideRowKernel.IsSupported) WideRowKernel.GoRound(lossesDb, squaredAlongX, geometry, law);
        else if (goesRoundLater) RowKernel.GoRound(lossesDb, squaredAlongX, geometry, law);
    }

    // Floors of the same loss at every column cost no pass of their own.
    private DistanceLaw AddWholeRows(DistanceLaw law)
    {
        float floorsDb = 0;
        foreach (AmountRun run in floors.Amounts)
            if (IsWholeRow(run)) floorsDb += run.Amount * law.DecibelsPerQuarter;
        return law with { ConstantDb = law.ConstantDb + floorsDb };
    }

    private void AddPartRows()
    {
        foreach (AmountRun run in floors.Amounts)
            if (!IsWholeRow(run)) RowKernel.Add(lossesDb.AsSpan(run.First, run.Last - run.First + 1), run.Amount * scene.Distance.DecibelsPerQuarter);
    }

    private bool IsWholeRow(AmountRun run) => run.First == 0 && run.Last == frame.Columns - 1;

    private void SumAngles(ShadowLines shadows, int row, int lane, RowGeometry geometry)
    {
        RowKernel.InvertSquares(inverses, squaredAlongX, geometry);
        for (int channel = 1; channel < cells.Length; channel++)
        {
            int start = shadows.IsUsed(channel) ? shadows.Base(channel, row) : 0;
            if (!isTouched[channel] && start == 0) continue;
            Span<int> counts = CellsOf(channel).Slice(lane * pitch, pitch);
            RowKernel.AddAtAngle(lossesDb, counts, start, alongX, inverses, geometry, scene.Channels.Angle(channel));
        }
    }

    private static void AddRun(Span<int> row, AmountRun run)
    {
        row[run.First] += run.Amount;
        row[run.Last + 1] -= run.Amount;
    }
}
