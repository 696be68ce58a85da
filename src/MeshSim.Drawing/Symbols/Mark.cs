using MeshSim.Devices;
using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing.Symbols;

/// <summary>How a device stands in the state that is drawn.</summary>
internal enum Standing
{
    /// <summary>It reaches the coordinator, or is the coordinator.</summary>
    Reached,

    /// <summary>It has power and no route.</summary>
    Unreached,

    /// <summary>It has no power in this state.</summary>
    Off,
}

/// <summary>A symbol on the sheet.</summary>
internal abstract record Mark
{
    /// <summary>Radius of the disc under a symbol, pixels.</summary>
    public const float Radius = 13;

    /// <summary>Where the thing really is.</summary>
    public required Pixel TruePlace { get; init; }

    /// <summary>Where its symbol is drawn: moved aside when the true place is taken.</summary>
    public required Pixel Centre { get; init; }

    /// <summary>What the symbol covers, about its middle.</summary>
    public abstract PixelBox Extent { get; }

    /// <summary>What the symbol covers on the sheet.</summary>
    public PixelBox Box => Extent.At(Centre);

    /// <summary>Whether the symbol had to move.</summary>
    public bool IsMoved => Centre != TruePlace;
}

/// <summary>A device on the sheet.</summary>
internal sealed record DeviceMark : Mark
{
    /// <summary>The device.</summary>
    public required Device Device { get; init; }

    /// <summary>How it stands.</summary>
    public required Standing Standing { get; init; }

    /// <summary>Disc, the letter's badge at its lower right, and the warning sign at the upper left of an unreached one.</summary>
    public override PixelBox Extent => Standing == Standing.Unreached ? new(-20, -20, 18, 17) : new(-14, -14, 18, 17);
}

/// <summary>A recommended repeater, or a site of a hub, on the sheet.</summary>
internal sealed record RepeaterMark : Mark
{
    /// <summary>Its number in the list, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>Where to plug it in.</summary>
    public required Outlet Outlet { get; init; }

    /// <inheritdoc/>
    public override PixelBox Extent => new(-14, -15, 14, 15);
}
