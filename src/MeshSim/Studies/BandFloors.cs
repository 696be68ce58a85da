using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation.Fields;

namespace MeshSim.Studies;

/// <summary>The floors of a home in one network, for a battery device carried around.</summary>
internal sealed class BandFloors(NetworkCoverage coverage, StudyOptions options)
{
    /// <summary>The margins over a storey, dB.</summary>
    public Field MapOf(StoreyName storey) => CoverageStudy.Map(coverage, storey, options).Margin;

    /// <summary>How much of a room is covered.</summary>
    public BandFloor Of(Storey storey, Room room)
    {
        RoomGrid grid = GridOf(storey, room);
        float[] margins = [.. grid.ValuesIn(MarginMapping.Over(coverage, grid.Grid)).Order()];
        int covered = margins.Count(margin => margin >= coverage.DesignMargin.Value);
        return new(covered / (double)margins.Length, new(margins[(margins.Length - 1) / 2]));
    }

    /// <summary>A battery device at the point of the room that is nearest to the mean of its points.</summary>
    public Device DeviceInTheMiddle(Storey storey, Room room)
    {
        PlanPoint[] points = [.. GridOf(storey, room).Places];
        var mean = PlanPoint.FromMetres(points.Average(p => p.XMetres), points.Average(p => p.YMetres));
        return RoomTrials.CarriedAt(coverage, storey.Name, points.MinBy(point => point.DistanceMetresTo(mean)), options.ProbeHeightMetres, room.Name);
    }

    private RoomGrid GridOf(Storey storey, Room room) =>
        new(coverage.Home.FloorPlan, storey, room, options.GridStepMetres, options.ProbeHeightMetres);
}
