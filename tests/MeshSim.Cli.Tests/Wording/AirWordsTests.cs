using MeshSim.Cli.Wording;
using MeshSim.Radio;
using MeshSim.Studies;

namespace MeshSim.Cli.Tests.Wording;

public sealed class AirWordsTests
{
    private static readonly NetworkAir Still = new() { Channels = [], BestChannel = null, Duty = null, Polled = 3 };

    [Fact]
    public void Nothing_is_said_of_what_does_not_hold() => AirWords.Of(Samples.Coverage, Still).Should().BeEmpty();

    [Theory]
    [InlineData(-80, "No channel is disturbed less by the home's access points than 18, the one in use.")]
    [InlineData(-70, "Channel 15 is the least disturbed by the home's access points; 18 is in use.")]
    public void The_channel_in_use_is_held_against_the_best(double inUseDbm, string said)
    {
        NetworkAir air = Still with { Channels = [new(15, new(-80), new(-90), 0), new(18, new(inUseDbm), new(-90), 0)], BestChannel = 15 };
        AirWords.Of(Samples.Coverage, air).Should().Equal(said);
    }

    [Theory]
    [InlineData(0, "USB 3 storage beside stick is assumed to raise its noise floor by 20.0 dB; a lead of 1.5 m would leave 1.6 dB of that.")]
    [InlineData(1, "USB 3 storage beside stick is assumed to raise its noise floor by 20.0 dB; at the end of its lead of 1 m 3.0 dB are left.")]
    public void A_lead_says_what_it_wins_back(double leadMetres, string said)
    {
        NetworkCoverage coverage = Samples.Coverage with { Network = Samples.Network with { IsBesideUsb3 = true, LeadMetres = leadMetres } };
        AirWords.Of(coverage, Still).Should().Equal(said);
    }

    [Fact]
    public void A_limit_of_time_says_what_it_allows()
    {
        var duty = new DutyBudget { Rule = "duty cycle 1 %", DutyCycle = 0.01, FrameMilliseconds = 10, AcknowledgementMilliseconds = 5, FramesPerHour = 3600 };
        AirWords.Of(Samples.Coverage, Still with { Duty = duty }).Should().Equal(
            "Each device may be on the air 1 % of the time (duty cycle 1 %): 3600 frames of 10.0 ms an hour. Asking 3 devices every 60 s "
            + "takes 7.5 % of what stick may send, acknowledgements counted; the limit allows every 4.5 s.");
        AirWords.Of(Samples.Coverage, Still with { Duty = duty with { AcknowledgementMilliseconds = 0 } }).Single().Should().EndWith("an hour.");
    }
}
