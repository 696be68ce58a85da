using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>
/// Casts the shadows of one storey's walls: borders along the rays through wall ends, shared by all facets that end there, and
/// along the walls themselves and their enlarged images where a path passes from one layer into the next.
/// </summary>
internal sealed class WallShadows
{
    private readonly WallFacets facets;
    private readonly GridFrame frame;
    private readonly HeightCuts cuts = new();

    // Rows next to each vertex itself, which no transmitter changes.
    private readonly RowPlace[] ownRows;

    // Borders along the facets themselves, which no transmitter changes either but for the sign of their jump.
    private readonly ClippedLine[] ownBorders;
    private readonly (PlanPoint A, PlanPoint B)[] ends;
    private readonly int[] sideOfTransmitter;

    public WallShadows(WallFacets facets, GridFrame frame)
    {
        this.facets = facets;
        this.frame = frame;
        ownRows = [.. facets.Vertices.Select(vertex => frame.RowsAt(vertex.Y, vertex.Y, Scale.One))];
        ends = [.. facets.Starts.Zip(facets.Ends, (a, b) => (facets.Vertices[a], facets.Vertices[b]))];
        ownBorders = [.. Enumerable.Range(0, facets.Count).Select(OwnBorder)];
        sideOfTransmitter = new int[facets.Count];
    }

    public void Cast(ShadowLines shadows)
    {
        cuts.Set(facets, shadows.Transmitter.Z, frame.Z);
        if (cuts.IsEmpty) return;

        PlanPoint p = shadows.Transmitter.Plan;
        for (int facet = 0; facet < facets.Count; facet++)
        {
            (PlanPoint a, PlanPoint b) = ends[facet];
            int side = Math.Sign(Predicates.SignedArea(a, b, p));
            sideOfTransmitter[facet] = side;
            if (side == 0)
            {
                CastFromOwnLine(shadows, facet);
                continue;
            }

            if (a.Y == b.Y) continue;
            AddFarLeft(shadows, facet, side);
            CastEdges(shadows, facet, side);
        }

        for (int vertex = 0; vertex < facets.Vertices.Length; vertex++)
            CastRays(shadows, vertex);
    }

    private ClippedLine OwnBorder(int facet)
    {
        (PlanPoint a, PlanPoint b) = ends[facet];
        RowPlace atStart = ownRows[facets.Starts[facet]], atEnd = ownRows[facets.Ends[facet]];
        int first = Math.Min(atStart.Above, atEnd.Above), last = Math.Max(atStart.Below, atEnd.Below);
        if (a.Y == b.Y || first > last) return new(default(ShadowLine) with { Last = -1 }, 0, -1);
        ClippedLine border = ShadowLines.Clip(ShadowLines.LineThrough(frame, default, (a, b), Scale.One, first, last), frame.Columns);
        if (a.X != b.X) return border;

        // It stays between the same two columns, or on one: decided once, so no row has to decide it.
        ColumnPlace place = frame.ColumnAt(a.X, 0, 1);
        double alpha = place.IsOnPoint ? place.Column : place.Column - 0.5;
        return border with { Inside = border.Inside with { Alpha = alpha }, IsOnPoints = place.IsOnPoint };
    }

    private RowPlace RowsAt(PlanPoint transmitter, int vertex, int cut) =>
        cut == 0 ? ownRows[vertex] : frame.RowsAt(transmitter.Y, facets.Vertices[vertex].Y, cuts.ScaleAt(cut));

    // What a row holds infinitely far to the left: there every path leaves the transmitter along the row.
    private void AddFarLeft(ShadowLines shadows, int facet, int side)
    {
        (PlanPoint a, PlanPoint b) = ends[facet];
        int y = shadows.Transmitter.Plan.Y, low = Math.Min(a.Y, b.Y), high = Math.Max(a.Y, b.Y);
        bool isLeftOfTransmitter = side * Math.Sign((long)b.Y - a.Y) < 0;
        if (y < low || y > high || !isLeftOfTransmitter) return;

        ChannelAmount full = facets.Amount(facet, cuts.LayerOf(cuts.Count - 1));
        RowPlace own = frame.RowsAt(y, y, Scale.One);
        if (y < high) shadows.AddRows(full.Channel, own.Above, frame.Rows - 1, full.Amount);
        if (y > low) shadows.AddRows(full.Channel, 0, own.Below, full.Amount);
        if (own.IsOnRow) shadows.AddRows(full.Channel, own.Below + 1, own.Below + 1, y > low && y < high ? full.Amount : full.Amount / 2);
    }

