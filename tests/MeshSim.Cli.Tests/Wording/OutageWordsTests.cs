using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Mesh.Outages;
using MeshSim.Studies;

namespace MeshSim.Cli.Tests.Wording;

public sealed class OutageWordsTests
{
    private static readonly DeviceId Plug = new("plug"), Lamp = new("lamp");

    [Fact]
    public void A_broken_promise_comes_first() =>
        OutageWords.Answer(Of(Outage(OutageKind.State, "night", mustHold: true, Plug), Outage(OutageKind.Switch, "hall switch", mustHold: false, Lamp))).Should().Be(
            "night must hold and drops plug. What drops a device: 1 of 1 states and 1 of 1 switches.");

    [Fact]
    public void Promises_kept_are_said_too()
    {
        Rehearsal night = Outage(OutageKind.State, "night", mustHold: true), away = Outage(OutageKind.State, "away", mustHold: true);
        OutageWords.Answer(Of(night)).Should().Be("night must hold and does. Nothing but the loss of the coordinator drops a device.");
        OutageWords.Answer(Of(night, away)).Should().StartWith("night and away must hold and do.");
    }

    [Fact]
    public void A_network_without_devices_has_nothing_to_rehearse() =>
        OutageWords.Answer(Of() with { Coverage = Samples.Coverage with { Devices = [] } }).Should().Be("stick is alone: the network has no other device that is on.");

    [Fact]
    public void The_loss_of_all_is_counted_not_listed()
    {
        OutageWords.Dropped(Samples.Coverage, Outage(OutageKind.Hub, "stick", mustHold: false, Plug, Lamp)).Should().Be("all 2 with a reliable way");
        OutageWords.Dropped(Samples.Coverage, Outage(OutageKind.Router, "lamp", mustHold: false, Plug)).Should().Be("plug");
        OutageWords.Dropped(Samples.Coverage, Outage(OutageKind.Router, "lamp", mustHold: false)).Should().Be("nobody");
    }

    private static NetworkRehearsal Of(params ImmutableArray<Rehearsal> rehearsals) =>
        new() { Coverage = Samples.Coverage, Options = new(), Rehearsals = rehearsals, Chances = [] };

    private static Rehearsal Outage(OutageKind kind, string name, bool mustHold, params ImmutableArray<DeviceId> dropped) => new()
    {
        Outage = new(kind, name, new() { Name = name, MustHold = mustHold }),
        Off = [],
        Dropped = dropped,
        LeftWithOneWay = [],
        Gained = [],
        Changed = [],
    };
}
