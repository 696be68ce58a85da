using System.Runtime.InteropServices;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>
/// A straight border across which a sum changes: on every row from the first to the last it lies at the column coordinate
/// Alpha + Beta · row.
/// </summary>
/// <param name="Alpha">Column coordinate on row 0.</param>
/// <param name="Beta">Change of it from row to row.</param>
/// <param name="First">First row.</param>
/// <param name="Last">Last row.</param>
internal readonly record struct ShadowLine(double Alpha, double Beta, int First, int Last);

/// <summary>A border parted into what lies in the grid and what lies left of it; what lies right of it matters to no point.</summary>
/// <param name="Inside">The rows where it lies in the grid, with half a column to spare.</param>
/// <param name="FirstAtLeft">First row where it lies left of the grid.</param>
/// <param name="LastAtLeft">Last such row; before the first when there is none.</param>
internal readonly record struct ClippedLine(ShadowLine Inside, int FirstAtLeft, int LastAtLeft)
{
    /// <summary>Whether in each of its rows a grid point lies exactly on it.</summary>
    public bool IsOnPoints { get; init; }

    /// <summary>The same some columns to the right.</summary>
    public ClippedLine Moved(double columns) => this with { Inside = Inside with { Alpha = Inside.Alpha + columns } };
}

/// <summary>What decides exactly on which side of a border a grid point lies, and what it gets when it lies on it.</summary>
/// <param name="A">The border goes through the image of this place.</param>
/// <param name="B">It has the direction from A to B.</param>
/// <param name="Scale">By how much the image is enlarged about the transmitter.</param>
/// <param name="TieJump">Value at a grid point exactly on the border less value on the left.</param>
internal readonly record struct LineOrigin(PlanPoint A, PlanPoint B, Scale Scale, int TieJump);

/// <summary>What of a border is not asked for in every strip.</summary>
/// <param name="Origin">Where it comes from.</param>
/// <param name="First">Its first row.</param>
/// <param name="Channel">Of which channel.</param>
internal readonly record struct LineRest(LineOrigin Origin, int First, int Channel);

/// <summary>A change of a sum from one column of one row on.</summary>
internal readonly record struct ShadowStep(int Row, int Column, int Channel, int Jump);

/// <summary>
/// All borders of the shadows that one transmitter casts on a grid, sorted by the strip of rows in which they begin.
/// Emptied and filled for each transmitter without allocation once it has grown.
/// </summary>
internal sealed class ShadowLines
{
    private const int FewestLines = 256;

    // Left of this no column is left of a border, and as far from the last column it is right of all: half a column to spare on
    // either side, so rounding decides nothing.
    private const double LeftSide = -0.5;

    private readonly int[] firstStepOfStrip, endOfStrip;
    private readonly List<int> nextStep = [];
    private readonly List<ShadowStep> steps = [];
    private readonly int[] bases;
    private readonly bool[] isUsed;
    private readonly int channelCount;
    private readonly GridFrame frame;
    private ActiveLine[] lines = new ActiveLine[FewestLines];
    private LineRest[] rests = new LineRest[FewestLines];
    private int[] byStrip = new int[FewestLines];
    private int lineCount;

    public ShadowLines(GridFrame frame, int channelCount)
    {
        this.frame = frame;
        this.channelCount = channelCount;
        int strips = StripCount(frame.Rows);
        (endOfStrip, firstStepOfStrip) = (new int[strips], new int[strips]);
        bases = new int[channelCount * (frame.Rows + 1)];
        isUsed = new bool[channelCount];
    }

    /// <summary>Rows of a strip: the lanes of a vector of 32-bit numbers.</summary>
    public const int StripRows = 8;

    public Position Transmitter { get; private set; }

    /// <summary>All borders as strips ask for them.</summary>
    public ReadOnlySpan<ActiveLine> Lines => lines.AsSpan(0, lineCount);

    /// <summary>The rest of each border.</summary>
    public ReadOnlySpan<LineRest> Rests => rests.AsSpan(0, lineCount);

