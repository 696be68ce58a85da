namespace MeshSim.Drawing.Sheets;

/// <summary>Where on the sheet each part goes. All boxes lie on whole pixels.</summary>
internal sealed record SheetLayout
{
    /// <summary>White rim of the sheet and space between its parts, pixels.</summary>
    public const int Rim = 28;

    /// <summary>Width of the column with legend and lists, pixels.</summary>
    public const int ColumnWidth = 336;

    /// <summary>Greatest side of a sheet, pixels: what image viewers and picture libraries surely open.</summary>
    public const int LongestSide = 16_384;

    private const int TitleHeight = 78;
    private const int StripHeight = 62;
    private const int FooterHeight = 26;

    /// <summary>Room around the plan for labels and doors that swing outwards, pixels.</summary>
    private const int Gutter = 72;

    /// <summary>Least width of the map, pixels: below, the title has no room.</summary>
    private const int LeastMapWidth = 580;

    /// <summary>Pixels per metre at which a small room still holds its name beside two symbols.</summary>
    private const double LegibleScale = 80;

    /// <summary>Pixels per metre beyond which a small plan would only have thicker walls.</summary>
    private const double AmpleScale = 150;

    /// <summary>The whole sheet.</summary>
    public required PixelBox Sheet { get; init; }

    /// <summary>Title and subtitle.</summary>
    public required PixelBox Title { get; init; }

    /// <summary>The map with its gutter: where labels may go.</summary>
    public required PixelBox Map { get; init; }

    /// <summary>Scale bar and north arrow, below the map.</summary>
    public required PixelBox Strip { get; init; }

    /// <summary>Legend and lists, right of the map.</summary>
    public required PixelBox Column { get; init; }

    /// <summary>The line that says what made the picture.</summary>
    public required PixelBox Footer { get; init; }

    /// <summary>From plan to sheet.</summary>
    public required Projection Projection { get; init; }

    /// <summary>Lays out a sheet.</summary>
    /// <param name="bounds">The part of the plan to show.</param>
    /// <param name="size">How large.</param>
    /// <param name="columnHeight">What legend and lists need, pixels.</param>
    /// <exception cref="ArgumentException">The sheet would be longer than <see cref="LongestSide"/>.</exception>
    public static SheetLayout Of(PlanBounds bounds, PictureSize size, float columnHeight)
    {
        double scale = size.Scale ?? FittingScale(bounds, size.Width ?? (int)PictureSize.WidthPixels.Min);
        int planWidth = (int)Math.Ceiling(bounds.WidthMetres * scale), planHeight = (int)Math.Ceiling(bounds.HeightMetres * scale);
        int mapWidth = Math.Max(planWidth + (2 * Gutter), LeastMapWidth);
        int mapHeight = Math.Max(planHeight + (2 * Gutter), (int)Math.Ceiling(columnHeight) - StripHeight);
        int top = Rim + TitleHeight, bottom = top + mapHeight + StripHeight, right = Rim + mapWidth;
        int sheetWidth = right + Rim + ColumnWidth + Rim, sheetHeight = bottom + FooterHeight + Rim;
        if (Math.Max(sheetWidth, sheetHeight) > LongestSide)
        {
            throw new ArgumentException(
                FormattableString.Invariant($"the sheet would be {sheetWidth} by {sheetHeight} pixels; at most {LongestSide}: take a smaller scale"),
                nameof(size));
        }

        int left = Rim + ((mapWidth - planWidth) / 2), low = top + ((mapHeight + planHeight) / 2);
        return new()
        {
            Sheet = new(0, 0, sheetWidth, sheetHeight),
            Title = new(Rim, Rim, sheetWidth - Rim, top),
            Map = new(Rim, top, right, top + mapHeight),
            Strip = new(Rim, top + mapHeight, right, bottom),
            Column = new(right + Rim, top, sheetWidth - Rim, bottom),
            Footer = new(Rim, bottom, sheetWidth - Rim, bottom + FooterHeight),
            Projection = new(scale, new((float)(left - (bounds.Low.XMetres * scale)), (float)(low + (bounds.Low.YMetres * scale)))),
        };
    }

    /// <summary>
    /// The scale at which a plan fills the width left of the column without being taller than the sheet is wide. A long narrow
    /// plan may be taller, rather than so small that symbols hide its rooms, as far as a sheet may go.
    /// </summary>
    private static double FittingScale(PlanBounds bounds, int sheetWidth)
    {
        int width = sheetWidth - ColumnWidth - (3 * Rim) - (2 * Gutter);
        const int AboutThePlan = TitleHeight + StripHeight + FooterHeight + (2 * Rim) + (2 * Gutter);
        double heightMetres = Math.Max(bounds.HeightMetres, 1);
        double scale = Math.Min(width / Math.Max(bounds.WidthMetres, 1), Math.Max((sheetWidth - AboutThePlan) / heightMetres, LegibleScale));
        return Math.Min(Math.Min(scale, AmpleScale), (LongestSide - AboutThePlan) / heightMetres);
    }
}
