using MeshSim.Drawing.Inks;

namespace MeshSim.Drawing.Layers;

/// <summary>The sheet.</summary>
internal sealed class PaperLayer : ILayer
{
    /// <inheritdoc/>
    public void Draw(MapContents map, Pen pen) => pen.Flood(Tone.Paper);
}
