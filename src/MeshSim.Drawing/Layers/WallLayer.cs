using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Walls;
using MeshSim.FloorPlans;

namespace MeshSim.Drawing.Layers;

/// <summary>Walls as thick as they are built, in the manner of what they are built of, left out where an opening is.</summary>
internal sealed class WallLayer : ILayer
{
    /// <inheritdoc/>
    public void Draw(MapContents map, Pen pen) => DrawAll(map.Storey, map.Coverage.Home, map.Layout.Projection, pen);

    /// <summary>Draws the walls of a storey.</summary>
    public static void DrawAll(Storey storey, Home home, Projection projection, Pen pen)
    {
        // Solid walls come last, so that the ends of hollow ones disappear in them.
        foreach (Wall wall in storey.Walls.OrderBy(wall => WallStyles.IsSolid(WallStyles.Of(wall.Construction, home))))
        {
            WallRun run = WallRun.Of(wall, home, projection);
            foreach ((float from, float to) in run.Solid(wall, projection))
                if (to > from) WallStyles.Draw(WallStyles.Of(wall.Construction, home), run, from, to, pen);
        }
    }
}
