using MeshSim.Devices;
using MeshSim.Dropouts;
using MeshSim.FloorPlans;
using MeshSim.Mesh;

namespace MeshSim.Studies;

/// <summary>Why a device or a room drops out, what each thing on the way costs, and what could be done about it.</summary>
public static class ExplainStudy
{
    /// <summary>Explains a device.</summary>
    /// <exception cref="ArgumentException">The device's network is none of the home's, or a state opens a door that the home does not have.</exception>
    public static DeviceExplanation Device(Home home, Device device, StudyOptions options)
    {
        Network network = home.Networks.FirstOrDefault(other => other.Name == device.Network)
            ?? throw new ArgumentException($"no network is called \"{device.Network}\"", nameof(device));
        return Device(CoverageStudy.Run(home, network, options), new(home, network, options.Model), device, options);
    }

    /// <summary>Explains a device of a network whose routes are known.</summary>
    /// <param name="coverage">The network, in the model and state of the options.</param>
    /// <param name="graphs">Its links in any state.</param>
    /// <param name="device">One of its devices.</param>
    /// <param name="options">Model and state.</param>
    public static DeviceExplanation Device(NetworkCoverage coverage, StateGraphs graphs, Device device, StudyOptions options)
    {
        DeviceTrials trials = new(coverage, graphs, device, options);
        bool isAlarm = Alarms.Includes(device);
        return new DeviceExplanation
        {
            Coverage = coverage,
            Device = device,
            Now = trials.Now,
            Budget = trials.Now.Link is { } link ? Budgeting.Of(coverage.Network, link, coverage.DesignMargin) : null,
            Elsewhere = device.Id == coverage.Network.Coordinator ? [] : trials.Elsewhere(),
            Fixes = isAlarm ? [] : trials.Helping(),
            Tried = isAlarm ? 0 : trials.Candidates.Length,
            IsAlarm = isAlarm,
        };
    }

    /// <summary>Explains a room to somebody who carries a battery device of a network around in it.</summary>
    /// <exception cref="ArgumentException">The home has no such room, or a state opens a door that the home does not have.</exception>
    public static RoomExplanation Room(Home home, Network network, RoomName name, StudyOptions options)
    {
        (Storey storey, Room room) = RoomTrials.Find(home, name);
        NetworkCoverage coverage = CoverageStudy.Run(home, network, options);
        var trials = new RoomTrials(storey, room, coverage, options);
        return new RoomExplanation
        {
            Coverage = coverage,
            Room = room,
            Storey = storey.Name,
            Now = trials.Now,
            Budget = trials.Link is { } link ? Budgeting.Of(network, link, coverage.DesignMargin) : null,
            Darkened = trials.Darkened(),
            Elsewhere = trials.Elsewhere(),
            Fixes = trials.Helping(),
            Tried = trials.Candidates.Length,
        };
    }
}
