using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Radio;

namespace MeshSim.Studies;

/// <summary>From who reaches whom to what the air allows: the channels of a network compared, and its time on the air.</summary>
public static class AirStudy
{
    /// <summary>The channels of a network and the time that its band allows.</summary>
    /// <param name="coverage">Links and routes of the network.</param>
    public static NetworkAir Run(NetworkCoverage coverage)
    {
        (Home home, Network network) = (coverage.Home, coverage.Network);
        ImmutableArray<Device> devices = [.. home.DevicesOf(network).Where(device => coverage.State?.TurnsOff(device) != true)];
        var model = CoverageStudy.ModelOf(home, network, new StudyOptions { Model = coverage.Model, State = coverage.State });
        ImmutableArray<ChannelEvidence> channels = ChannelSurvey.Of(home, network, model, devices, coverage.Links);
        return new NetworkAir
        {
            Channels = channels,
            BestChannel = channels.IsEmpty ? null : ChannelSurvey.Best(channels).Channel,
            Duty = DutyBudget.Of(network.Radio, network.Carrier, home.BandLimits),
            Polled = devices.Count(device => device.Id != network.Coordinator),
        };
    }
}
