using CsCheck;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class ReceptionTests
{
    /// <summary>Levels go through powers and back a few times.</summary>
    private const double RoundingDb = 1e-12;

    private static readonly Receiver Receiver = new(RadioSamples.OQpsk);

    [Fact]
    public void Without_anybody_the_receiver_needs_exactly_what_it_needs()
    {
        Reception reception = Of(1);
        reception.Conditions.Should().ContainSingle().Which.Should().Be(new ReceptionCondition(1, null, Receiver.RequiredLevel));
        (reception.QuietLevel, reception.PlanningLevel, reception.BusyLevel).Should().Be((Receiver.RequiredLevel, Receiver.RequiredLevel, Receiver.RequiredLevel));
        reception.MeanInterference.Should().BeNull();
    }

    [Fact]
    public void Strong_interference_is_needed_above_by_the_required_ratio()
    {
        // At -40 dBm the noise, 55 dB below, adds 1.4e-5 dB.
        const double NoiseShareDb = 2e-5;
        Reception reception = Of(1, new Interferer("a", new(-40), 0.3));
        (reception.BusyLevel - new PowerLevel(-40)).Value.Should().BeApproximately(Receiver.RequiredSinr.Value, NoiseShareDb);
        reception.Conditions.Select(condition => condition.Share).Should().Equal(0.7, 0.3);
        reception.ShareFrom(new(-40)).Should().Be(0.3);
        reception.ShareFrom(new(-39.9)).Should().Be(0);
    }

    [Fact]
    public void A_raised_noise_floor_holds_all_the_time()
    {
        Reception reception = new(Receiver, new(20), [], 1);
        reception.PlanningLevel.Dbm.Should().BeApproximately((Receiver.NoiseFloor + new Decibels(20) + Receiver.RequiredSinr).Dbm, RoundingDb);
        reception.RiseIn(reception.Conditions[0]).Value.Should().BeApproximately((reception.PlanningLevel - Receiver.RequiredLevel).Value, RoundingDb);
    }

    [Theory]
    [InlineData(1, 0.04, false)]
    [InlineData(1, 0.06, true)]
    [InlineData(4, 0.46, false)]
    [InlineData(4, 0.48, true)]
    public void Planning_counts_what_retries_do_not_absorb(int attempts, double busy, bool counts)
    {
        Reception reception = Of(attempts, new Interferer("a", new(-60), busy));
        reception.PlanningLevel.Should().Be(counts ? reception.BusyLevel : reception.QuietLevel);
    }

    [Fact]
    public void Two_that_are_absorbed_each_may_not_be_together()
    {
        Reception reception = Of(4, new Interferer("near", new(-50), 0.3), new Interferer("far", new(-70), 0.3));
        reception.PlanningLevel.Should().BeGreaterThan(reception.QuietLevel).And.BeLessThan(reception.BusyLevel, "one of them is on 51 % of the time, the near one 30 %");
    }

    [Fact]
    public void Shares_sum_to_one_and_needs_rise()
    {
        Gen<Interferer> one = Gen.Select(Gen.Double[-100, -30], Gen.Double[0, 1], (dbm, busy) => new Interferer("x", new(dbm), busy));
        one.Array[0, 9].Sample(interferers =>
        {
            Reception reception = new(Receiver, Decibels.Zero, interferers, 4);
            reception.Conditions.Sum(condition => condition.Share).Should().BeApproximately(1, RoundingDb);
            reception.Conditions.Select(condition => condition.RequiredLevel.Dbm).Should().BeInAscendingOrder();
            reception.PlanningLevel.Should().BeInRange(reception.QuietLevel, reception.BusyLevel);
            reception.Conditions.Length.Should().BeLessThanOrEqualTo(1 << Reception.MostCombined);
        });
    }

    [Fact]
    public void An_impossible_share_of_time_is_refused() =>
        FluentActions.Invoking(() => Of(1, new Interferer("a", new(-60), 1.1))).Should().Throw<ArgumentOutOfRangeException>();

    private static Reception Of(int attempts, params Interferer[] interferers) => new(Receiver, Decibels.Zero, interferers, attempts);
}
