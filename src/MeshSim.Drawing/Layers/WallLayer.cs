using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Walls;
using MeshSim.FloorPlans;

namespace MeshSim.Drawing.Layers;

/// <summary>Walls as thick as they are built, in the manner of what they are built of, left out where an opening is.</summary>
internal sealed class WallLayer : ILayer
{
    /// <inheritdoc/>
    public void Draw(MapContents map, Pen pen)
    {
        // Solid walls come last, so that the ends of hollow ones disappear in them.
        foreach (Wall wall in map.Storey.Walls.OrderBy(wall => WallStyles.IsSolid(WallStyles.Of(wall.Construction, map.Coverage.Home))))
        {
            WallRun run = WallRun.Of(wall, map.Coverage.Home, map.Layout.Projection);
            foreach ((float from, float to) in run.Solid(wall, map.Layout.Projection))
                if (to > from) WallStyles.Draw(WallStyles.Of(wall.Construction, map.Coverage.Home), run, from, to, pen);
        }
    }
}
