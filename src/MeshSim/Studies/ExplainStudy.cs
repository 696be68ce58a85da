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
        NetworkCoverage coverage = CoverageStudy.Run(home, network, options);
        DeviceStanding now = DeviceTrials.StandingOf(home, network, device.Id, options);
        Link? budgeted = now.Link;
        bool isAlarm = Alarms.Includes(device);
        var trials = new DeviceTrials(home, network, device, options, coverage, now);
        return new DeviceExplanation
        {
            Coverage = coverage,
            Device = device,
            Now = now,
            Budget = budgeted is null ? null : Budgeting.Of(network, budgeted, coverage.DesignMargin),
            Elsewhere = device.Id == network.Coordinator ? [] : trials.Elsewhere(),
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
