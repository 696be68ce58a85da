using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class AttemptSharesTests
{
    /// <summary>Both quadratures are within 1e-10, and a table of shares adds four of them.</summary>
    private const double Quadrature = 1e-9;

    private static readonly Receiver Receiver = new(RadioSamples.OQpsk);
    private static readonly Reception Quiet = new(Receiver, Decibels.Zero, [], 4);

    [Theory]
    [InlineData(-95, 5)]
    [InlineData(-85, 5)]
    [InlineData(-96, 0.3)]
    [InlineData(-110, 12)]
    public void The_first_attempt_is_the_delivery_ratio(double dbm, double sigmaDb)
    {
        var delivery = new DeliveryRatio(Receiver, new(sigmaDb));
        new AttemptShares(delivery, 4).At(new(dbm), Quiet)[0].Should().BeApproximately(delivery.At(new(dbm)), Quadrature);
    }

    [Fact]
    public void Without_shadowing_attempts_are_independent()
    {
        var delivery = new DeliveryRatio(Receiver, Decibels.Zero);
        PowerLevel level = Receiver.RequiredLevel - new Decibels(1);
        double d = delivery.At(level);
        new AttemptShares(delivery, 3).At(level, Quiet).Should().Equal([d, d * (1 - d), d * (1 - d) * (1 - d)], (a, b) => Math.Abs(a - b) < Quadrature);
    }

    [Fact]
    public void Retries_do_not_help_a_place_in_shadow()
    {
        // Between all and nothing lie some 3 dB of 5 dB standard deviation: most places are one or the other.
        var delivery = new DeliveryRatio(Receiver, new(5));
        double once = delivery.At(Receiver.RequiredLevel), ever = new AttemptShares(delivery, 4).At(Receiver.RequiredLevel, Quiet).Sum();
        ever.Should().BeGreaterThan(once).And.BeLessThan(once + 0.1).And.BeLessThan(1 - Math.Pow(1 - once, 4) - 0.2);
    }

    [Fact]
    public void Retries_help_against_an_access_point()
    {
        var reception = new Reception(Receiver, Decibels.Zero, [new Interferer("a", new(-40), 0.3)], 4);
        var delivery = new DeliveryRatio(Receiver, new(5));
        double[] shares = [.. new AttemptShares(delivery, 4).At(new(-60), reception)];
        shares.Should().Equal([0.7, 0.21, 0.063, 0.0189], (a, b) => Math.Abs(a - b) < 1e-4, "20 dB below the interference four standard deviations are lost");
    }

    [Fact]
    public void No_attempt_is_refused() =>
        FluentActions.Invoking(() => new AttemptShares(new(Receiver, new(5)), 0)).Should().Throw<ArgumentOutOfRangeException>();
}