    public ReadOnlySpan<ShadowStep> Steps => CollectionsMarshal.AsSpan(steps);

    public static int StripCount(int rows) => (rows + StripRows - 1) / StripRows;

    /// <summary>The borders that begin in a strip, in the order in which they were added; after <see cref="Finish"/>.</summary>
    public ReadOnlySpan<int> LinesOf(int strip) => byStrip.AsSpan((strip == 0 ? 0 : endOfStrip[strip - 1])..endOfStrip[strip]);

    public int FirstStep(int strip) => firstStepOfStrip[strip];

    public int NextStep(int step) => nextStep[step];

    /// <summary>Whether anything at all was added to a channel.</summary>
    public bool IsUsed(int channel) => isUsed[channel];

    /// <summary>Value of a channel left of the first column; after <see cref="Finish"/>.</summary>
    public int Base(int channel, int row) => bases[(channel * (frame.Rows + 1)) + row];

    public void Start(Position transmitter)
    {
        Transmitter = transmitter;
        lineCount = 0;
        steps.Clear();
        nextStep.Clear();
        Array.Clear(endOfStrip);
        Array.Fill(firstStepOfStrip, -1);
        for (int channel = 0; channel < channelCount; channel++)
            if (isUsed[channel]) bases.AsSpan(channel * (frame.Rows + 1), frame.Rows + 1).Clear();
        Array.Clear(isUsed);
    }

    /// <summary>Sorts the borders, and turns the changes of the base from row to row into values.</summary>
    public void Finish()
    {
        SortByStrip();
        for (int channel = 0; channel < channelCount; channel++)
        {
            if (!isUsed[channel]) continue;
            Span<int> row = bases.AsSpan(channel * (frame.Rows + 1), frame.Rows + 1);
            for (int r = 1; r < row.Length; r++) row[r] += row[r - 1];
        }
    }

    /// <summary>Adds an amount to whole rows.</summary>
    public void AddRows(int channel, int first, int last, int amount)
    {
        if (first > last || amount == 0) return;
        isUsed[channel] = true;
        int at = channel * (frame.Rows + 1);
        bases[at + first] += amount;
        bases[at + last + 1] -= amount;
    }

    /// <summary>Adds an amount from a column on, in one row.</summary>
    public void AddStep(int channel, int row, int column, int amount)
    {
        if (amount == 0 || column >= frame.Columns) return;
        isUsed[channel] = true;
        int strip = row / StripRows;
        nextStep.Add(firstStepOfStrip[strip]);
        firstStepOfStrip[strip] = steps.Count;
        steps.Add(new(row, Math.Max(0, column), channel, amount));
    }

    /// <summary>Adds a border that has been parted before.</summary>
    public void Add(in ClippedLine clipped, int channel, int jump, in LineOrigin origin)
    {
        AddRows(channel, clipped.FirstAtLeft, clipped.LastAtLeft, jump);
        if (clipped.Inside.First > clipped.Inside.Last) return;

        isUsed[channel] = true;
        if (lineCount == lines.Length) Grow();
        lines[lineCount] = ActiveLine.Of(clipped.Inside, jump, lineCount, frame.Columns);
        rests[lineCount++] = new(origin, clipped.Inside.First, channel);
        endOfStrip[clipped.Inside.First / StripRows]++;
    }

    /// <summary>Parts a border into the rows where it lies in the grid and those where it lies left of it.</summary>
    public static ClippedLine Clip(in ShadowLine line, int columns)
    {
        (int first, int last) = (line.First, line.Last);
        double atFirst = line.Alpha + (line.Beta * first), atLast = line.Alpha + (line.Beta * last);
        double right = columns - LeftSide - 1;
        if (first > last || (atFirst >= LeftSide && atLast >= LeftSide && atFirst <= right && atLast <= right)) return new(line, 0, -1);
        if (line.Beta == 0) return line.Alpha < LeftSide ? new(line with { Last = first - 1 }, first, last) : new(line with { Last = first - 1 }, 0, -1);

        double perColumn = 1 / line.Beta, atLeft = (LeftSide - line.Alpha) * perColumn, atRight = (right - line.Alpha) * perColumn;
        int inFirst = Math.Max(first, ToRow(Math.Ceiling(double.MinNative(atLeft, atRight))));
        int inLast = Math.Min(last, ToRow(Math.Floor(double.MaxNative(atLeft, atRight))));
        ShadowLine inside = line with { First = inFirst, Last = inLast };
        return line.Beta > 0
            ? new(inside, first, Math.Min(last, inFirst - 1))
            : new(inside, Math.Max(first, inLast + 1), last);
    }

