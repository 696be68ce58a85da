using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Palettes;
using MeshSim.Drawing.Symbols;
using MeshSim.Drawing.Walls;
using SkiaSharp;

namespace MeshSim.Drawing.Legends;

/// <summary>A sign of the map other than the symbol of a device.</summary>
internal enum Sign
{
    /// <summary>A link that routes use.</summary>
    Route,

    /// <summary>A link to another storey.</summary>
    Stub,

    /// <summary>A device without a route.</summary>
    Unreached,

    /// <summary>A recommended repeater.</summary>
    Repeater,

    /// <summary>A site of a hub.</summary>
    Site,

    /// <summary>The contour line of the design margin.</summary>
    DesignContour,

    /// <summary>Any other contour line.</summary>
    Contour,

    /// <summary>A stairwell.</summary>
    Stairwell,
}

/// <summary>One row of the column beside the map.</summary>
/// <param name="HeightPixels">What it takes.</param>
internal abstract record ColumnRow(float HeightPixels);

/// <summary>A heading.</summary>
/// <param name="Text">What it says.</param>
internal sealed record HeadingRow(string Text) : ColumnRow(34);

/// <summary>A line of text that fits the column.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Style">How it is set.</param>
/// <param name="Colour">Its colour.</param>
/// <param name="IndentPixels">Space before it: continued lines of a list stand in.</param>
internal sealed record NoteRow(string Text, TextStyle Style, SKColor Colour, float IndentPixels = 0) : ColumnRow(19);

/// <summary>A step of the margin scale.</summary>
/// <param name="Class">The step.</param>
/// <param name="Text">What it says.</param>
internal sealed record ClassRow(MarginClass Class, string Text) : ColumnRow(24);

/// <summary>Two symbols of devices with their meanings, the second possibly missing.</summary>
/// <param name="First">The first.</param>
/// <param name="Second">The second.</param>
internal sealed record SymbolRow(SymbolShape First, SymbolShape? Second) : ColumnRow(32);

/// <summary>The letters of the roles.</summary>
/// <param name="Roles">The roles, from the left.</param>
internal sealed record RolesRow(IReadOnlyList<Role> Roles) : ColumnRow(28);

/// <summary>How walls of some constructions are drawn.</summary>
/// <param name="Style">The style.</param>
/// <param name="Text">The constructions, in a line that fits the column.</param>
internal sealed record WallRow(WallStyle Style, string Text) : ColumnRow(24);

/// <summary>A remark with its number, whose text goes on in further lines.</summary>
/// <param name="Number">The number.</param>
/// <param name="IsError">Whether it is a problem.</param>
/// <param name="IsOnPlan">Whether the number stands on the plan too.</param>
/// <param name="Text">Its first line.</param>
internal sealed record RemarkRow(int Number, bool IsError, bool IsOnPlan, string Text) : ColumnRow(25);

/// <summary>A sign with its meaning.</summary>
/// <param name="Sign">The sign.</param>
/// <param name="Text">What it means.</param>
internal sealed record SignRow(Sign Sign, string Text) : ColumnRow(26);

/// <summary>How the zone of a site is hatched.</summary>
/// <param name="Number">The number of the site.</param>
/// <param name="Text">What it means.</param>
internal sealed record ZoneRow(int Number, string Text) : ColumnRow(26);
