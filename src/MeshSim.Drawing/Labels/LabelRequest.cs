using System.Collections.Immutable;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Sheets;
using SkiaSharp;

namespace MeshSim.Drawing.Labels;

/// <summary>What a label belongs to.</summary>
internal enum LabelKind
{
    /// <summary>A room.</summary>
    Room,

    /// <summary>A device.</summary>
    Device,

    /// <summary>A recommended repeater.</summary>
    Repeater,

    /// <summary>A zone in which a repeater does as well.</summary>
    Zone,

    /// <summary>A link to another storey.</summary>
    Stub,

    /// <summary>An object or a stairwell.</summary>
    Object,

    /// <summary>A contour line.</summary>
    Contour,
}

/// <summary>One line of a label.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Style">How it is set.</param>
/// <param name="Colour">Its colour.</param>
internal readonly record struct LabelLine(string Text, TextStyle Style, SKColor Colour);

/// <summary>A place where a label could go.</summary>
/// <param name="Box">What it would cover.</param>
/// <param name="Cost">How bad the place is in itself; 0 is the best.</param>
/// <param name="LeaderFrom">Where a leader line starts, or null when the label stands by its thing.</param>
internal readonly record struct LabelPlace(PixelBox Box, float Cost, Pixel? LeaderFrom = null);

/// <summary>A label that looks for a place.</summary>
internal sealed record LabelRequest
{
    /// <summary>What it belongs to.</summary>
    public required LabelKind Kind { get; init; }

    /// <summary>Which one: id or name.</summary>
    public required string Key { get; init; }

    /// <summary>Its lines, from above.</summary>
    public required ImmutableArray<LabelLine> Lines { get; init; }

    /// <summary>Where it could go.</summary>
    public required IEnumerable<LabelPlace> Places { get; init; }

    /// <summary>Whether frames run towards the thing along the leader, rather than away from it; only for stubs.</summary>
    public bool LeaderPointsBack { get; init; }
}

/// <summary>A label that has found its place.</summary>
/// <param name="Request">What it is.</param>
/// <param name="Box">What it covers.</param>
/// <param name="LeaderFrom">Where its leader line starts, or null when there is none.</param>
internal sealed record PlacedLabel(LabelRequest Request, PixelBox Box, Pixel? LeaderFrom)
{
    /// <summary>Where the leader line meets the label.</summary>
    public Pixel LeaderTo => LeaderFrom is { } from ? Box.NearestTo(from) : Box.Centre;
}
