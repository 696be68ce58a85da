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
    private readonly int padded;
    private readonly StripChannel?[] channels;
    private readonly LineAligned<float> lossesDb, alongX, squaredAlongX, inverses;
    private readonly RowGeometry[] rows = new RowGeometry[ShadowLines.StripRows];
    private readonly FloorTerm.Scratch[] floors = new FloorTerm.Scratch[ShadowLines.StripRows];
    private readonly int[] starts = new int[ShadowLines.StripRows];
    private readonly FloorRows floorRows;

    public RowSummer(ShadowScene scene)
    {
        this.scene = scene;
        frame = scene.Frame;
        padded = (frame.Columns + WideRowKernel.Lanes - 1) / WideRowKernel.Lanes * WideRowKernel.Lanes;
        floorRows = new(scene.Floors);
        channels = new StripChannel[scene.Channels.Count];
        (alongX, squaredAlongX) = (new(padded), new(padded));
        (lossesDb, inverses) = (new(padded * ShadowLines.StripRows), new(padded * ShadowLines.StripRows));
    }

    /// <summary>Sums a range of strips.</summary>
    public void Sum<TTaker>(ShadowLines shadows, int firstStrip, int endStrip, ref TTaker taker)
        where TTaker : struct, IRowTaker, allows ref struct
    {
        for (int column = 0; column < padded; column++)
        {
            double metres = Lattice.ToMetres((long)frame.OriginX + ((long)column * frame.Step) - shadows.Transmitter.Plan.X);
            (alongX.Values[column], squaredAlongX.Values[column]) = ((float)metres, (float)(metres * metres));
        }

        floorRows.Start(shadows.Transmitter);
        foreach (StripChannel? channel in channels) channel?.Clear();
        for (int strip = 0; strip < firstStrip; strip++) Activate(shadows, strip, firstStrip * ShadowLines.StripRows);
        for (int strip = firstStrip; strip < endStrip; strip++)
        {
            int firstRow = strip * ShadowLines.StripRows, count = Math.Min(frame.Rows - firstRow, ShadowLines.StripRows);
            Activate(shadows, strip, firstRow);
            Scatter(shadows, strip, firstRow);
            for (int lane = 0; lane < count; lane++) Prepare(shadows.Transmitter, firstRow + lane, lane);
            SumWalls(shadows, firstRow, count);
            for (int lane = 0; lane < count; lane++)
            {
                Finish(shadows.Transmitter, lane);
                taker.Take(firstRow + lane, Row(lossesDb, lane)[..frame.Columns]);
            }
        }
    }

    private void Activate(ShadowLines shadows, int strip, int firstRow)
    {
        ReadOnlySpan<ActiveLine> lines = shadows.Lines;
        ReadOnlySpan<LineRest> rests = shadows.Rests;
        foreach (int line in shadows.LinesOf(strip))
            if (lines[line].Last >= firstRow) Channel(channels.Length == 1 ? 0 : rests[line].Channel).Activate(lines[line]);
    }

    private StripChannel Channel(int channel) => channels[channel] ??= new(padded);

    private Span<float> Row(LineAligned<float> ofStrip, int lane) => ofStrip.Values.Slice(lane * padded, padded);

    private void Scatter(ShadowLines shadows, int strip, int firstRow)
    {
        foreach (StripChannel? channel in channels) channel?.Scatter(shadows, firstRow);
        ReadOnlySpan<ShadowStep> steps = shadows.Steps;
        for (int index = shadows.FirstStep(strip); index >= 0; index = shadows.NextStep(index))
            Channel(steps[index].Channel).Add(steps[index].Row - firstRow, steps[index].Column, steps[index].Jump);
    }

    // A way round asks for the whole sum of walls before any floor is added to it.
    private void Prepare(Position transmitter, int row, int lane)
    {
        FloorTerm.Scratch ofRow = floors[lane] = floorRows.At(transmitter, row);
        double dy = Lattice.ToMetres((long)frame.At(0, row).Y - transmitter.Plan.Y), dz = Lattice.ToMetres((long)frame.Z - transmitter.Z);
        rows[lane] = new((float)((dy * dy) + (dz * dz)), (float)dy, scene.Distance.GoesRound ? WholeRowsDb(ofRow) : 0);
        if (!scene.Distance.GoesRound)
            foreach (AmountRun run in ofRow.Amounts) AddRun(lane, run);
        foreach ((ObjectShadows shadow, int amount) in scene.Objects)
        {
            (int from, int to) = shadow.Run(transmitter, row);
            if (from <= to) AddRun(lane, new(from, to, amount));
        }
    }

    // Rows beyond the last one of the grid are summed too: nothing changes in them, and nobody takes them.
    private void SumWalls(ShadowLines shadows, int firstRow, int count)
    {
        SetStarts(shadows, 0, firstRow, count);
        if (WideRowKernel.IsSupported) WideRowKernel.Sum(lossesDb.Values, Channel(0).Cells, starts, scene.Distance.DecibelsPerQuarter);
        else RowKernel.Sum(lossesDb.Values, Channel(0).Cells, starts, scene.Distance.DecibelsPerQuarter);
        if (channels.Length == 1) return;

        for (int lane = 0; lane < count; lane++) RowKernel.InvertSquares(Row(inverses, lane), squaredAlongX.Values, rows[lane]);
        for (int channel = 1; channel < channels.Length; channel++)
        {
            SetStarts(shadows, channel, firstRow, count);
            if (channels[channel] is not { IsTouched: true } && !starts.AsSpan().ContainsAnyExcept(0)) continue;
            RowKernel.AddAtAngle(lossesDb.Values, Channel(channel).Cells, starts, alongX.Values, inverses.Values, rows, scene.Channels.Angle(channel));
        }
    }

    private void SetStarts(ShadowLines shadows, int channel, int firstRow, int count)
    {
        for (int lane = 0; lane < starts.Length; lane++)
            starts[lane] = lane < count && shadows.IsUsed(channel) ? shadows.Base(channel, firstRow + lane) : 0;
    }

    private void Finish(Position transmitter, int lane)
    {
        Span<float> row = Row(lossesDb, lane);
        if (WideRowKernel.IsSupported) WideRowKernel.Finish(row, squaredAlongX.Values, rows[lane], scene.Distance);
        else RowKernel.Finish(row, squaredAlongX.Values, rows[lane], scene.Distance);
        FloorTerm.Scratch ofRow = floors[lane];
        if (scene.Distance.GoesRound)
        {
            foreach (AmountRun run in ofRow.Amounts)
                if (!IsWholeRow(run)) RowKernel.Add(row[run.First..(run.Last + 1)], run.Amount * scene.Distance.DecibelsPerQuarter);
        }

        if (ofRow.Angles.Count == 0) return;
        double dz = Lattice.ToMetres((long)frame.Z - transmitter.Z);
        if (channels.Length == 1) RowKernel.InvertSquares(Row(inverses, lane), squaredAlongX.Values, rows[lane]);
        foreach (FloorRun run in ofRow.Angles)
            RowKernel.AddFloor(row[run.First..(run.Last + 1)], Row(inverses, lane)[run.First..(run.Last + 1)], (float)(dz * dz), run.Share, run.Table);
    }

    // Floors of the same loss at every column cost no pass of their own.
    private float WholeRowsDb(FloorTerm.Scratch ofRow)
    {
        float floorsDb = 0;
        foreach (AmountRun run in ofRow.Amounts)
            if (IsWholeRow(run)) floorsDb += run.Amount * scene.Distance.DecibelsPerQuarter;
        return floorsDb;
    }

    private bool IsWholeRow(AmountRun run) => run.First == 0 && run.Last == frame.Columns - 1;

    private void AddRun(int lane, AmountRun run)
    {
        StripChannel changed = Channel(0);
        changed.Add(lane, run.First, run.Amount);
        changed.Add(lane, run.Last + 1, -run.Amount);
    }
}
