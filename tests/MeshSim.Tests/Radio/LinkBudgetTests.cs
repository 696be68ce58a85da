using CsCheck;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Tests.Radio;

public sealed class LinkBudgetTests
{
    /// <summary>Levels and losses are printed to 12 digits; chaining five of them adds their roundings.</summary>
    private const double ChainedDb = 1e-8;

    /// <summary>A decibel of SINR moves an error rate near 1 % some tenfold, so the roundings of a chain grow by that much.</summary>
    private const double ChainedShare = 1e-7;

    private static readonly ReferenceTable Examples = ReferenceTable.Read("Radio/link-examples.csv");

    public static TheoryData<int> ExampleRows => Examples.Rows(4);

    [Theory]
    [MemberData(nameof(ExampleRows))]
    public void The_chained_link_examples_come_out_as_printed(int row)
    {
        RadioProfile radio = RadioSamples.OQpsk with
        {
            NoiseFigure = new(Examples.Number(row, "NF_dB")),
            Sensitivity = RadioSamples.NoiseDecides,
        };
        var eirp = new PowerLevel(Examples.Number(row, "EIRP_dBm_rx_gain_0dBi"));
        double wallsDb = Examples.Text(row, "wall_losses_dB").Split(" + ").Sum(double.Parse);
        wallsDb.Should().BeApproximately(Examples.Number(row, "wall_total_dB"), ChainedDb);

        var budget = new LinkBudget(radio, Decibels.Zero);
        var receiver = new Receiver(radio);
        LinkLevels levels = budget.Between(eirp, eirp, new(Examples.Number(row, "free_space_dB") + wallsDb));
        levels.Received.Dbm.Should().BeApproximately(Examples.Number(row, "P_rx_dBm"), ChainedDb);
        (levels.Received - receiver.NoiseFloor).Value.Should().BeApproximately(Examples.Number(row, "SNR_or_Eb_N0_dB"), ChainedDb);

        double ber = Examples.Number(row, "BER"), per = Examples.Number(row, "PER_50_bytes");
        receiver.BitErrorRateAt(levels.Received).Should().BeApproximately(ber, ChainedShare * ber);
        (1 - levels.Delivery).Should().BeApproximately(per, ChainedShare * per);
    }

    [Fact]
    public void The_worse_direction_counts()
    {
        var budget = new LinkBudget(RadioSamples.OQpsk with { AntennaGain = new(-2) }, new(5));
        LinkLevels levels = budget.Between(new(8), new(3), new(80));
        levels.Received.Should().Be(new PowerLevel(-76));
        levels.Reverse.Should().Be(new PowerLevel(-81));
        levels.Margin.Should().Be(levels.Reverse - budget.RequiredLevel);
        levels.Delivery.Should().BeGreaterThan(levels.ReverseDelivery);
    }

    [Fact]
    public void More_loss_never_helps() =>
        Gen.Select(Gen.Double[40, 130], Gen.Double[0, 10]).Sample((lossDb, moreDb) =>
        {
            LinkLevels less = Budget.Between(new(4), new(0), new(lossDb)), more = Budget.Between(new(4), new(0), new(lossDb + moreDb));
            return more.Margin <= less.Margin
                && more.Delivery <= less.Delivery + DeliveryRatio.Accuracy
                && more.ReverseDelivery <= less.ReverseDelivery + DeliveryRatio.Accuracy;
        });

    private static readonly LinkBudget Budget = new(RadioSamples.OQpsk, new(5));
}
