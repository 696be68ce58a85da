using System.Collections.Immutable;
using MeshSim.Files.Diagnostics;

namespace MeshSim.Files.Importing.Svg;

/// <summary>A shape as SVG has it: curves still curves, in user units of the page, y down.</summary>
/// <param name="Place">Where it stands.</param>
/// <param name="What">What it is, for messages.</param>
/// <param name="Names">What it is called.</param>
/// <param name="Lines">Its lines; of a text a single point.</param>
/// <param name="Text">What it says, of a text.</param>
internal sealed record SvgShape(SourcePlace Place, string What, ShapeNames Names, ImmutableArray<Subpath> Lines, string? Text);
