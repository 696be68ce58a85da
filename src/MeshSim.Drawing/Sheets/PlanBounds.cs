using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Drawing.Sheets;

/// <summary>The part of the plan that a sheet must show.</summary>
/// <param name="Low">Lower left corner.</param>
/// <param name="High">Upper right corner.</param>
internal readonly record struct PlanBounds(PlanPoint Low, PlanPoint High)
{
    /// <summary>From left to right, m.</summary>
    public double WidthMetres => High.XMetres - Low.XMetres;

    /// <summary>From bottom to top, m.</summary>
    public double HeightMetres => High.YMetres - Low.YMetres;

    /// <summary>What a storey takes up with everything that stands or hangs on it, of whatever network.</summary>
    public static PlanBounds Of(Home home, Storey storey)
    {
        var points = PointsOf(storey)
            .Concat(home.Devices.Where(device => device.Storey == storey.Name).Select(device => device.Point))
            .Concat(home.Outlets.Where(outlet => outlet.Storey == storey.Name).Select(outlet => outlet.Point))
            .ToList();
        return new(new(points.Min(p => p.X), points.Min(p => p.Y)), new(points.Max(p => p.X), points.Max(p => p.Y)));
    }

    /// <summary>The corners of all that stands on a storey.</summary>
    public static IEnumerable<PlanPoint> PointsOf(Storey storey) =>
        storey.Rooms.SelectMany(room => room.Outline.Corners)
            .Concat(storey.Walls.SelectMany(wall => new[] { wall.Start, wall.End }))
            .Concat(storey.Objects.SelectMany(thing => thing.Footprint.Corners));
}
