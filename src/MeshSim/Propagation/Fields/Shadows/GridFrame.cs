using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>The rows next to a height on the plan, as far as the grid reaches.</summary>
/// <param name="Below">The last row strictly below, −1 when none.</param>
/// <param name="Above">The first row strictly above, the number of rows when none.</param>
internal readonly record struct RowPlace(int Below, int Above)
{
    /// <summary>Whether a row lies exactly there; then it is <see cref="Below"/> + 1.</summary>
    public bool IsOnRow => Above - Below == 2;
}

/// <summary>The columns next to a place on a row.</summary>
/// <param name="Column">The first column at or beyond the place, 0 to the number of columns.</param>
/// <param name="IsOnPoint">Whether that column's grid point lies exactly there.</param>
internal readonly record struct ColumnPlace(int Column, bool IsOnPoint);

/// <summary>An enlargement about the transmitter: transmitter + numerator / denominator · (point − transmitter).</summary>
/// <param name="Numerator">Above 0.</param>
/// <param name="Denominator">Above 0.</param>
internal readonly record struct Scale(int Numerator, int Denominator)
{
    public static readonly Scale One = new(1, 1);

    public double Factor => Numerator / (double)Denominator;
}

/// <summary>Where rows and columns of a grid lie, answered in whole numbers.</summary>
internal readonly struct GridFrame(FieldGrid grid)
{
    public readonly int OriginX = grid.Origin.X, OriginY = grid.Origin.Y, Step = grid.Step;
    public readonly int Columns = grid.Columns, Rows = grid.Rows, Z = grid.Z;
    private readonly double perStep = 1.0 / grid.Step;

    public PlanPoint At(int column, int row) => new(OriginX + (column * Step), OriginY + (row * Step));

    /// <summary>The rows next to y(transmitter) + scale · (y − y(transmitter)).</summary>
    public RowPlace RowsAt(int transmitterY, int y, Scale scale)
    {
        long numerator = (((long)transmitterY - OriginY) * scale.Denominator) + (((long)y - transmitterY) * scale.Numerator);
        long denominator = (long)Step * scale.Denominator;
        (long row, long rest) = FloorDivide(numerator, denominator);
        long below = rest == 0 ? row - 1 : row;
        return new((int)Math.Clamp(below, -1, Rows - 1), (int)Math.Clamp(row + 1, 0, Rows));
    }

    /// <summary>The columns next to x(transmitter) + dx / denominator.</summary>
    public ColumnPlace ColumnAt(int transmitterX, long dx, int denominator)
    {
        long numerator = (((long)transmitterX - OriginX) * denominator) + dx;
        (long column, long rest) = FloorDivide(numerator, (long)Step * denominator);
        bool isOnPoint = rest == 0 && column >= 0 && column < Columns;
        return new((int)Math.Clamp(rest == 0 ? column : column + 1, 0, Columns), isOnPoint);
    }

    /// <summary>Column coordinate of an x, rounded.</summary>
    public double ColumnOf(double x) => (x - OriginX) * perStep;

    private static (long Quotient, long Remainder) FloorDivide(long numerator, long denominator)
    {
        (long quotient, long rest) = Math.DivRem(numerator, denominator);
        return rest < 0 ? (quotient - 1, rest + denominator) : (quotient, rest);
    }
}
