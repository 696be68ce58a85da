using System.Collections.Immutable;
using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing.PlanSheets;

/// <summary>Scale, paper and division of the sheets of one storey.</summary>
/// <param name="Scale">What a length is divided by.</param>
/// <param name="Layout">The division.</param>
/// <param name="Columns">Sheets side by side; 1 unless the storey is too large.</param>
/// <param name="Rows">Sheets below each other.</param>
internal sealed record SheetChoice(int Scale, PlanSheetLayout Layout, int Columns, int Rows)
{
    /// <summary>Sheets of one storey beyond which nobody would paste them together.</summary>
    public const int MostTiles = 24;

    /// <summary>How much of the building neighbouring sheets share, so that they can be laid together.</summary>
    private static readonly float Overlap = Paper.Pixels(10);

    private static readonly ImmutableArray<(bool IsLandscape, KeyPlace Key)> Arrangements =
    [
        (true, KeyPlace.Right), (false, KeyPlace.Right), (false, KeyPlace.Below), (true, KeyPlace.Below),
        (false, KeyPlace.Elsewhere), (true, KeyPlace.Elsewhere),
    ];

    /// <summary>How many sheets show the plan.</summary>
    public long Tiles => (long)Columns * Rows;

    /// <summary>
    /// The largest scale at which the storey fits on one sheet; of the papers the smallest, preferably with the whole key on it. A
    /// storey that fits at no scale is divided among sheets of the largest paper at the smallest scale.
    /// </summary>
    /// <param name="options">What is prescribed.</param>
    /// <param name="bounds">What must be shown.</param>
    /// <param name="keyHeight">What the key needs in one column, pixels.</param>
    /// <param name="titleHeight">What a title block of a width needs, pixels.</param>
    public static SheetChoice For(SheetOptions options, PlanBounds bounds, float keyHeight, Func<float, float> titleHeight)
    {
        ImmutableArray<int> scales = options.Scale is { } scale ? [scale] : SheetOptions.Scales;
        ImmutableArray<PaperFormat> papers = options.Paper is { } paper ? [paper] : [PaperFormat.A4, PaperFormat.A3];
        foreach (int tried in scales)
        {
            PlanSheetLayout[] fitting = [.. Layouts(papers, keyHeight, titleHeight).Where(layout => Fits(layout, tried, bounds))];
            if (fitting.FirstOrDefault(layout => HoldsKey(layout, keyHeight)) is { } whole) return new(tried, whole, 1, 1);
            if (fitting.Length > 0) return new(tried, fitting[0], 1, 1);
        }

        return Tiled(scales[^1], papers[^1], bounds, keyHeight, titleHeight);
    }

    /// <summary>Where the plan lies on one of the sheets.</summary>
    /// <param name="bounds">What must be shown.</param>
    /// <param name="column">The sheet, from the left.</param>
    /// <param name="row">The sheet, from above.</param>
    public Projection ProjectionOf(PlanBounds bounds, int column, int row)
    {
        PixelBox plan = Layout.Plan;
        double perMetre = Paper.PixelsPerMetre(Scale);
        double width = bounds.WidthMetres * perMetre, height = bounds.HeightMetres * perMetre;
        double left = Columns == 1 ? plan.Centre.X - (width / 2) : plan.Left - (column * (plan.Width - Overlap));
        double top = Rows == 1 ? plan.Centre.Y - (height / 2) : plan.Top - (row * (plan.Height - Overlap));
        return new(perMetre, new((float)(left - (bounds.Low.XMetres * perMetre)), (float)(top + (bounds.High.YMetres * perMetre))));
    }

    private static SheetChoice Tiled(int scale, PaperFormat paper, PlanBounds bounds, float keyHeight, Func<float, float> titleHeight)
    {
        double perMetre = Paper.PixelsPerMetre(scale);
        return Layouts([paper], keyHeight, titleHeight)
            .Where(layout => layout.KeyPlace == KeyPlace.Elsewhere)
            .Select(layout => new SheetChoice(scale, layout, Pieces(bounds.WidthMetres * perMetre, layout.Plan.Width), Pieces(bounds.HeightMetres * perMetre, layout.Plan.Height)))
            .MinBy(choice => choice.Tiles)!;
    }

    private static int Pieces(double length, float available) =>
        length <= available ? 1 : 1 + (int)Math.Ceiling((length - available) / (available - Overlap));

    private static IEnumerable<PlanSheetLayout> Layouts(ImmutableArray<PaperFormat> papers, float keyHeight, Func<float, float> titleHeight) =>
        from paper in papers
        from arrangement in Arrangements
        let layout = PlanSheetLayout.Of(new(paper, arrangement.IsLandscape), arrangement.Key, keyHeight, titleHeight)
        where layout is not null
        select layout;

    private static bool Fits(PlanSheetLayout layout, int scale, PlanBounds bounds)
    {
        double perMetre = Paper.PixelsPerMetre(scale);
        return bounds.WidthMetres * perMetre <= layout.Plan.Width && bounds.HeightMetres * perMetre <= layout.Plan.Height;
    }

    private static bool HoldsKey(PlanSheetLayout layout, float keyHeight) => layout.Key.Any(box => box.Height >= keyHeight);
}
