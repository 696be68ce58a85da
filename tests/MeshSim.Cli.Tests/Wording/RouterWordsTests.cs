using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Mesh.Outages;
using MeshSim.Mesh.Routers;
using MeshSim.Studies;

namespace MeshSim.Cli.Tests.Wording;

public sealed class RouterWordsTests
{
    private static readonly DeviceId Shed = new("shed-sensor");
    private static readonly Outage Night = new(OutageKind.State, "night", new() { Name = "night" });
    private static readonly Outage HallSwitch = new(OutageKind.Switch, "hall switch", new() { Name = "" });

    private static readonly RouterDuty Idle = new()
    {
        Device = new("lamp"),
        Relays = true,
        IsReached = true,
        Carries = [],
        NeededBy = [],
        LeavesOneWay = [],
        TakenBy = [],
        MissedIn = [],
    };

    [Fact]
    public void The_answer_names_what_to_act_upon_first() =>
        RouterWords.Answer(Of(Idle with { Device = new("plug"), NeededBy = [Shed] }, Idle with { NeededBy = [Shed], MissedIn = [Night] }, Idle with { Device = new("fan") })).Should().Be(
            "Replace by an always-on device, or bypass the switch: lamp. Keep powered: plug. Harmless to switch off, one at a time: 1 of 3 mains devices.");

    [Fact]
    public void A_mesh_that_needs_nobody_is_told_so()
    {
        RouterWords.Answer(Of(Idle)).Should().Be("Any one mains device may be switched off: nobody loses the way.");
        RouterWords.Answer(Of()).Should().Be("Only stick carries the network: no other mains device is on.");
    }

    [Fact]
    public void The_reason_says_who_drops_and_when()
    {
        RouterWords.Why(Idle with { NeededBy = [Shed], MissedIn = [Night, HallSwitch] }).Should().Be("shed-sensor has no other way; missed when off in night and by hall switch");
        RouterWords.Why(Idle with { MissedIn = [HallSwitch] }).Should().Be("one of several that stand in for each other; missed when off by hall switch");
        RouterWords.Why(Idle with { LeavesOneWay = [Shed] }).Should().Be("nobody drops; one way is left to shed-sensor");
        RouterWords.Why(Idle with { Carries = [Shed] }).Should().Be("all that it carries have other ways");
        RouterWords.Why(Idle with { Relays = false }).Should().Be("relays nothing");
        RouterWords.Why(Idle with { IsReached = false }).Should().Be("no reliable way itself");
        RouterWords.Why(Idle).Should().Be("carries nobody");
    }

    [Fact]
    public void Help_names_the_best_place_and_how_many_were_asked()
    {
        RouterWords.Help(Of() with { Considered = 0 }).Should().Be("No further mains device of the home could route here.");
        RouterWords.Help(Of()).Should().Be("No device would gain if one of them routed here (3 further mains devices of the home asked).");
        NewRouter best = new() { Device = new("light"), Network = new("lighting"), Reached = [Shed], SecondWay = [] };
        RouterWords.Help(Of() with { NewRouters = [best] }).Should().StartWith("A router of this network at the place of light would help most");
    }

    private static NetworkRouters Of(params ImmutableArray<RouterDuty> duties) =>
        new() { Coverage = Samples.Coverage, Duties = duties, NewRouters = [], Considered = 3 };
}
