using System.Collections.Immutable;
using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing.Plans;

/// <summary>Where on the sheet of a plan each part goes: the storeys in columns, the higher ones first, all at one scale, and beside them a column of words.</summary>
/// <param name="Sheet">The whole sheet.</param>
/// <param name="Title">Title and subtitle.</param>
/// <param name="Maps">The storeys, highest first.</param>
/// <param name="Projections">From plan to sheet, likewise.</param>
/// <param name="Column">Remarks and legend.</param>
/// <param name="Strip">Scale bar and north arrow.</param>
internal sealed record PlanLayout(
    PixelBox Sheet, PixelBox Title, ImmutableArray<PixelBox> Maps, ImmutableArray<Projection> Projections, PixelBox Column, PixelBox Strip)
{
    /// <summary>Width of the column, pixels.</summary>
    public const int ColumnWidth = 430;

    private const int Rim = 24, TitleHeight = 72, StripHeight = 64, Width = 1500, Gutter = 64, LeastMapHeight = 240;

    /// <summary>Pixels per metre: the least at which a small room holds its name, and the most that a small plan needs.</summary>
    private const double LeastScale = 36, AmpleScale = 110;

    /// <summary>Height that a column of storeys may take while the scale grows, pixels.</summary>
    private const int FairHeight = 1500;

    /// <summary>Lays out a sheet.</summary>
    /// <param name="storeys">The part of the plan of each storey, highest first.</param>
    /// <param name="columnHeight">What the column needs, pixels.</param>
    public static PlanLayout Of(IReadOnlyList<PlanBounds> storeys, float columnHeight)
    {
        const int mapWidth = Width - ColumnWidth - (3 * Rim), top = Rim + TitleHeight;
        StoreyPacking packing = StoreyPacking.Of(storeys, mapWidth, FairHeight, 2 * Gutter, 2 * Gutter);
        double scale = Math.Clamp(packing.PixelsPerMetre, LeastScale, AmpleScale);
        (List<PixelBox> maps, int low) = MapsOf(storeys, packing.Columns, scale, top, mapWidth);
        int right = (int)maps.Max(map => map.Right), bottom = Math.Max(low + StripHeight, top + (int)Math.Ceiling(columnHeight));
        return new(
            new(0, 0, right + Rim + ColumnWidth + Rim, bottom + Rim),
            new(Rim, Rim, right, top),
            [.. maps],
            [.. maps.Zip(storeys, (map, plan) => Centred(plan, map, scale))],
            new(right + Rim, top, right + Rim + ColumnWidth, bottom),
            new(Rim, low, right, low + StripHeight));
    }

    // Each column is as wide as its widest storey; what is left of the width they share.
    private static (List<PixelBox> Maps, int Bottom) MapsOf(IReadOnlyList<PlanBounds> storeys, IReadOnlyList<int> columns, double scale, int top, int mapWidth)
    {
        List<PixelBox> maps = [];
        int[] widths = [.. columns.Select((count, c) => Needed(storeys.Skip(columns.Take(c).Sum()).Take(count).Max(plan => plan.WidthMetres), scale))];
        int spare = Math.Max(0, mapWidth - widths.Sum()) / columns.Count, left = Rim, bottom = top;
        for (int c = 0; c < columns.Count; c++)
        {
            int right = left + widths[c] + spare, y = top;
            foreach (PlanBounds plan in storeys.Skip(maps.Count).Take(columns[c]).ToArray())
            {
                int low = y + Math.Max(LeastMapHeight, Needed(plan.HeightMetres, scale));
                maps.Add(new(left, y, right, low));
                y = low;
            }

            (left, bottom) = (right, Math.Max(bottom, y));
        }

        return (maps, bottom);
    }

    private static int Needed(double metres, double scale) => (int)Math.Ceiling(metres * scale) + (2 * Gutter);

    private static Projection Centred(PlanBounds plan, PixelBox map, double scale) => new(scale, new(
        (float)(map.Centre.X - ((plan.Low.XMetres + plan.High.XMetres) / 2 * scale)),
        (float)(map.Centre.Y + ((plan.Low.YMetres + plan.High.YMetres) / 2 * scale))));
}
