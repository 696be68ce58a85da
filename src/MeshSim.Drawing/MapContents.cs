using System.Collections.Immutable;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Labels;
using MeshSim.Drawing.Legends;
using MeshSim.Drawing.Margins;
using MeshSim.Drawing.Palettes;
using MeshSim.Drawing.Routes;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Symbols;
using MeshSim.Drawing.Zones;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Placement;
using MeshSim.Studies;

namespace MeshSim.Drawing;

/// <summary>Everything that a margin map shows, decided before the first line is drawn: the read-only context of the layers.</summary>
internal sealed record MapContents
{
    /// <summary>A smaller dark share of a room is not worth a line.</summary>
    private const double LeastDarkShare = 0.005;

    /// <summary>Who reaches whom.</summary>
    public required NetworkCoverage Coverage { get; init; }

    /// <summary>The margins of the storey.</summary>
    public required MarginMap Map { get; init; }

    /// <summary>The storey.</summary>
    public required Storey Storey { get; init; }

    /// <summary>Where everything goes.</summary>
    public required SheetLayout Layout { get; init; }

    /// <summary>The steps of the margin.</summary>
    public required FieldScale Scale { get; init; }

    /// <summary>What the sheet says above and below.</summary>
    public required SheetWords Words { get; init; }

    /// <summary>What stands below the names of some rooms.</summary>
    public required ImmutableDictionary<RoomName, string> RoomNotes { get; init; }

    /// <summary>The margin class of each pixel.</summary>
    public required MarginRaster Raster { get; init; }

    /// <summary>Lines of equal margin.</summary>
    public required ImmutableArray<Contour> Contours { get; init; }

    /// <summary>Links that routes use.</summary>
    public required RouteLines Routes { get; init; }

    /// <summary>Symbols of devices and repeaters.</summary>
    public required Marks Marks { get; init; }

    /// <summary>The column beside the map.</summary>
    public required Column Column { get; init; }

    /// <summary>Where sites could be as well.</summary>
    public ImmutableArray<ZoneShape> Zones { get; init; } = [];

    /// <summary>Begins the label of a numbered site.</summary>
    public string SiteLead { get; init; } = "add repeater: ";

    /// <summary>All labels that found a place.</summary>
    public ImmutableArray<PlacedLabel> Labels { get; init; } = [];

    /// <summary>The holes underfoot, which lead down, and those overhead, which lead up.</summary>
    public required ImmutableArray<(Polygon Outline, bool LeadsDown)> Stairwells { get; init; }

    /// <summary>Decides what a map shows.</summary>
    public static MapContents Of(NetworkCoverage coverage, MarginMap map, RepeaterPlacement? placement, PictureSize size, Ink ink)
    {
        Column column = Column.Of(coverage, map, placement, new MarginScale(map.DesignMargin), ink);
        PlanBounds bounds = PlanBounds.Of(coverage.Home, coverage.Home.FloorPlan.Storey(map.Storey));
        return On(SheetLayout.Of(bounds, size, column.HeightPixels), column, coverage, map, placement, ink);
    }

    /// <summary>Decides what a map shows on a sheet that is laid out already.</summary>
    public static MapContents On(SheetLayout layout, Column column, NetworkCoverage coverage, MarginMap map, RepeaterPlacement? placement, Ink ink)
    {
        Storey storey = coverage.Home.FloorPlan.Storey(map.Storey);
        var scale = new MarginScale(map.DesignMargin);
        var contents = new MapContents
        {
            Coverage = coverage,
            Map = map,
            Storey = storey,
            Layout = layout,
            Scale = scale,
            Words = SheetWords.Of(coverage, map, storey),
            RoomNotes = map.Rooms.Where(room => room.DarkShare >= LeastDarkShare)
                .ToImmutableDictionary(room => room.Room, room => FormattableString.Invariant($"{100 * room.DarkShare:0} % dark")),
            Raster = new(map.Margin, storey, scale, layout),
            Contours = [.. scale.Edges.SelectMany(edge => ContourTracer.Trace(map.Margin, edge))],
            Routes = RouteLines.On(map.Storey, coverage),
            Marks = Marks.On(map.Storey, coverage, placement, layout),
            Column = column,
            Stairwells = [.. StairwellsOf(coverage.Home.FloorPlan, storey)],
        };
        return contents with { Labels = MapLabels.Of(contents, ink) };
    }

    /// <summary>The holes in the floor of a storey and in the one above it.</summary>
    public static IEnumerable<(Polygon Outline, bool LeadsDown)> StairwellsOf(FloorPlan plan, Storey storey)
    {
        int index = plan.Storeys.IndexOf(storey);
        Storey? above = index + 1 < plan.Storeys.Length ? plan.Storeys[index + 1] : null;
        return (storey.Floor?.Stairwells ?? []).Select(hole => (hole.Outline, true))
            .Concat((above?.Floor?.Stairwells ?? []).Select(hole => (hole.Outline, false)));
    }
}