    private void CastEdges(ShadowLines shadows, int facet, int side)
    {
        bool isLitOnLeft = side * Math.Sign((long)ends[facet].B.Y - ends[facet].A.Y) > 0;
        ChannelAmount beyond = facets.Amount(facet, cuts.LayerOf(0));
        ChannelAmount inside = facets.Amount(facet, cuts.LayerOfGrid);
        CastEdge(shadows, facet, 0, isLitOnLeft, default, inside with { Amount = inside.Amount / 2 }, beyond);
        for (int cut = 1; cut < cuts.Count; cut++)
        {
            ChannelAmount near = facets.Amount(facet, cuts.LayerOf(cut - 1)), far = facets.Amount(facet, cuts.LayerOf(cut));
            if (near != far) CastEdge(shadows, facet, cut, isLitOnLeft, near, cuts.IsNearOwned ? near : far, far);
        }
    }

    private void CastEdge(
        ShadowLines shadows, int facet, int cut, bool isLitOnLeft, ChannelAmount near, ChannelAmount onBorder, ChannelAmount far)
    {
        (ChannelAmount left, ChannelAmount right) = isLitOnLeft ? (near, far) : (far, near);
        if ((left.Amount | right.Amount | onBorder.Amount) == 0) return;
        ClippedLine border = cut == 0 ? ownBorders[facet] : EnlargedBorder(shadows.Transmitter.Plan, facet, cut);
        if (border.Inside.First > border.Inside.Last && border.FirstAtLeft > border.LastAtLeft) return;

        (PlanPoint a, PlanPoint b) = ends[facet];
        var origin = new LineOrigin(a, b, cuts.ScaleAt(cut), 0);
        AddEdge(shadows, border, left.Channel, left, right, onBorder, origin);
        if (right.Channel != left.Channel) AddEdge(shadows, border, right.Channel, left, right, onBorder, origin);
        if (onBorder.Channel != left.Channel && onBorder.Channel != right.Channel) AddEdge(shadows, border, onBorder.Channel, left, right, onBorder, origin);
    }

    private static void AddEdge(
        ShadowLines shadows, in ClippedLine border, int channel, ChannelAmount left, ChannelAmount right, ChannelAmount onBorder, in LineOrigin origin)
    {
        int atLeft = left.In(channel), jump = right.In(channel) - atLeft, tieJump = onBorder.In(channel) - atLeft;
        if (border.IsOnPoints) AddAround(shadows, border, channel, jump, origin with { TieJump = tieJump });
        else if (jump != 0 || tieJump != 0) shadows.Add(border, channel, jump, origin with { TieJump = tieJump });
    }

    // Half a column to the left what grid points on it get, half a column to the right the rest.
    private static void AddAround(ShadowLines shadows, in ClippedLine border, int channel, int jump, in LineOrigin origin)
    {
        if (origin.TieJump != 0) shadows.Add(border.Moved(-0.5), channel, origin.TieJump, origin);
        if (jump != origin.TieJump) shadows.Add(border.Moved(0.5), channel, jump - origin.TieJump, origin);
    }

    private ClippedLine EnlargedBorder(PlanPoint p, int facet, int cut)
    {
        RowPlace atStart = RowsAt(p, facets.Starts[facet], cut), atEnd = RowsAt(p, facets.Ends[facet], cut);
        int first = Math.Min(atStart.Above, atEnd.Above), last = Math.Max(atStart.Below, atEnd.Below);
        if (first > last) return new(default(ShadowLine) with { Last = -1 }, 0, -1);
        return ShadowLines.Clip(ShadowLines.LineThrough(frame, p, ends[facet], cuts.ScaleAt(cut), first, last), frame.Columns);
    }

    private void CastRays(ShadowLines shadows, int vertex)
    {
        PlanPoint p = shadows.Transmitter.Plan, v = facets.Vertices[vertex];
        int rising = Math.Sign((long)v.Y - p.Y);
        RowPlace from = ownRows[vertex];
        if (from.IsOnRow) AddCorner(shadows, vertex, from.Below + 1, Scale.One);
        int startOfRun = 0;
        for (int run = 0; run < cuts.Count; run++)
        {
            bool isLast = run == cuts.Count - 1;
            if (!isLast && !Changes(vertex, run)) continue;

            RowPlace to = isLast
                ? new(frame.Rows - 1, 0)
                : RowsAt(p, vertex, run + 1);
            if (rising > 0) AddRays(shadows, vertex, cuts.LayerOf(startOfRun), from.Above, to.Below, -1);
            else if (rising < 0) AddRays(shadows, vertex, cuts.LayerOf(startOfRun), to.Above, from.Below, 1);
            if (!isLast && to.IsOnRow) AddCorner(shadows, vertex, to.Below + 1, cuts.ScaleAt(run + 1));
            (from, startOfRun) = (to, run + 1);
        }
    }

    // Whether any facet that ends here costs something else beyond the border after a run.
    private bool Changes(int vertex, int run)
    {
        for (int i = facets.IncidentFrom[vertex]; i < facets.IncidentFrom[vertex + 1]; i++)
        {
            int facet = facets.Incident[i] >> 1;
            if (facets.Amount(facet, cuts.LayerOf(run)) != facets.Amount(facet, cuts.LayerOf(run + 1))) return true;
        }

        return false;
    }

