using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Propagation;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Mesh;

/// <summary>What Wi-Fi leaves of one channel of a network.</summary>
/// <param name="Channel">The channel.</param>
/// <param name="Worst">Mean interference over time at the device that has most of it.</param>
/// <param name="Median">The same at the median device: of two in the middle the greater.</param>
/// <param name="Unreached">Devices without a route at the design margin.</param>
public sealed record ChannelEvidence(int Channel, PowerLevel Worst, PowerLevel Median, int Unreached);

/// <summary>Compares the channels of a network by what the home's access points put into each.</summary>
public static class ChannelSurvey
{
    /// <summary>Levels closer than this count as equal: the lower channel then comes first.</summary>
    private static readonly Decibels SameLevel = new(0.01);

    /// <summary>
    /// The evidence for each channel of the network's radio, in order; empty where the radio has one channel only or no access
    /// point is heard in any. Path losses are those of the channel in use: within the band they differ by 0.3 dB at most.
    /// </summary>
    /// <param name="home">The home.</param>
    /// <param name="network">One of its networks.</param>
    /// <param name="model">The path-loss model of the building.</param>
    /// <param name="devices">Its devices that have power, in the home's order.</param>
    /// <param name="links">The links among them in the channel in use.</param>
    public static ImmutableArray<ChannelEvidence> Of(
        Home home, Network network, IPathLossModel model, ImmutableArray<Device> devices, ImmutableArray<Link> links)
    {
        RadioProfile radio = network.Radio;
        if (radio.FirstChannel == radio.LastChannel || devices.IsEmpty) return [];

        var fixedLosses = new KnownLosses(model);
        var budget = new LinkBudget(radio, home.ParametersOf(network).Shadowing);
        return
        [
            .. from channel in Enumerable.Range(radio.FirstChannel, radio.LastChannel - radio.FirstChannel + 1)
               let surroundings = new Surroundings(home, network with { Channel = channel }, fixedLosses, budget)
               where surroundings.Heard.Any()
               select Evidence(home, network with { Channel = channel }, surroundings, budget, devices, links),
        ];
    }

    /// <summary>
    /// The best of some channels: where the fewest devices are out of reach, then where the worst place has least interference,
    /// then the lowest.
    /// </summary>
    /// <param name="channels">At least one.</param>
    public static ChannelEvidence Best(ImmutableArray<ChannelEvidence> channels) => Least(channels).MinBy(channel => channel.Channel)!;

    /// <summary>The channels that nothing but their number tells from <see cref="Best"/>.</summary>
    /// <param name="channels">At least one.</param>
    public static IEnumerable<ChannelEvidence> Least(ImmutableArray<ChannelEvidence> channels)
    {
        int fewest = channels.Min(channel => channel.Unreached);
        ImmutableArray<ChannelEvidence> reaching = [.. channels.Where(channel => channel.Unreached == fewest)];
        PowerLevel least = reaching.Min(channel => channel.Worst);
        return reaching.Where(channel => channel.Worst - least < SameLevel);
    }

    private static ChannelEvidence Evidence(
        Home home, Network network, Surroundings surroundings, LinkBudget budget, ImmutableArray<Device> devices, ImmutableArray<Link> links)
    {
        Dictionary<DeviceId, Reception> needs = devices.ToDictionary(device => device.Id, surroundings.At);
        Link[] disturbed = [.. links.Select(link => Disturbed(link, budget, network, needs))];
        var graph = new MeshGraph(network, devices, [.. disturbed], home.ParametersOf(network).DesignMargin);
        int reached = Routing.LeastEtx(graph).Count(route => route is not null);
        PowerLevel[] levels = [.. needs.Values.Select(reception => reception.MeanInterference!.Value).Order()];
        return new(network.Channel, levels[^1], levels[levels.Length / 2], devices.Count(device => device.Id != network.Coordinator) - reached);
    }

    private static Link Disturbed(Link link, LinkBudget budget, Network network, Dictionary<DeviceId, Reception> needs)
    {
        // Powers are in the received levels already: the loss and both antennas taken off again.
        Decibels gain = network.Radio.AntennaGain, loss = link.PathLoss.Total;
        LinkLevels levels = budget.Between(
            link.Received - gain + loss - gain, link.Reverse - gain + loss - gain, loss, needs[link.From], needs[link.To]);
        return link with
        {
            AtFrom = needs[link.From],
            AtTo = needs[link.To],
            Margin = levels.Margin,
            Delivery = levels.Delivery,
            ReverseDelivery = levels.ReverseDelivery,
        };
    }
}
