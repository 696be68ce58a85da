using System.Collections.Immutable;

namespace MeshSim.Drawing.PlanSheets;

/// <summary>How plan sheets are to be drawn.</summary>
public sealed record SheetOptions
{
    /// <summary>Accepted scales, the larger first: what a length is divided by.</summary>
    public static readonly ImmutableArray<int> Scales = [50, 100];

    /// <summary>One of <see cref="Scales"/>; null takes the largest at which a storey fits on one sheet.</summary>
    public int? Scale { get; init; }

    /// <summary>The paper; null takes the smallest on which the largest scale fits.</summary>
    public PaperFormat? Paper { get; init; }
}
