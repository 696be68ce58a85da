using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Labels;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Symbols;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Drawing.Plans;

/// <summary>A remark on the sheet.</summary>
internal sealed record RemarkMark : Mark
{
    /// <summary>Its number in the column.</summary>
    public required int Number { get; init; }

    /// <summary>Whether it is a problem.</summary>
    public required bool IsError { get; init; }

    /// <inheritdoc/>
    public override PixelBox Extent => new(-12, -12, 12, 12);
}

/// <summary>Everything that the plan of one storey shows, decided before the first line is drawn.</summary>
internal sealed record PlanStorey
{
    /// <summary>The storey.</summary>
    public required Storey Storey { get; init; }

    /// <summary>Its part of the sheet.</summary>
    public required PixelBox Map { get; init; }

    /// <summary>From plan to sheet.</summary>
    public required Projection Projection { get; init; }

    /// <summary>Its devices.</summary>
    public required ImmutableArray<DeviceMark> Devices { get; init; }

    /// <summary>Its remarks.</summary>
    public required ImmutableArray<RemarkMark> Remarks { get; init; }

    /// <summary>Its outlets, those that are listed.</summary>
    public required ImmutableArray<Pixel> Outlets { get; init; }

    /// <summary>Its labels.</summary>
    public ImmutableArray<PlacedLabel> Labels { get; init; } = [];

    /// <summary>Whether there is anything to draw.</summary>
    public static bool HasAnything(Storey storey, PlanDraft draft) => PointsOf(storey, draft).Any();

    /// <summary>What a storey takes up with everything on it.</summary>
    public static PlanBounds BoundsOf(Storey storey, PlanDraft draft)
    {
        PlanPoint[] points = [.. PointsOf(storey, draft)];
        return new(new(points.Min(p => p.X), points.Min(p => p.Y)), new(points.Max(p => p.X), points.Max(p => p.Y)));
    }

    /// <summary>Decides what the plan of a storey shows.</summary>
    public static PlanStorey Of(Storey storey, PlanDraft draft, PlanColumn column, PixelBox map, Projection projection, Ink ink)
    {
        var placer = new MarkPlacer(map);
        ImmutableArray<RemarkMark> remarks =
        [
            .. column.Remarks.Where(one => one.Remark.Storey == storey.Name && one.Remark.Point is not null)
                .Select(one => (one.Number, one.Remark.IsError, Place: projection.ToPixel(one.Remark.Point!.Value)))
                .Select(one => placer.Place(new RemarkMark { Number = one.Number, IsError = one.IsError, TruePlace = one.Place, Centre = one.Place })),
        ];
        ImmutableArray<DeviceMark> devices =
        [
            .. draft.Home.Devices.Where(device => device.Storey == storey.Name)
                .Select(device => (Device: device, Place: projection.ToPixel(device.Point)))
                .Select(one => placer.Place(new DeviceMark { Device = one.Device, Standing = Standing.Reached, TruePlace = one.Place, Centre = one.Place })),
        ];
        var contents = new PlanStorey
        {
            Storey = storey,
            Map = map,
            Projection = projection,
            Devices = devices,
            Remarks = remarks,
            Outlets = [.. OutletsOf(storey, draft).Select(outlet => projection.ToPixel(outlet.Point))],
        };
        return contents with { Labels = PlanLabels.Of(contents, draft, column, ink) };
    }

    private static IEnumerable<Outlet> OutletsOf(Storey storey, PlanDraft draft) =>
        draft.Home.Outlets.Where(outlet => outlet.Storey == storey.Name && !outlet.IsAssumed);

    private static IEnumerable<PlanPoint> PointsOf(Storey storey, PlanDraft draft) =>
        PlanBounds.PointsOf(storey)
            .Concat(draft.Unbuilt.Where(outline => outline.Storey == storey.Name).SelectMany(outline => outline.Corners))
            .Concat(draft.Home.Devices.Where(device => device.Storey == storey.Name).Select(device => device.Point))
            .Concat(OutletsOf(storey, draft).Select(outlet => outlet.Point))
            .Concat(draft.Remarks.Where(remark => remark.Storey == storey.Name).Select(remark => remark.Point).OfType<PlanPoint>());
}