    private void AddRays(ShadowLines shadows, int vertex, int layer, int first, int last, int sign)
    {
        if (first > last || layer < 0) return;
        ReadOnlySpan<int> incident = facets.Incident.AsSpan(facets.IncidentFrom[vertex]..facets.IncidentFrom[vertex + 1]);
        if (!facets.HasAngles)
        {
            AddRay(shadows, vertex, first, last, new(0, sign * SumOf(incident, layer, 0)));
            return;
        }

        for (int i = 0; i < incident.Length; i++)
        {
            int channel = facets.Amount(incident[i] >> 1, layer).Channel;
            if (!IsDone(incident[..i], layer, channel)) AddRay(shadows, vertex, first, last, new(channel, sign * SumOf(incident[i..], layer, channel)));
        }
    }

    private void AddRay(ShadowLines shadows, int vertex, int first, int last, ChannelAmount jump)
    {
        if (jump.Amount == 0) return;
        PlanPoint v = facets.Vertices[vertex];
        ClippedLine border = ShadowLines.Clip(shadows.RayThrough(v, first, last), frame.Columns);
        shadows.Add(border, jump.Channel, jump.Amount, new(shadows.Transmitter.Plan, v, Scale.One, jump.Amount / 2));
    }

    private bool IsDone(ReadOnlySpan<int> incident, int layer, int channel)
    {
        foreach (int item in incident)
            if (facets.Amount(item >> 1, layer).Channel == channel) return true;
        return false;
    }

    // Seen along the ray, the other end of a facet lies on the transmitter's side of it, or opposite from its end.
    private int SumOf(ReadOnlySpan<int> incident, int layer, int channel)
    {
        int sum = 0;
        foreach (int item in incident)
        {
            int amount = sideOfTransmitter[item >> 1] * facets.Amount(item >> 1, layer).In(channel);
            sum += (item & 1) == 0 ? amount : -amount;
        }

        return sum;
    }

    // A row that goes exactly through the image of a vertex: what changes there is asked facet by facet.
    private void AddCorner(ShadowLines shadows, int vertex, int row, Scale scale)
    {
        PlanPoint p = shadows.Transmitter.Plan, v = facets.Vertices[vertex];
        long dx = ((long)v.X - p.X) * scale.Numerator, dy = ((long)v.Y - p.Y) * scale.Numerator;
        ColumnPlace place = frame.ColumnAt(p.X, dx, scale.Denominator);
        if (place.Column == frame.Columns) return;

        var weights = new CornerWeights(facets, shadows.Transmitter, frame.Z, dx, dy, scale.Denominator);
        for (int i = facets.IncidentFrom[vertex]; i < facets.IncidentFrom[vertex + 1]; i++)
        {
            int facet = facets.Incident[i] >> 1;
            ChannelAmount left = weights.At(facet, -1), right = weights.At(facet, 1);
            shadows.AddStep(left.Channel, row, place.Column, -left.Amount);
            if (place.IsOnPoint)
            {
                ChannelAmount there = weights.At(facet, 0);
                shadows.AddStep(there.Channel, row, place.Column, there.Amount);
                shadows.AddStep(there.Channel, row, place.Column + 1, -there.Amount);
                shadows.AddStep(right.Channel, row, place.Column + 1, right.Amount);
            }
            else
            {
                shadows.AddStep(right.Channel, row, place.Column, right.Amount);
            }
        }
    }

    // The transmitter stands on the facet's line: it weighs the same for every path that leaves the line, 0 along it.
    private void CastFromOwnLine(ShadowLines shadows, int facet)
    {
        (PlanPoint a, PlanPoint b) = ends[facet];
        PlanPoint p = shadows.Transmitter.Plan;
        long along = (((long)a.X - p.X) * ((long)b.X - p.X)) + (((long)a.Y - p.Y) * ((long)b.Y - p.Y));
        ChannelAmount full = facets.Amount(facet, cuts.LayerOfTransmitter);
        if (along > 0 || full.Amount == 0) return;

        int amount = along < 0 ? full.Amount / 2 : full.Amount / 4;
        shadows.AddRows(full.Channel, 0, frame.Rows - 1, amount);
        if (a.Y == b.Y)
        {
            RowPlace own = frame.RowsAt(p.Y, p.Y, Scale.One);
            if (own.IsOnRow) shadows.AddRows(full.Channel, own.Below + 1, own.Below + 1, -amount);
            return;
        }

        for (int row = 0; row < frame.Rows; row++)
        {
            long dy = (long)frame.At(0, row).Y - a.Y, dx = dy * ((long)b.X - a.X);
            long height = (long)b.Y - a.Y;
            ColumnPlace place = frame.ColumnAt(a.X, Math.Sign(height) * dx, (int)Math.Abs(height));
            if (!place.IsOnPoint) continue;
            shadows.AddStep(full.Channel, row, place.Column, -amount);
            shadows.AddStep(full.Channel, row, place.Column + 1, amount);
        }
    }
}
