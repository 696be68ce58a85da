using MeshSim.Drawing.Inks;

namespace MeshSim.Drawing.Layers;

/// <summary>Draws one thing of a map over what is already there, and changes nothing else.</summary>
internal interface ILayer
{
    /// <summary>Draws it.</summary>
    void Draw(MapContents map, Pen pen);
}
