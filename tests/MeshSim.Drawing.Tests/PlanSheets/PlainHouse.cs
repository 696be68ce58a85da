using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Studies;

namespace MeshSim.Drawing.Tests.PlanSheets;

/// <summary>One room of any size with solid walls and the coordinator in the middle of its lower wall, for measuring.</summary>
internal static class PlainHouse
{
    public static (Home Home, ImmutableArray<NetworkCoverage> Coverages) Of(double widthMetres, double heightMetres, double northDegrees = 0)
    {
        StoreyName storey = new("ground");
        RoomName room = new("hall");
        PlanPoint[] corners = [PlanPoint.FromMetres(0, 0), PlanPoint.FromMetres(widthMetres, 0), PlanPoint.FromMetres(widthMetres, heightMetres), PlanPoint.FromMetres(0, heightMetres)];
        Network network = Scenes.TwoStoreyFlat.Network;
        Home home = Scenes.TwoStoreyFlat.Home with
        {
            Name = "Plain house",
            FloorPlan = new([
                new()
                {
                    Name = storey,
                    ElevationMetres = 0,
                    CeilingMetres = 2.5,
                    Rooms = [new(room, new([.. corners]))],
                    Walls =
                    [
                        .. Enumerable.Range(0, 4).Select(
                            i => new Wall
                            {
                                Name = "outer",
                                Start = corners[i],
                                End = corners[(i + 1) % 4],
                                Construction = new("no such construction"),
                                Rooms = [room],
                            }),
                    ],
                },
            ]),
            Outlets = [],
            Devices =
            [
                Scenes.TwoStoreyFlat.Home.Devices.First(device => device.Id == network.Coordinator) with
                {
                    Storey = storey,
                    Room = room,
                    Point = PlanPoint.FromMetres(widthMetres / 2, 1),
                },
            ],
            Parameters = new() { NorthDegrees = northDegrees },
        };
        NetworkCoverage coverage = Scenes.SyntheticCoverage.Coverage with { Home = home, Devices = [] };
        return (home, [coverage]);
    }
}
