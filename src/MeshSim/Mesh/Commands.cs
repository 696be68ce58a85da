using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Mesh;

/// <summary>
/// Commands from the coordinator along the routes of a network. Links pass a frame on when they have it whole and have
/// acknowledged it; shadowing and interference of different links are independent. Frames of the network itself do not get in
/// each other's way: a home sends few.
/// </summary>
public sealed class Commands
{
    /// <summary>Share of arriving commands that the stated time holds for.</summary>
    public const double Percentile = 0.95;

    private readonly RadioProfile radio;
    private readonly AttemptShares attempts;
    private readonly Dictionary<(DeviceId, DeviceId), Link> links = [];
    private readonly Dictionary<double, HopTime> hopTimes = [];
    private readonly Dictionary<string, (double Delivery, TimeDistribution? Time)> known = new(StringComparer.Ordinal);

    /// <summary>Prepares the commands of a network.</summary>
    /// <param name="radio">Its kind of radio.</param>
    /// <param name="shadowing">Standard deviation of log-normal shadowing, within <see cref="DeliveryRatio.ShadowingDb"/>.</param>
    /// <param name="links">Its links, as <see cref="LinkTable"/> computes them.</param>
    public Commands(RadioProfile radio, Decibels shadowing, ImmutableArray<Link> links)
    {
        this.radio = radio;
        attempts = new(new(new Receiver(radio), shadowing), radio.Access.Attempts);
        foreach (Link link in links)
            this.links[(link.From, link.To)] = this.links[(link.To, link.From)] = link;
    }

    /// <summary>A device's reach with its <see cref="DeviceReach.Command"/>.</summary>
    public DeviceReach On(DeviceReach reach) => reach with { Command = reach.Route is { } route ? Along(route) : null };

    /// <summary>A command along a route, from its end to its beginning.</summary>
    /// <param name="route">A route over links of the network.</param>
    public CommandDelivery Along(Route route)
    {
        (double delivery, TimeDistribution? time) = Until(route.Path, 0);
        return time is null
            ? new(0, double.PositiveInfinity, double.PositiveInfinity)
            : new(delivery, time.MeanMilliseconds, time.QuantileMilliseconds(Percentile));
    }

    /// <summary>From the coordinator to the device at a place of the path. Devices that share the rest of their way share the work.</summary>
    private (double Delivery, TimeDistribution? Time) Until(ImmutableArray<DeviceId> path, int place)
    {
        if (place == path.Length - 1) return (1, TimeDistribution.Certain(0));
        string key = string.Join('\n', path.Skip(place));
        if (this.known.TryGetValue(key, out (double Delivery, TimeDistribution? Time) known)) return known;

        (double delivery, TimeDistribution? time) = Until(path, place + 1);
        (double arriving, TimeDistribution? hop) = Over(links[(path[place + 1], path[place])], path[place + 1]);
        return this.known[key] = (delivery * arriving, hop is null ? null : time?.Then(hop));
    }

    private (double Arriving, TimeDistribution? Time) Over(Link link, DeviceId sender)
    {
        bool forward = sender == link.From;
        Reception atSender = Computed(forward ? link.AtFrom : link.AtTo), atReceiver = Computed(forward ? link.AtTo : link.AtFrom);
        double busy = radio.Access.BusyThreshold is { } threshold ? Math.Clamp(atSender.ShareFrom(threshold), 0, 1) : 0;
        if (!hopTimes.TryGetValue(busy, out HopTime? times)) hopTimes[busy] = times = new(radio, busy);

        return times.Of(attempts.At(forward ? link.Received : link.Reverse, atReceiver));

        static Reception Computed(Reception? reception) => reception ?? throw new ArgumentException("the links were not computed", nameof(link));
    }
}
