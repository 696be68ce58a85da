using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Drawing.Labels;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Symbols;
using MeshSim.FloorPlans;

namespace MeshSim.Drawing.PlanSheets;

/// <summary>A sheet of a set, everything decided before the first line is drawn. On a sheet for the key alone there is no plan.</summary>
internal sealed record PlanSheet
{
    /// <summary>The home and its networks.</summary>
    public required SheetSubject Subject { get; init; }

    /// <summary>The storey.</summary>
    public required Storey Storey { get; init; }

    /// <summary>How the sheet is divided.</summary>
    public required PlanSheetLayout Layout { get; init; }

    /// <summary>What its title block says.</summary>
    public required SheetTitle Title { get; init; }

    /// <summary>The key, or this sheet's part of it.</summary>
    public ImmutableArray<KeyColumn> Key { get; init; } = [];

    /// <summary>What is drawn to scale, or null.</summary>
    public PlanDrawing? Plan { get; init; }
}

/// <summary>The part of a storey that one sheet shows.</summary>
internal sealed record PlanDrawing
{
    /// <summary>From the building to the sheet.</summary>
    public required Projection Projection { get; init; }

    /// <summary>What a length is divided by.</summary>
    public required int Scale { get; init; }

    /// <summary>The part of the sheet that shows the building.</summary>
    public required PixelBox Frame { get; init; }

    /// <summary>Devices of all networks.</summary>
    public required ImmutableArray<DeviceMark> Devices { get; init; }

    /// <summary>Outlets that no symbol covers.</summary>
    public required ImmutableArray<(Outlet Outlet, Pixel Place)> Outlets { get; init; }

    /// <summary>Links that routes use, towards the coordinator, with the dashes of their network's strokes.</summary>
    public required ImmutableArray<(Device From, Device To, float Dash)> Routes { get; init; }

    /// <summary>Labels that found a place.</summary>
    public ImmutableArray<PlacedLabel> Labels { get; init; } = [];

    /// <summary>Where a device of the storey is drawn, or would be, where another part shows it: its routes run to the edge of this one.</summary>
    public Pixel PlaceOf(Device device) => Devices.FirstOrDefault(mark => mark.Device.Id == device.Id)?.Centre ?? Projection.ToPixel(device.Point);
}
