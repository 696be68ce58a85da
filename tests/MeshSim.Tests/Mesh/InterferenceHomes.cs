using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;
using MeshSim.Propagation;

namespace MeshSim.Tests.Mesh;

/// <summary>Devices one metre apart in the open, the coordinator first, with access points among them.</summary>
internal static class InterferenceHomes
{
    public static Home Row(int devices, params ImmutableArray<AccessPoint> accessPoints) => new()
    {
        Name = "row",
        Region = "EU",
        FloorPlan = new([new Storey { Name = new("ground"), ElevationMetres = 0, CeilingMetres = 2.5 }]),
        Constructions = ImmutableDictionary<ConstructionName, Construction>.Empty,
        Networks = [MeshSamples.Network(hopLimit: 5)],
        Devices =
        [
            .. Enumerable.Range(0, devices).Select(i =>
                MeshSamples.Device(i, i == 0 ? Role.Coordinator : Role.Router) with { Point = PlanPoint.FromMetres(i, 0) }),
        ],
        AccessPoints = accessPoints,
    };

    public static AccessPoint AccessPoint(int channel, double xMetres, double busy = 0.3, string name = "shelf") => new()
    {
        Name = name,
        Storey = new("ground"),
        Point = PlanPoint.FromMetres(xMetres, 0),
        HeightMetres = 1,
        Channel = channel,
        WidthMegahertz = 20,
        Power = new(20),
        Busy = busy,
    };

    public sealed class TenDecibelsPerMetre : IPathLossModel
    {
        public PathLoss Between(Position from, Position to)
        {
            double distanceMetres = from.DistanceMetresTo(to);
            return new("sample", distanceMetres, [new LossItem { Kind = LossKind.Distance, Name = "distance", Loss = new(10 * distanceMetres) }]);
        }
    }
}
