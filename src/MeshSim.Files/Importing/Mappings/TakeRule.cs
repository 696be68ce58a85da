using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files.Diagnostics;
using MeshSim.FloorPlans;

namespace MeshSim.Files.Importing.Mappings;

/// <summary>What a shape stands for.</summary>
internal enum Meaning
{
    /// <summary>Nothing: left out on purpose.</summary>
    Nothing,

    /// <summary>A wall, or several.</summary>
    Wall,

    /// <summary>The outline of a room.</summary>
    Room,

    /// <summary>A text within a room.</summary>
    RoomName,

    /// <summary>A door.</summary>
    Door,

    /// <summary>A window.</summary>
    Window,

    /// <summary>A big thing that blocks radio.</summary>
    Object,

    /// <summary>A hole in the floor.</summary>
    Stairwell,

    /// <summary>A device.</summary>
    Device,

    /// <summary>A mains outlet.</summary>
    Outlet,
}

/// <summary>Which shapes are meant, what they stand for, and what the drawing does not say of them.</summary>
internal sealed record TakeRule
{
    /// <summary>Where it is written; of a convention the drawing.</summary>
    public required SourcePlace Place { get; init; }

    /// <summary>What the shapes stand for.</summary>
    public required Meaning Meaning { get; init; }

    /// <summary>A named group that they lie in, or null.</summary>
    public string? Layer { get; init; }

    /// <summary>A class that they or their groups have, or null.</summary>
    public string? Class { get; init; }

    /// <summary>Their id or title, or null.</summary>
    public string? Id { get; init; }

    /// <summary>What it is built of; null where thickness decides, or where no construction is needed.</summary>
    public ConstructionName? Construction { get; init; }

    /// <summary>Constructions by the least thickness that they are taken for, m, rising; empty where one is named.</summary>
    public ImmutableArray<(double LeastMetres, ConstructionName Construction)> ByThickness { get; init; } = [];

    /// <summary>Whether walls are drawn as their two faces; null where nothing is said.</summary>
    public bool? AreFaces { get; init; }

    /// <summary>Farthest that two faces of one wall lie apart, m.</summary>
    public double ThickestMetres { get; init; } = DefaultThickestMetres;

    /// <summary>Bottom edge or underside above the floor, m; null takes the usual one.</summary>
    public double? SillMetres { get; init; }

    /// <summary>Height of an opening or object; of a device or outlet its height above the floor, m; null takes the usual one.</summary>
    public double? HeightMetres { get; init; }

    /// <summary>Whether a door or window stands open.</summary>
    public bool IsOpen { get; init; }

    /// <summary>Network of a device; null takes the first.</summary>
    public string? Network { get; init; }

    /// <summary>What a device runs on; null takes what its classes say, or else mains.</summary>
    public PowerSource? Power { get; init; }

    /// <summary>Kind of a device; "" takes nothing.</summary>
    public string Kind { get; init; } = "";

    /// <summary>How a device is hidden; null takes the usual one.</summary>
    public string? Mounting { get; init; }

    /// <summary>Circuit of a device or outlet, or null.</summary>
    public string? Circuit { get; init; }

    /// <summary>Manual switch of a device, or null.</summary>
    public string? SwitchedBy { get; init; }

    /// <summary>Farthest that two faces lie apart where the mapping does not say, m: thicker walls are rare. Common practice, no source.</summary>
    public const double DefaultThickestMetres = 0.6;
}

/// <summary>A storey of the mapping.</summary>
internal sealed record StoreyRule
{
    /// <summary>Where it is written.</summary>
    public required SourcePlace Place { get; init; }

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>The named group that it is drawn in; null takes everything.</summary>
    public string? Layer { get; init; }

    /// <summary>Clear height, m; null takes the usual one.</summary>
    public double? CeilingMetres { get; init; }

    /// <summary>What is underfoot; null on the lowest.</summary>
    public ConstructionName? Floor { get; init; }

    /// <summary>Thickness of that, m.</summary>
    public double? StructureMetres { get; init; }

    /// <summary>What outer walls are built of that no drawn wall stands for.</summary>
    public ConstructionName? Outer { get; init; }

    /// <summary>What inner walls are built of that no drawn wall stands for.</summary>
    public ConstructionName? Inner { get; init; }

    /// <summary>Id of a shape whose middle lies at the same place of the building on every storey, or null.</summary>
    public string? Anchor { get; init; }
}
