using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>
/// The shadow of one object. On the plane of the grid the places whose path meets a convex solid form a convex region, so each
/// row holds one run of them. Its ends are estimated from the corners and then settled by the tracer's own question.
/// </summary>
internal sealed class ObjectShadows(ObjectCrossings solid, GridFrame frame)
{
    // By how much the estimate is widened, in lattice steps along y and in columns; the exact question takes it back.
    private const double SpareSteps = 1e-3, SpareColumns = 1e-3, SpareShare = 1e-12;

    /// <summary>The first and the last column of a row that lie in the shadow; none when the first is greater.</summary>
    public (int First, int Last) Run(Position transmitter, int row)
    {
        (int First, int Last) none = (0, -1);
        if (SharesWithinHeight(transmitter.Z) is not { } shares) return none;

        double rowDy = (double)frame.At(0, row).Y - transmitter.Plan.Y;
        bool isWithin = transmitter.Z >= solid.Low && transmitter.Z <= solid.High && ContainsOnPlan(transmitter.Plan);
        (double left, double right) = rowDy == 0 || isWithin
            ? (0, frame.Columns - 1.0)
            : Estimate(transmitter.Plan, rowDy, shares);
        int first = (int)Math.Clamp(Math.Ceiling(left - SpareColumns), 0, frame.Columns);
        int last = (int)Math.Clamp(Math.Floor(right + SpareColumns), -1, frame.Columns - 1);
        while (first <= last && !IsShaded(transmitter, first, row)) first++;
        while (first <= last && !IsShaded(transmitter, last, row)) last--;
        return first <= last ? (first, last) : none;
    }

    private bool IsShaded(Position transmitter, int column, int row) =>
        solid.Meets(new TracedPath(transmitter, new(frame.At(column, row), frame.Z)), out _);

    private bool ContainsOnPlan(PlanPoint point)
    {
        PlanPoint a = solid.Corners[^1];
        foreach (PlanPoint b in solid.Corners)
        {
            if (Predicates.SideOf(a, b, point) == Side.Right) return false;
            a = b;
        }

        return true;
    }

    private (double From, double To)? SharesWithinHeight(int transmitterZ)
    {
        double rise = (double)frame.Z - transmitterZ;
        if (rise == 0) return transmitterZ >= solid.Low && transmitterZ <= solid.High ? (0, 1) : null;
        double atLow = ((double)solid.Low - transmitterZ) / rise, atHigh = ((double)solid.High - transmitterZ) / rise;
        double from = Math.Max(0, Math.Min(atLow, atHigh)), to = Math.Min(1, Math.Max(atLow, atHigh));
        return from <= to + SpareShare ? (Math.Min(from, to), to) : null;
    }

    // Along the row the shadow's ends come from corners of the footprint or from where a path enters or leaves its height.
    private (double Left, double Right) Estimate(PlanPoint transmitter, double rowDy, (double From, double To) shares)
    {
        double left = double.PositiveInfinity, right = double.NegativeInfinity;
        PlanPoint a = solid.Corners[^1];
        foreach (PlanPoint b in solid.Corners)
        {
            double share = (b.Y - (double)transmitter.Y) / rowDy, spare = SpareSteps / Math.Abs(rowDy);
            if (share >= shares.From - spare && share <= shares.To + spare)
                Take(b.X, Math.Clamp(share, shares.From, shares.To));
            TakeOnEdge(a, b, shares.From);
            TakeOnEdge(a, b, shares.To);
            a = b;
        }

        return (left, right);

        void TakeOnEdge(PlanPoint start, PlanPoint end, double share)
        {
            double y = transmitter.Y + (share * rowDy), low = Math.Min(start.Y, end.Y), high = Math.Max(start.Y, end.Y);
            if (y < low - SpareSteps || y > high + SpareSteps) return;
            if (low == high)
            {
                Take(start.X, share);
                Take(end.X, share);
                return;
            }

            double part = Math.Clamp((y - start.Y) / ((double)end.Y - start.Y), 0, 1);
            Take(start.X + (part * ((double)end.X - start.X)), share);
        }

        void Take(double x, double share)
        {
            // Beside the transmitter itself the shadow has no end.
            double away = x - transmitter.X;
            double end = away > 0 ? double.PositiveInfinity : double.NegativeInfinity;
            double column = share > 0 ? frame.ColumnOf(transmitter.X + (away / share)) : end;
            (left, right) = (Math.Min(left, column), Math.Max(right, column));
        }
    }
}
