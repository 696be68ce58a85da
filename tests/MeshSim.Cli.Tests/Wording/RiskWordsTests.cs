using MeshSim.Cli.Wording;

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

    [Fact]
    public void What_they_do_not_mend_is_still_for_the_person() =>
        RiskWords.Of(Samples.Answer with
        {
            Placement = Samples.Placement with { StatesHeld = ["bedtime"], Unserved = [new(new("lamp"), new(2), "plug", new("bedtime", null))] },
        }).Should().Equal("bedtime must hold and drops lamp: plug carries it; replace plug by an always-on device, or bypass the switch");
}
