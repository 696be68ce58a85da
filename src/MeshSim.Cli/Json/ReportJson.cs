using System.Collections.Immutable;
using MeshSim.Cli.Answers;
using MeshSim.Cli.Wording;
using MeshSim.Devices;

namespace MeshSim.Cli.Json;

/// <summary>What a report answers, as JSON.</summary>
internal sealed record ReportJson(string Home, string Report, ImmutableArray<ReportNetworkJson> Networks)
{
    /// <summary>The record of a report.</summary>
    /// <param name="home">The home.</param>
    /// <param name="answers">One for each network.</param>
    /// <param name="page">Where the page is.</param>
    public static ReportJson Of(Home home, ImmutableArray<NetworkAnswer> answers, string page) =>
        new(home.Name, page, [.. answers.Select(ReportNetworkJson.Of)]);
}

/// <summary>The answer for one network by ids; the files of the report have the rest.</summary>
internal sealed record ReportNetworkJson(
    string Network,
    int Devices,
    int Ways,
    bool HoldStates,
    ImmutableArray<string> StatesHeld,
    ImmutableArray<string> Unreachable,
    ImmutableArray<string> Repeaters,
    ImmutableArray<string> Unserved)
{
    /// <summary>The record of an answer.</summary>
    public static ReportNetworkJson Of(NetworkAnswer answer) => new(
        answer.Coverage.Network.Name.Value,
        answer.Coverage.Devices.Length,
        answer.Placement.Goals.Ways,
        answer.Placement.Goals.HoldStates,
        answer.Placement.StatesHeld,
        [.. CoverageWords.Unreached(answer.Coverage).Select(reach => reach.Device.Value)],
        [.. answer.Placement.Repeaters.Select(repeater => repeater.Outlet.Id.Value)],
        [.. answer.Placement.Unserved.Select(unserved => unserved.Device.Value).Distinct()]);
}
