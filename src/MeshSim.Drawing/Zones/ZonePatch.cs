using System.Collections.Immutable;
using MeshSim.Drawing.Sheets;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation.Fields;

namespace MeshSim.Drawing.Zones;

/// <summary>A piece of a zone that hangs together.</summary>
/// <param name="AreaSquareMetres">Its area, m².</param>
/// <param name="Points">The grid's points in it, on the sheet.</param>
internal sealed record ZonePatch(double AreaSquareMetres, ImmutableArray<Pixel> Points)
{
    /// <summary>Its area in words.</summary>
    public string Area => FormattableString.Invariant($"{AreaSquareMetres:0.#}\u00A0m²");

    /// <summary>How far it reaches up and down the sheet, from the middle of its first point to that of its last, pixels.</summary>
    public float HeightPixels => Points.Max(point => point.Y) - Points.Min(point => point.Y);

    /// <summary>The pieces of a zone, the largest first, then in the order of the grid. Points side by side hang together, whatever stands between.</summary>
    /// <param name="inside">Above 0 in the zone.</param>
    /// <param name="projection">From the plan to the sheet.</param>
    public static ImmutableArray<ZonePatch> Of(Field inside, Projection projection)
    {
        FieldGrid grid = inside.Grid;
        double stepMetres = Lattice.ToMetres(grid.Step);
        bool[] seen = new bool[inside.Values.Length];
        return
        [
            .. Enumerable.Range(0, inside.Values.Length).Select(PieceFrom).Where(piece => piece.Count > 0).OrderByDescending(piece => piece.Count)
                .Select(piece => new ZonePatch(piece.Count * stepMetres * stepMetres, [.. piece.Order().Select(Place)])),
        ];

        List<int> PieceFrom(int start)
        {
            List<int> piece = [];
            Add(start);
            for (int next = 0; next < piece.Count; next++)
            {
                (int column, int row) = (piece[next] % grid.Columns, piece[next] / grid.Columns);
                if (column > 0) Add(piece[next] - 1);
                if (column < grid.Columns - 1) Add(piece[next] + 1);
                if (row > 0) Add(piece[next] - grid.Columns);
                if (row < grid.Rows - 1) Add(piece[next] + grid.Columns);
            }

            return piece;

            void Add(int point)
            {
                if (seen[point] || inside.Values[point] <= 0) return;
                seen[point] = true;
                piece.Add(point);
            }
        }

        Pixel Place(int point) => projection.ToPixel(grid.At(point % grid.Columns, point / grid.Columns).Plan);
    }
}
