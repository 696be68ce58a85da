using System.Collections.Immutable;
using MeshSim.Cli.Answers;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Mesh.Outages;

namespace MeshSim.Cli.Tests.Wording;

public sealed class RiskWordsTests
{
    [Fact]
    public void A_state_that_drops_somebody_names_what_carries_it_and_what_to_do() =>
        RiskWords.Of(Samples.Answer).Should().Equal("bedtime must hold and drops lamp: plug carries it; replace plug by an always-on device, or bypass the switch");

    [Fact]
    public void What_the_repeaters_mend_asks_for_nothing_else() =>
        RiskWords.Of(Samples.Answer with { Placement = Samples.Placement with { StatesHeld = ["bedtime"] } }).Should().Equal(
            "bedtime must hold and drops lamp: plug carries it; what is recommended above mends that");

    [Theory]
    [InlineData(false, "plug: lamp has no other way; missed when off by hall switch; what is recommended above mends that")]
    [InlineData(true, "plug: lamp has no other way; missed when off by hall switch; replace plug by an always-on device, or bypass the switch")]
    public void A_switch_that_takes_another_device_too_is_not_mended_by_surviving_one(bool takesAnother, string said)
    {
        Outage byHand = new(OutageKind.Switch, "hall switch", new() { Name = "hall switch", SwitchesOff = ["hall switch"] });
        ImmutableArray<DeviceId> off = [new("plug"), .. takesAnother ? [new DeviceId("fan")] : Array.Empty<DeviceId>()];
        NetworkAnswer answer = Samples.Answer with
        {
            Routers = Samples.Answer.Routers with { Duties = [Samples.Answer.Routers.Duties[0] with { TakenBy = [byHand], MissedIn = [byHand] }] },
            Rehearsal = Samples.Answer.Rehearsal with { Rehearsals = [Samples.Answer.Rehearsal.Rehearsals[0] with { Outage = byHand, Off = off }] },
        };

        RiskWords.Of(answer).Should().Equal(said);
    }

    [Theory]
    [InlineData("away", "what is recommended above mends that")]
    [InlineData("bedtime", "replace plug by an always-on device, or bypass the switch")]
    public void A_state_that_nobody_asked_for_is_not_mended(string held, string said)
    {
        Outage away = new(OutageKind.State, "away", new() { Name = "away", DevicesOff = [new("plug")] });
        NetworkAnswer answer = Samples.Answer with
        {
            Placement = Samples.Placement with { StatesHeld = [held] },
            Routers = Samples.Answer.Routers with { Duties = [Samples.Answer.Routers.Duties[0] with { TakenBy = [away], MissedIn = [away] }] },
            Rehearsal = Samples.Answer.Rehearsal with { Rehearsals = [] },
        };

        RiskWords.Of(answer).Should().Equal($"plug: lamp has no other way; missed when off in away; {said}");
    }

    [Fact]
    public void What_they_do_not_mend_is_still_for_the_person() =>
        RiskWords.Of(Samples.Answer with
        {
            Placement = Samples.Placement with { StatesHeld = ["bedtime"], Unserved = [new(new("lamp"), new(2), "plug", new("bedtime", null))] },
        }).Should().Equal("bedtime must hold and drops lamp: plug carries it; replace plug by an always-on device, or bypass the switch");
}
