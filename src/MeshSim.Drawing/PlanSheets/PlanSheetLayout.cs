using System.Collections.Immutable;
using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing.PlanSheets;

/// <summary>Where the key stands on a sheet.</summary>
internal enum KeyPlace
{
    /// <summary>Right of the plan, above the title block.</summary>
    Right,

    /// <summary>Below the plan, left of the title block.</summary>
    Below,

    /// <summary>On a sheet of its own.</summary>
    Elsewhere,
}

/// <summary>How a sheet is divided, in pixels of the drawing.</summary>
/// <param name="Paper">The paper.</param>
/// <param name="KeyPlace">Where the key stands.</param>
/// <param name="Map">The frame around the plan.</param>
/// <param name="Strip">Scale bar and north arrow, inside the frame below the plan.</param>
/// <param name="Key">Columns for the key.</param>
/// <param name="Title">The title block.</param>
internal sealed record PlanSheetLayout(Paper Paper, KeyPlace KeyPlace, PixelBox Map, PixelBox Strip, ImmutableArray<PixelBox> Key, PixelBox Title)
{
    /// <summary>Width of a column of the key: id, kind, mounting, circuit and switch of a device in 2.3 mm lettering.</summary>
    public static readonly float KeyWidth = Paper.Pixels(147);

    /// <summary>Unprintable rim of common printers, and room for a thumb.</summary>
    private static readonly float Rim = Paper.Pixels(10);

    private static readonly float Gap = Paper.Pixels(4);

    private static readonly float StripHeight = Paper.Pixels(13);

    /// <summary>Around the plan, for symbols and numbers outside.</summary>
    private static readonly float Gutter = Paper.Pixels(9);

    /// <summary>The part of the map that the plan may fill: room for symbols and numbers is left around it.</summary>
    public PixelBox Plan => new(Map.Left + Gutter, Map.Top + Gutter, Map.Right - Gutter, Strip.Top - Gutter);

    /// <summary>Divides a sheet.</summary>
    /// <param name="paper">The paper.</param>
    /// <param name="place">Where the key stands.</param>
    /// <param name="keyHeight">What the key needs in one column, pixels.</param>
    /// <param name="titleHeight">What a title block of a width needs, pixels.</param>
    /// <returns>Null when the paper is too small for that.</returns>
    public static PlanSheetLayout? Of(Paper paper, KeyPlace place, float keyHeight, Func<float, float> titleHeight)
    {
        PixelBox page = PageOf(paper);
        PlanSheetLayout layout = place switch
        {
            KeyPlace.Right => WithKeyRight(paper, page, titleHeight(KeyWidth)),
            KeyPlace.Below => WithKeyBelow(paper, page, keyHeight, titleHeight(page.Width - KeyWidth - Gap)),
            _ => WithoutKey(paper, page, titleHeight(page.Width)),
        };
        bool hasRoom = layout.Plan.Width > Gutter && layout.Plan.Height > Gutter && layout.Title.Width >= KeyWidth / 2;
        return hasRoom ? layout : null;
    }

    /// <summary>The columns for the key on a sheet that holds nothing else but a title block.</summary>
    public static PlanSheetLayout OfKeySheet(Paper paper, Func<float, float> titleHeight)
    {
        PixelBox page = PageOf(paper);
        float top = page.Bottom - titleHeight(page.Width);
        int columns = Math.Max(1, (int)((page.Width + Gap) / (KeyWidth + Gap)));
        PixelBox[] key = [.. Enumerable.Range(0, columns).Select(column => new PixelBox(
            page.Left + (column * (KeyWidth + Gap)), page.Top, page.Left + (column * (KeyWidth + Gap)) + KeyWidth, top - Gap))];
        return new(paper, KeyPlace.Elsewhere, default, default, [.. key], new(page.Left, top, page.Right, page.Bottom));
    }

    private static PixelBox PageOf(Paper paper) => new(
        Rim, Rim, Paper.Pixels(paper.WidthMillimetres) - Rim, Paper.Pixels(paper.HeightMillimetres) - Rim);

    private static PlanSheetLayout WithKeyRight(Paper paper, PixelBox page, float titleHeight)
    {
        float left = page.Right - KeyWidth, top = page.Bottom - titleHeight;
        return Framed(paper, KeyPlace.Right, page with { Right = left - Gap }, [new(left, page.Top, page.Right, top - Gap)], new(left, top, page.Right, page.Bottom));
    }

    private static PlanSheetLayout WithKeyBelow(Paper paper, PixelBox page, float keyHeight, float titleHeight)
    {
        float top = page.Bottom - Math.Max(keyHeight, titleHeight), split = page.Left + KeyWidth;
        return Framed(
            paper, KeyPlace.Below, page with { Bottom = top - Gap }, [new(page.Left, top, split, page.Bottom)],
            new(split + Gap, page.Bottom - titleHeight, page.Right, page.Bottom));
    }

    private static PlanSheetLayout WithoutKey(Paper paper, PixelBox page, float titleHeight)
    {
        float top = page.Bottom - titleHeight;
        return Framed(paper, KeyPlace.Elsewhere, page with { Bottom = top - Gap }, [], new(page.Left, top, page.Right, page.Bottom));
    }

    private static PlanSheetLayout Framed(Paper paper, KeyPlace place, PixelBox map, ImmutableArray<PixelBox> key, PixelBox title) =>
        new(paper, place, map, new(map.Left + Gap, map.Bottom - StripHeight, map.Right - Gap, map.Bottom), key, title);
}
