using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Walls;
using MeshSim.FloorPlans;

namespace MeshSim.Drawing.Layers;

/// <summary>Walls as thick as they are built, left out where an opening is.</summary>
internal sealed class WallLayer : ILayer
{
    /// <inheritdoc/>
    public void Draw(MapContents map, Pen pen)
    {
        foreach (Wall wall in map.Storey.Walls)
        {
            WallRun run = WallRun.Of(wall, map.Coverage.Home, map.Layout.Projection);
            foreach ((float from, float to) in run.Solid(wall, map.Layout.Projection))
                if (to > from) pen.Area(run.Stretch(from, to), Tone.Wall);
        }
    }
}
