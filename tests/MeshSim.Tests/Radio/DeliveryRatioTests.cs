using CsCheck;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class DeliveryRatioTests
{
    private const double LastBit = 1e-15;

    public static TheoryData<Modulation, double, int> Cases
    {
        get
        {
            var cases = new TheoryData<Modulation, double, int>();
            foreach (Modulation modulation in Enum.GetValues<Modulation>())
                foreach (double sigmaDb in new[] { 0.1, 1, 5, 8, 20 })
                    foreach (int octets in new[] { 1, 50, 2047 })
                        cases.Add(modulation, sigmaDb, octets);
            return cases;
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void It_is_as_accurate_as_it_says(Modulation modulation, double sigmaDb, int octets)
    {
        var receiver = new Receiver(RadioSamples.Of(modulation, 20, 600, overheadOctets: 6) with { FrameOctets = octets });
        var delivery = new DeliveryRatio(receiver, new(sigmaDb));
        for (double aboveDb = -25; aboveDb <= 25; aboveDb += 10)
        {
            PowerLevel median = receiver.RequiredLevel + new Decibels(aboveDb);
            delivery.At(median).Should().BeApproximately(ByFineSteps(receiver, median, sigmaDb), DeliveryRatio.Accuracy, "at {0} dB", aboveDb);
        }
    }

    [Fact]
    public void Without_shadowing_it_is_one_minus_the_packet_error_rate()
    {
        var receiver = new Receiver(RadioSamples.OQpsk);
        var delivery = new DeliveryRatio(receiver, Decibels.Zero);
        delivery.At(new(-95.5)).Should().BeApproximately(1 - receiver.LossAt(new(-95.5)), LastBit);
    }

    [Fact]
    public void Far_above_all_arrives_and_far_below_nothing()
    {
        var delivery = new DeliveryRatio(new Receiver(RadioSamples.OQpsk), new(5));
        delivery.At(new(-20)).Should().BeApproximately(1, DeliveryRatio.Accuracy);
        delivery.At(new(-190)).Should().BeApproximately(0, DeliveryRatio.Accuracy);
    }

    [Fact]
    public void A_higher_level_never_delivers_less()
    {
        var delivery = new DeliveryRatio(new Receiver(RadioSamples.OQpsk), new(5));
        Gen.Select(Gen.Double[-130, -60], Gen.Double[0, 3]).Sample((levelDbm, moreDb) =>
            delivery.At(new(levelDbm + moreDb)) >= delivery.At(new(levelDbm)) - DeliveryRatio.Accuracy);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(21)]
    [InlineData(double.NaN)]
    public void Shadowing_outside_the_range_is_refused(double sigmaDb) =>
        FluentActions.Invoking(() => new DeliveryRatio(new Receiver(RadioSamples.OQpsk), new(sigmaDb))).Should().Throw<ArgumentOutOfRangeException>();

    /// <summary>
    /// The trapezoidal rule over ±9 standard deviations, where the density vanishes at both ends: for smooth curves its error
    /// falls exponentially, and steps of a tenth of a standard deviation and at most 0.05 dB leave less than 1e-12.
    /// </summary>
    private static double ByFineSteps(Receiver receiver, PowerLevel median, double sigmaDb)
    {
        const double Farthest = 9;
        double step = Math.Min(0.1, 0.05 / sigmaDb);
        int steps = (int)Math.Ceiling(Farthest / step);
        double sum = 0;
        for (int i = -steps; i <= steps; i++)
        {
            double z = i * step;
            sum += Math.Exp(-z * z / 2) * (1 - receiver.LossAt(median + new Decibels(sigmaDb * z)));
        }

        return sum * step / Math.Sqrt(2 * Math.PI);
    }
}
