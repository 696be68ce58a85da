using System.Collections.Immutable;
using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing.Plans;

/// <summary>Where on the sheet of a plan each part goes: the storeys one above the other as they stand, all at one scale, a column beside them.</summary>
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

    /// <summary>Greatest height of all maps together at which the scale still grows, pixels.</summary>
    private const int FairHeight = 1700;

    /// <summary>Lays out a sheet.</summary>
    /// <param name="storeys">The part of the plan of each storey, highest first.</param>
    /// <param name="columnHeight">What the column needs, pixels.</param>
    public static PlanLayout Of(IReadOnlyList<PlanBounds> storeys, float columnHeight)
    {
        int mapWidth = Width - ColumnWidth - (3 * Rim);
        double widest = Math.Max(1, storeys.Max(plan => plan.WidthMetres)), deepest = Math.Max(1, storeys.Sum(plan => plan.HeightMetres));
        double byHeight = Math.Max((FairHeight - (2 * Gutter * storeys.Count)) / deepest, LeastScale);
        double scale = Math.Min(Math.Min((mapWidth - (2 * Gutter)) / widest, byHeight), AmpleScale);

        ImmutableArray<PixelBox>.Builder maps = ImmutableArray.CreateBuilder<PixelBox>();
        ImmutableArray<Projection>.Builder projections = ImmutableArray.CreateBuilder<Projection>();
        int top = Rim + TitleHeight;
        foreach (PlanBounds plan in storeys)
        {
            int height = Math.Max(LeastMapHeight, (int)Math.Ceiling(plan.HeightMetres * scale) + (2 * Gutter));
            PixelBox map = new(Rim, top, Rim + mapWidth, top + height);
            maps.Add(map);
            projections.Add(new(scale, new(
                (float)(map.Centre.X - ((plan.Low.XMetres + plan.High.XMetres) / 2 * scale)),
                (float)(map.Centre.Y + ((plan.Low.YMetres + plan.High.YMetres) / 2 * scale)))));
            top += height;
        }

        int bottom = Math.Max(top + StripHeight, Rim + TitleHeight + (int)Math.Ceiling(columnHeight));
        return new(
            new(0, 0, Width, bottom + Rim),
            new(Rim, Rim, Width - Rim, Rim + TitleHeight),
            maps.ToImmutable(),
            projections.ToImmutable(),
            new(Width - Rim - ColumnWidth, Rim + TitleHeight, Width - Rim, bottom),
            new(Rim, top, Rim + mapWidth, top + StripHeight));
    }
}