    private void Grow()
    {
        Array.Resize(ref lines, 2 * lineCount);
        Array.Resize(ref rests, 2 * lineCount);
        byStrip = new int[2 * lineCount];
    }

    // By counting: from how many begin in each strip to where each strip ends.
    private void SortByStrip()
    {
        int start = 0;
        foreach (ref int end in endOfStrip.AsSpan()) (end, start) = (start, start + end);
        for (int line = 0; line < lineCount; line++) byStrip[endOfStrip[rests[line].First / StripRows]++] = line;
    }

    /// <summary>The ray through a vertex, beyond the transmitter.</summary>
    public ShadowLine RayThrough(PlanPoint vertex, int first, int last)
    {
        PlanPoint p = Transmitter.Plan;
        double slope = ((double)vertex.X - p.X) / ((double)vertex.Y - p.Y);
        return new(frame.ColumnOf(p.X + (((double)frame.OriginY - p.Y) * slope)), slope, first, last);
    }

    /// <summary>The border through the image of a, in the direction from a to b. Without enlargement the transmitter does not matter.</summary>
    public static ShadowLine LineThrough(GridFrame frame, PlanPoint transmitter, (PlanPoint A, PlanPoint B) ends, Scale scale, int first, int last)
    {
        (PlanPoint p, PlanPoint a, PlanPoint b) = (transmitter, ends.A, ends.B);
        double slope = (b.X - (double)a.X) / (b.Y - (double)a.Y), factor = scale.Factor;
        double x = p.X + (factor * ((double)a.X - p.X)), y = p.Y + (factor * ((double)a.Y - p.Y));
        double alpha = frame.ColumnOf(x + ((frame.OriginY - y) * slope));
        return new(alpha, slope, first, last);
    }

    /// <summary>
    /// Where a border takes effect on a row, decided in whole numbers: the first column right of it, and whether the column
    /// before that one lies exactly on it.
    /// </summary>
    public (int Column, int TieJump, bool IsTie) Decide(int line, int row)
    {
        ref readonly ActiveLine border = ref lines[line];
        double place = border.Alpha + (border.Beta * row);
        if (!(place > LeftSide)) return (0, 0, false);
        if (place > frame.Columns - LeftSide - 1) return (frame.Columns, 0, false);

        int column = (int)Math.Round(place);
        int side = SideOf(rests[line].Origin, frame.At(column, row));
        return side > 0 ? (column, 0, false) : side < 0 ? (column + 1, 0, false) : (column, rests[line].Origin.TieJump, true);
    }

    // The sign of x(point) − x(border).
    private int SideOf(in LineOrigin origin, PlanPoint point)
    {
        PlanPoint a = origin.A, b = origin.B, p = Transmitter.Plan;
        (long n, long d) = (origin.Scale.Numerator, origin.Scale.Denominator);
        int rising = Math.Sign((long)b.Y - a.Y);
        if (n == d) return -rising * Math.Sign(Predicates.SignedArea(a, b, point));

        long x = (d * ((long)point.X - p.X)) - (n * ((long)a.X - p.X)), y = (d * ((long)point.Y - p.Y)) - (n * ((long)a.Y - p.Y));
        return -rising * Int128.Sign(((Int128)((long)b.X - a.X) * y) - ((Int128)((long)b.Y - a.Y) * x));
    }

    // Far beyond any grid is as good as infinite; the bounds keep the conversion defined.
    private static int ToRow(double row) => (int)double.MaxNative(double.MinNative(row, int.MaxValue / 2), -2);
}
