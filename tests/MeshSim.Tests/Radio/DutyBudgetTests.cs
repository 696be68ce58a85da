using MeshSim.Files;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class DutyBudgetTests
{
    /// <summary>A few divisions of doubles.</summary>
    private const double Rounding = 1e-12;

    [Fact]
    public void A_mesh_at_868_4_megahertz_may_be_on_the_air_one_per_cent()
    {
        // 32 octets after 21 at 40 kb/s: 10.6 ms; 36 s an hour hold 3396 of them. An acknowledgement has 248 bits: 6.2 ms.
        DutyBudget budget = Of("g9959-eu-40k")!;
        budget.DutyCycle.Should().Be(0.01);
        budget.FrameMilliseconds.Should().BeApproximately(10.6, Rounding);
        budget.AcknowledgementMilliseconds.Should().BeApproximately(6.2, Rounding);
        budget.FramesPerHour.Should().Be(3396);
    }

    [Fact]
    public void Polling_costs_a_frame_and_an_acknowledgement_for_each_device()
    {
        DutyBudget budget = Of("g9959-eu-40k")!;
        budget.PollingShare(10, 60).Should().BeApproximately(10 * 16.8 / 600, Rounding, "600 ms of 60 s are allowed");
        budget.ShortestPollSeconds(10).Should().BeApproximately(16.8, Rounding);
        budget.PollingShare(10, budget.ShortestPollSeconds(10)).Should().BeApproximately(1, Rounding);
        budget.PollingShare(0, 60).Should().Be(0);
    }

    [Theory]
    [InlineData("ieee802154-2450")]
    [InlineData("g9959-eu-100k")]
    public void A_band_without_a_limit_of_time_has_no_budget(string radio) => Of(radio).Should().BeNull();

    [Fact]
    public void A_poll_without_end_or_of_fewer_than_no_devices_is_refused()
    {
        FluentActions.Invoking(() => Of("g9959-eu-40k")!.PollingShare(1, 0)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Of("g9959-eu-40k")!.PollingShare(-1, 60)).Should().Throw<ArgumentOutOfRangeException>();
    }

    private static DutyBudget? Of(string name)
    {
        RadioProfile radio = Catalogues.Radios.First(profile => profile.Name == name);
        return DutyBudget.Of(radio, radio.Carrier(radio.FirstChannel), Catalogues.BandLimits.Where(limit => limit.Region == "EU"));
    }
}
