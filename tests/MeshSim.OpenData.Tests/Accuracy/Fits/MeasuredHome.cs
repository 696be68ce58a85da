using System.Globalization;
using MeshSim.Devices;
using MeshSim.Files;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.OpenData.Tests.Accuracy.Fits;

/// <summary>
/// A building as a home of one network, as the program reads one: a device at each place that was measured, a reading for each link.
/// The fixed end counts as the receiver: a path loses the same both ways, and what its power and antenna are worth against the
/// others then is what its receiver reports too much.
/// </summary>
internal sealed class MeasuredHome
{
    private readonly Dictionary<Position, Device> deviceAt = [];

    /// <summary>Builds the home.</summary>
    /// <param name="building">The building; there is a device for each place of its links.</param>
    /// <param name="known">The links that become readings.</param>
    public MeasuredHome(MeasuredBuilding building, IEnumerable<MeasuredLink> known)
    {
        foreach (Position place in building.Links.SelectMany(link => new[] { link.From, link.To })) deviceAt.TryAdd(place, DeviceOf(place, deviceAt.Count));
        Network = new()
        {
            Name = new("measured"),
            Radio = Radio,
            Channel = Enumerable.Range(Radio.FirstChannel, Radio.LastChannel - Radio.FirstChannel + 1).MinBy(
                channel => Math.Abs(Radio.Carrier(channel).Megahertz - building.Carrier.Megahertz)),
            Coordinator = deviceAt.Values.First().Id,
            HopLimit = Radio.HopLimit,
        };
        Home = new()
        {
            Name = building.Name,
            Region = "EU",
            FloorPlan = building.Plan,
            Constructions = Catalogues.ConstructionsByName,
            Networks = [Network],
            Devices = [.. deviceAt.Values],
            Readings = [.. known.Select(link => new Reading(DeviceAt(link.To).Id, DeviceAt(link.From).Id, link.LevelDbm is { } levelDbm ? new PowerLevel(levelDbm) : null, ""))],
        };
    }

    /// <summary>The radio that stands for those that measured: its band is theirs, and it needs about what they need.</summary>
    public static RadioProfile Radio { get; } = Catalogues.Radios.Single(radio => radio.Name == "ieee802154-2450");

    /// <summary>The home.</summary>
    public Home Home { get; }

    /// <summary>Its network.</summary>
    public Network Network { get; }

    /// <summary>The device at a place.</summary>
    public Device DeviceAt(Position place) => deviceAt[place];

    private static Device DeviceOf(Position place, int number) => new()
    {
        Id = new(string.Create(CultureInfo.InvariantCulture, $"place-{number}")),
        Name = "",
        Network = new("measured"),
        Power = PowerSource.Mains,
        Role = Role.Router,
        Storey = new("ground"),
        Point = place.Plan,
        HeightMetres = place.ZMetres,
        Mounting = Catalogues.Mountings.Single(mounting => mounting.Name == "surface") with { Spread = Decibels.Zero },
    };
}
