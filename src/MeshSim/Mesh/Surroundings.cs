using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Mesh;

/// <summary>
/// What disturbs receivers of one network at places of the home: its Wi-Fi access points through the same walls, by the network's
/// own path-loss model and carrier, and USB 3 storage beside the coordinator.
/// </summary>
public sealed class Surroundings
{
    private readonly Home home;
    private readonly Network network;
    private readonly IPathLossModel model;
    private readonly LinkBudget budget;
    private readonly ImmutableArray<(AccessPoint Point, Decibels Share)> heard;

    /// <summary>Finds out who is heard in the network's channel.</summary>
    /// <param name="home">The home.</param>
    /// <param name="network">One of its networks.</param>
    /// <param name="model">The path-loss model of the building, doors open or closed as the caller wants them.</param>
    /// <param name="budget">The link budget of the network.</param>
    public Surroundings(Home home, Network network, IPathLossModel model, LinkBudget budget)
    {
        this.home = home;
        this.network = network;
        this.model = model;
        this.budget = budget;
        heard =
        [
            .. from point in home.AccessPoints
               let share = WifiOverlap.Share(point.Channel, point.WidthMegahertz, network.Radio, network.Carrier)
               where share > 0 && point.Busy > 0
               select (point, Decibels.FromPowerRatio(share)),
        ];
    }

    /// <summary>The access points that are heard in the network's channel at all.</summary>
    public IEnumerable<AccessPoint> Heard => heard.Select(entry => entry.Point);

    /// <summary>
    /// Whether the access points are on for so much of the time together that planning can count them. Where they are not, every
    /// planning level is that of the receiver, however strong they are.
    /// </summary>
    public bool Counts
    {
        get
        {
            double silent = heard.Aggregate(1.0, (share, heard) => share * (1 - heard.Point.Busy));
            return heard.Length > Reception.MostCombined
                || Math.Pow(1 - silent, network.Radio.Access.Attempts) > Reception.ToleratedLoss;
        }
    }

    /// <summary>What a device needs where it is and as it is hidden.</summary>
    public Reception At(Device device)
    {
        Decibels mounting = network.LossOf(device.Mounting);
        Decibels noiseRise = device.Id == network.Coordinator ? network.HubNoise : Decibels.Zero;
        return Of(noiseRise, LossesTo(home.PositionOf(device), mounting));
    }

    /// <summary>What a device in the open needs at a place.</summary>
    public Reception At(Position place) => Of(Decibels.Zero, LossesTo(place, Decibels.Zero));

    /// <summary>What a device in the open needs at a place.</summary>
    /// <param name="losses">Path loss to each of <see cref="Heard"/>, in their order.</param>
    /// <param name="noiseRise">By how much its noise floor is raised.</param>
    public Reception At(ImmutableArray<Decibels> losses, Decibels noiseRise = default) => Of(noiseRise, losses);

    private ImmutableArray<Decibels> LossesTo(Position place, Decibels mounting) =>
        [.. Heard.Select(point => model.TotalBetween(home.PositionOf(point), place) + mounting)];

    private Reception Of(Decibels noiseRise, ImmutableArray<Decibels> losses) => budget.ReceptionOf(
        noiseRise,
        heard.Zip(losses, (heard, loss) => new Interferer(
            heard.Point.Name, heard.Point.Power + network.Radio.AntennaGain - loss + heard.Share, heard.Point.Busy)));
}
