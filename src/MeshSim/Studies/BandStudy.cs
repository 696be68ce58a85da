using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Radio;

namespace MeshSim.Studies;

/// <summary>What another band would make of the same house: two networks side by side.</summary>
public static class BandStudy
{
    /// <summary>Compares two networks of a home.</summary>
    /// <exception cref="ArgumentException">The state opens a door that the home does not have.</exception>
    public static BandComparison Compare(Home home, Network first, Network second, StudyOptions options)
    {
        NetworkCoverage inFirst = CoverageStudy.Run(home, first, options), inSecond = CoverageStudy.Run(home, second, options);
        BandFloors firstFloors = new(inFirst, options), secondFloors = new(inSecond, options);
        BandPlaces firstPlaces = new(home, first, options), secondPlaces = new(home, second, options);
        HashSet<DeviceId> coordinators = [.. home.Networks.Select(network => network.Coordinator)];
        return new BandComparison
        {
            First = inFirst,
            Second = inSecond,
            Maps =
            [
                .. home.FloorPlan.Storeys.Where(storey => !storey.Rooms.IsEmpty || !storey.Walls.IsEmpty)
                    .Select(storey => new BandMap(storey.Name, firstFloors.MapOf(storey.Name), secondFloors.MapOf(storey.Name))),
            ],
            Rooms =
            [
                .. from storey in home.FloorPlan.Storeys
                   from room in storey.Rooms
                   let middle = firstFloors.DeviceInTheMiddle(storey, room)
                   select new BandRoom(
                       storey.Name,
                       room.Name,
                       firstFloors.Of(storey, room),
                       secondFloors.Of(storey, room),
                       BandDifferences.Between(first, firstPlaces.BestAt(middle), second, secondPlaces.BestAt(middle))),
            ],
            Devices =
            [
                .. from device in home.Devices
                   where !coordinators.Contains(device.Id) && options.State?.TurnsOff(device) != true
                   let standing = (First: firstPlaces.Of(device), Second: secondPlaces.Of(device))
                   select new BandDevice(
                       device, standing.First, standing.Second, BandDifferences.Between(first, standing.First.Budget, second, standing.Second.Budget)),
            ],
        };
    }

    /// <summary>The two networks that a comparison is about unless somebody asks for others: the first mesh, or else network, below 1 GHz, and the first above.</summary>
    /// <returns>Null when the home has none on one of the sides.</returns>
    public static (Network First, Network Second)? Default(Home home)
    {
        const double border = 1000; // MHz
        ImmutableArray<Network> meshFirst = [.. home.Networks.OrderByDescending(network => network.Radio.Topology == Topology.Mesh)];
        Network? below = meshFirst.FirstOrDefault(network => network.Carrier.Megahertz < border);
        Network? above = meshFirst.FirstOrDefault(network => network.Carrier.Megahertz >= border);
        return below is null || above is null ? null : (below, above);
    }
}
