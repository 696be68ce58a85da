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

    /// <summary>
    /// What all storeys and devices of a home take up together: sheets of one home then have the same scale and lie exactly
    /// over each other.
    /// </summary>
    public static PlanBounds Of(Home home)
    {
        var points = home.FloorPlan.Storeys.SelectMany(PointsOf)
            .Concat(home.Devices.Select(device => device.Point))
            .Concat(home.Outlets.Select(outlet => outlet.Point))
            .ToList();
        return new(new(points.Min(p => p.X), points.Min(p => p.Y)), new(points.Max(p => p.X), points.Max(p => p.Y)));
    }

    private static IEnumerable<PlanPoint> PointsOf(Storey storey) =>
        storey.Rooms.SelectMany(room => room.Outline.Corners)
            .Concat(storey.Walls.SelectMany(wall => new[] { wall.Start, wall.End }))
            .Concat(storey.Objects.SelectMany(thing => thing.Footprint.Corners));
}
