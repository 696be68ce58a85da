using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Propagation;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Mesh;

/// <summary>Who hears whom in one network.</summary>
public static class LinkTable
{
    /// <summary>
    /// Every pair of the network's devices that have power, whatever its margin. Pairs come in the order of the home's devices,
    /// the earlier device as <see cref="Link.From"/>. The same links in the same order on any number of threads.
    /// </summary>
    /// <param name="home">The home.</param>
    /// <param name="network">One of its networks.</param>
    /// <param name="model">The path-loss model of the building, doors open or closed as the caller wants them.</param>
    /// <param name="state">Which devices are off; null when all are on.</param>
    public static ImmutableArray<Link> Compute(Home home, Network network, IPathLossModel model, State? state) => Compute(home, network, model, state, null);

    /// <summary>The same, where some of the links are known.</summary>
    internal static ImmutableArray<Link> Compute(
        Home home, Network network, IPathLossModel model, State? state, IReadOnlyDictionary<(DeviceId From, DeviceId To), Link>? known)
    {
        Device[] devices = [.. home.DevicesOf(network).Where(device => state is null || !state.TurnsOff(device))];
        var pairs = (from first in Enumerable.Range(0, devices.Length)
                     from second in Enumerable.Range(first + 1, devices.Length - first - 1)
                     select (From: devices[first], To: devices[second])).ToArray();

        var budget = new LinkBudget(network.Radio, home.ParametersOf(network).Shadowing);
        var surroundings = new Surroundings(home, network, model, budget);
        Dictionary<DeviceId, Reception> needs = devices.ToDictionary(device => device.Id, surroundings.At);
        var uncertainties = new MarginUncertainties(home, network);
        var links = new Link[pairs.Length];
        Parallel.For(0, pairs.Length, i => links[i] =
            known?.GetValueOrDefault((pairs[i].From.Id, pairs[i].To.Id)) ?? Between(home, network, budget, model, pairs[i].From, pairs[i].To, needs, uncertainties));
        return [.. links];
    }

    /// <summary>The links that one device has, or would have, with some devices of a network; it is <see cref="Link.From"/> in each.</summary>
    /// <param name="home">The home.</param>
    /// <param name="network">One of its networks.</param>
    /// <param name="model">The path-loss model of the building.</param>
    /// <param name="device">A device at a place in the home; it need not belong to the network.</param>
    /// <param name="others">Who could hear it.</param>
    public static ImmutableArray<Link> Of(Home home, Network network, IPathLossModel model, Device device, IEnumerable<Device> others)
    {
        var budget = new LinkBudget(network.Radio, home.ParametersOf(network).Shadowing);
        var surroundings = new Surroundings(home, network, model, budget);
        Device[] ends = [device, .. others];
        Dictionary<DeviceId, Reception> needs = ends.ToDictionary(end => end.Id, surroundings.At);
        var uncertainties = new MarginUncertainties(home, network);
        return [.. ends.Skip(1).Select(other => Between(home, network, budget, model, device, other, needs, uncertainties))];
    }

    private static Link Between(
        Home home,
        Network network,
        LinkBudget budget,
        IPathLossModel model,
        Device from,
        Device to,
        Dictionary<DeviceId, Reception> needs,
        MarginUncertainties uncertainties)
    {
        PathLoss bare = model.Between(home.PositionOf(from), home.PositionOf(to));
        PathLoss loss = bare with { Items = [.. bare.Items, MountingOf(from, network), MountingOf(to, network)] };
        LinkLevels levels = budget.Between(PowerOf(from, network), PowerOf(to, network), loss.Total, needs[from.Id], needs[to.Id]);
        return new Link
        {
            From = from.Id,
            To = to.Id,
            PathLoss = loss,
            Received = levels.Received,
            Reverse = levels.Reverse,
            AtFrom = needs[from.Id],
            AtTo = needs[to.Id],
            Margin = levels.Margin,
            Uncertainty = uncertainties.Of(loss, from.Mounting, to.Mounting),
            Delivery = levels.Delivery,
            ReverseDelivery = levels.ReverseDelivery,
        };
    }

    private static PowerLevel PowerOf(Device device, Network network) => device.TransmitPower ?? network.Radio.TransmitPower;

    private static LossItem MountingOf(Device device, Network network) => new()
    {
        Kind = LossKind.Mounting,
        Name = $"{device.Id}: {device.Mounting.Name}",
        Mounting = device.Mounting.Name,
        Loss = network.LossOf(device.Mounting),
        Sensitivity = 1,
    };
}
