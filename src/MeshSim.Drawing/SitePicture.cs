using System.Collections.Immutable;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Labels;
using MeshSim.Drawing.Layers;
using MeshSim.Drawing.Legends;
using MeshSim.Drawing.Palettes;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Symbols;
using MeshSim.Drawing.Zones;
using MeshSim.FloorPlans;
using MeshSim.Propagation.Fields;
using MeshSim.Studies;

namespace MeshSim.Drawing;

/// <summary>The picture of recommended sites on one storey: numbered, each with the zone in which any outlet does as well.</summary>
public static class SitePicture
{
    /// <summary>The grid that the provenance names, m above the floor: an outlet's height has no say in the picture.</summary>
    private const double GridStepMetres = 0.25, GridHeightMetres = 1;

    /// <summary>What is drawn, from the bottom to the top.</summary>
    internal static readonly ImmutableArray<ILayer> Layers =
    [
        new PaperLayer(),
        new ZoneLayer(),
        new StairwellLayer(),
        new ObjectLayer(),
        new WallLayer(),
        new OpeningLayer(),
        new LabelLayer(),
        new DeviceLayer(),
        new RepeaterLayer(),
        new TitleLayer(),
        new ColumnLayer(),
        new ScaleBarLayer(),
        new NorthLayer(),
    ];

    /// <summary>Draws the sites. The same input gives the same bytes on one platform.</summary>
    /// <param name="coverage">The network whose devices are shown.</param>
    /// <param name="storey">One of the home's storeys.</param>
    /// <param name="plan">The sites.</param>
    /// <param name="size">How large.</param>
    /// <param name="format">Which kind of file.</param>
    /// <exception cref="ArgumentException">The home has no such storey, or the sheet would be too large.</exception>
    public static byte[] Draw(NetworkCoverage coverage, StoreyName storey, SitePlan plan, PictureSize size, PictureFormat format)
    {
        using var ink = new Ink();
        return SheetPainter.Of(ContentsOf(coverage, storey, plan, size, ink), Layers, ink).File(format);
    }

    /// <summary>Writes the sites as SVG to stand inside a page.</summary>
    /// <param name="coverage">The network whose devices are shown.</param>
    /// <param name="storey">One of the home's storeys.</param>
    /// <param name="plan">The sites.</param>
    /// <param name="size">How large.</param>
    /// <param name="id">Begins every id of the picture; unique in the page.</param>
    /// <exception cref="ArgumentException">The home has no such storey, or the sheet would be too large.</exception>
    public static string Inline(NetworkCoverage coverage, StoreyName storey, SitePlan plan, PictureSize size, string id)
    {
        ArgumentException.ThrowIfNullOrEmpty(id);
        using var ink = new Ink();
        return SheetPainter.Of(ContentsOf(coverage, storey, plan, size, ink), Layers, ink).Inline(id);
    }

    /// <summary>Decides what the picture shows.</summary>
    internal static MapContents ContentsOf(NetworkCoverage coverage, StoreyName name, SitePlan plan, PictureSize size, Ink ink)
    {
        ArgumentNullException.ThrowIfNull(coverage);
        ArgumentNullException.ThrowIfNull(plan);
        Storey storey = coverage.Home.FloorPlan.Storey(name);
        FieldGrid grid = FieldGrid.Over(coverage.Home.FloorPlan, name, GridStepMetres, GridHeightMetres);
        Field nothing = new(grid, [.. Enumerable.Repeat(float.NaN, grid.Count)]);
        var scale = new MarginScale(coverage.DesignMargin);
        Column column = SiteColumn.Of(coverage, plan, storey, ink);
        SheetLayout layout = SheetLayout.Of(PlanBounds.Of(coverage.Home, storey), size, column.HeightPixels);
        var contents = new MapContents
        {
            Coverage = coverage,
            Map = new MarginMap { Network = coverage.Network.Name, Storey = name, Margin = nothing, DesignMargin = coverage.DesignMargin, Rooms = [] },
            Storey = storey,
            Layout = layout,
            Scale = scale,
            Words = SheetWords.Of(coverage, plan, name, grid),
            RoomNotes = ImmutableDictionary<RoomName, string>.Empty,
            Raster = new(nothing, storey, scale, layout),
            Contours = [],
            Routes = new([], []),
            Marks = Marks.On(name, coverage, plan.Sites, layout),
            Column = column,
            Stairwells = [.. MapContents.StairwellsOf(coverage.Home.FloorPlan, storey)],
            Zones = [.. plan.Zones.SelectMany(entry => ZoneShape.On(storey, entry.Number, entry.Zone, plan.IsHub, layout.Projection))],
            SiteLead = plan.IsHub ? "" : "add repeater: ",
        };
        return contents with { Labels = MapLabels.Of(contents, ink) };
    }
}
