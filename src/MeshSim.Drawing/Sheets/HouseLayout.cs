using System.Collections.Immutable;

namespace MeshSim.Drawing.Sheets;

/// <summary>Where on a sheet of A4's proportions the storeys of a house go, at one scale. All boxes lie on whole pixels.</summary>
/// <param name="Sheet">The whole sheet.</param>
/// <param name="Storeys">The layout of each storey; what lies beside the maps is the same in all.</param>
internal sealed record HouseLayout(PixelBox Sheet, ImmutableArray<SheetLayout> Storeys)
{
    /// <summary>
    /// Width of the sheet, pixels. On the 18 cm that a page of A4 has between its margins, a label of 13 pixels is then 7.5 points
    /// high.
    /// </summary>
    public const int Width = 880;

    /// <summary>Height of the band with the name of a storey above its map, pixels.</summary>
    public const int CaptionHeight = 24;

    /// <summary>Greatest height, pixels: with a heading and a caption it fills a page.</summary>
    private const int GreatestHeight = 1180;

    private const int Rim = 8, TitleHeight = 52, StepsHeight = 46, StripHeight = 50, FooterHeight = 22;

    /// <summary>Room around a plan for labels and doors that swing outwards, pixels.</summary>
    private const int Gutter = 46;

    /// <summary>Pixels per metre below which symbols would hide the rooms: then the house takes another sheet.</summary>
    private const double LeastScale = 36;

    /// <summary>Pixels per metre beyond which a small plan would only have thicker walls.</summary>
    private const double AmpleScale = 90;

    /// <summary>What a sheet has left for maps.</summary>
    private const int MapsWidth = Width - (2 * Rim), MapsHeight = GreatestHeight - (2 * Rim) - TitleHeight - StepsHeight - StripHeight - FooterHeight;

    /// <summary>Lays out as many sheets as the storeys need to stay legible: each takes as many as it can, lowest first.</summary>
    /// <param name="storeys">The part of the plan of each storey, lowest first, at least one.</param>
    public static ImmutableArray<HouseLayout> Sheets(IReadOnlyList<PlanBounds> storeys)
    {
        var sheets = ImmutableArray.CreateBuilder<HouseLayout>();
        for (int first = 0; first < storeys.Count;)
        {
            int count = storeys.Count - first;
            while (count > 1 && Pack([.. storeys.Skip(first).Take(count)]).PixelsPerMetre < LeastScale) count--;
            sheets.Add(Of([.. storeys.Skip(first).Take(count)]));
            first += count;
        }

        return sheets.ToImmutable();
    }

    private static StoreyPacking Pack(PlanBounds[] storeys) => StoreyPacking.Of(storeys, MapsWidth, MapsHeight, 2 * Gutter, CaptionHeight + (2 * Gutter));

    private static HouseLayout Of(PlanBounds[] storeys)
    {
        StoreyPacking packing = Pack(storeys);
        double scale = Math.Min(packing.PixelsPerMetre, AmpleScale);
        const int top = Rim + TitleHeight;
        (PixelBox[] maps, int bottom) = MapsOf(storeys, packing.Columns, scale, top);
        int steps = bottom + StepsHeight, strip = steps + StripHeight, footer = strip + FooterHeight;
        var shared = new SheetLayout
        {
            Sheet = new(0, 0, Width, footer + Rim),
            Title = new(Rim, Rim, Width - Rim, top),
            Map = default,
            Column = new(Rim, bottom, Width - Rim, steps),
            Strip = new(Rim, steps, Width - Rim, strip),
            Footer = new(Rim, strip, Width - Rim, footer),
            Projection = new(scale, default),
        };
        return new(shared.Sheet, [.. maps.Zip(storeys, (map, plan) => shared with { Map = map, Projection = Centred(plan, map, scale) })]);
    }

    /// <summary>The boxes of the maps, each column as wide as its widest plan needs and a share of what is left over.</summary>
    private static (PixelBox[] Maps, int Bottom) MapsOf(PlanBounds[] storeys, IReadOnlyList<int> columns, double scale, int top)
    {
        List<PixelBox> maps = [];
        int[] widths = [.. columns.Select((count, c) => Needed(storeys.Skip(columns.Take(c).Sum()).Take(count).Max(plan => plan.WidthMetres), scale))];
        int spare = (MapsWidth - widths.Sum()) / columns.Count, left = Rim, bottom = top;
        for (int c = 0; c < columns.Count; c++)
        {
            int right = c + 1 < columns.Count ? left + widths[c] + spare : Width - Rim, y = top;
            for (int i = 0; i < columns[c]; i++)
            {
                int low = y + CaptionHeight + Needed(storeys[maps.Count].HeightMetres, scale);
                maps.Add(new(left, y + CaptionHeight, right, low));
                y = low;
            }

            left = right;
            bottom = Math.Max(bottom, y);
        }

        return ([.. maps], bottom);
    }

    private static int Needed(double metres, double scale) => (int)Math.Floor(metres * scale) + (2 * Gutter);

    private static Projection Centred(PlanBounds plan, PixelBox map, double scale) => new(scale, new(
        (float)(map.Centre.X - ((plan.Low.XMetres + plan.High.XMetres) / 2 * scale)),
        (float)(map.Centre.Y + ((plan.Low.YMetres + plan.High.YMetres) / 2 * scale))));
}
