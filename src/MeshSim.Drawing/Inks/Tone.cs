using SkiaSharp;

namespace MeshSim.Drawing.Inks;

/// <summary>The colours of everything but the margin field. Each differs from its neighbours in lightness or shape too.</summary>
internal static class Tone
{
    /// <summary>The sheet.</summary>
    public static readonly SKColor Paper = new(0xFD, 0xFC, 0xF9);

    /// <summary>The plate under a label: paper that lets the field shine through.</summary>
    public static readonly SKColor Plate = Paper.WithAlpha(225);

    /// <summary>The band with the name of a storey.</summary>
    public static readonly SKColor Band = new(0xE9, 0xE7, 0xDF);

    /// <summary>Text and symbols.</summary>
    public static readonly SKColor Text = new(0x1A, 0x20, 0x27);

    /// <summary>Less important text, frames, leader lines.</summary>
    public static readonly SKColor Quiet = new(0x55, 0x5F, 0x69);

    /// <summary>Walls.</summary>
    public static readonly SKColor Wall = new(0x38, 0x3E, 0x46);

    /// <summary>Contour lines: olive, because readers blind to red see the colour of routes as a dull blue.</summary>
    public static readonly SKColor Contour = new(0x55, 0x52, 0x1A);

    /// <summary>Routes.</summary>
    public static readonly SKColor Route = new(0x8C, 0x15, 0x4F);

    /// <summary>Recommended repeaters.</summary>
    public static readonly SKColor Repeater = new(0xAD, 0x42, 0x00);

    /// <summary>Zones in which a repeater or the hub does as well.</summary>
    public static readonly SKColor Zone = new(0x0B, 0x5A, 0x66);

    /// <summary>Devices that are not reached.</summary>
    public static readonly SKColor Unreached = new(0xA8, 0x10, 0x2A);

    /// <summary>Hatching of what lies below the design margin.</summary>
    public static readonly SKColor Hatch = new(0xFF, 0xFF, 0xFF, 190);
}
