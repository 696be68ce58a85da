using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files;
using MeshSim.Mesh;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Tests.Mesh;

public sealed class CommandsTests
{
    /// <summary>1e-10 of probability is dropped at each end, of times up to some 100 ms.</summary>
    private const double DroppedMilliseconds = 1e-6;

    private static readonly RadioProfile Radio = Catalogues.Radios.First(radio => radio.Name == "ieee802154-2450");
    private static readonly Network Net = MeshSamples.Network(hopLimit: 5) with { Radio = Radio, Channel = 17 };

    [Fact]
    public void On_good_links_each_hop_costs_back_off_frame_and_acknowledgement()
    {
        double hop = 1.12 + 0.128 + 0.192 + Airtime.Milliseconds(Radio, Radio.FrameOctets) + 0.192 + 0.352;
        ImmutableArray<Link> links = Links(InterferenceHomes.Row(3));
        CommandDelivery near = Along(links, 1, 0), far = Along(links, 2, 1, 0);

        near.ExpectedMilliseconds.Should().BeApproximately(hop, DroppedMilliseconds);
        far.ExpectedMilliseconds.Should().BeApproximately(2 * hop, DroppedMilliseconds);
        far.P95Milliseconds.Should().BeInRange(far.ExpectedMilliseconds, 2 * near.P95Milliseconds, "two waits are seldom both long");
        far.Delivery.Should().BeApproximately(1, 1e-9);
    }

    [Fact]
    public void Percentile_and_mean_are_those_of_many_seeded_draws()
    {
        // 200,000 draws: the mean of times of some 8 ms deviation is off by 0.02 ms, the percentile by a few times that.
        const int Draws = 200_000;
        const double MeanOffMilliseconds = 0.08, PercentileOffMilliseconds = 0.35;
        ImmutableArray<Link> links = Links(InterferenceHomes.Row(3, InterferenceHomes.AccessPoint(channel: 6, xMetres: 3)));
        CommandDelivery command = Along(links, 2, 1, 0);

        var random = new Random(4);
        List<double> times = [];
        for (int i = 0; i < Draws; i++)
            if (Hop(random, links[0]) is { } first && Hop(random, links[2]) is { } second) times.Add(first + second);
        times.Sort();

        // Three standard deviations of a share of 200,000.
        (times.Count / (double)Draws).Should().BeApproximately(command.Delivery, 3 * Math.Sqrt(0.25 / Draws));
        times.Average().Should().BeApproximately(command.ExpectedMilliseconds, MeanOffMilliseconds);
        times[(int)(0.95 * times.Count)].Should().BeApproximately(command.P95Milliseconds, PercentileOffMilliseconds);
    }

    [Fact]
    public void A_radio_that_tries_again_delivers_more_and_takes_longer()
    {
        Home home = InterferenceHomes.Row(2, InterferenceHomes.AccessPoint(channel: 6, xMetres: 3));
        CommandDelivery once = Along(Links(home), Radio with { Access = Radio.Access with { Retries = 0 } }, 1, 0), often = Along(Links(home), 1, 0);
        often.Delivery.Should().BeGreaterThan(once.Delivery);
        often.ExpectedMilliseconds.Should().BeGreaterThan(once.ExpectedMilliseconds);
    }

    [Fact]
    public void Beside_an_access_point_that_never_stops_no_command_arrives()
    {
        Home home = InterferenceHomes.Row(3, InterferenceHomes.AccessPoint(channel: 6, xMetres: 3, busy: 1));
        Along(Links(home), 2, 1, 0).Should().Be(new CommandDelivery(0, double.PositiveInfinity, double.PositiveInfinity));
    }

    [Fact]
    public void A_device_without_a_route_has_no_command()
    {
        var reach = new DeviceReach { Device = MeshSamples.Id(1), Route = null, DisjointRoutes = 0 };
        new Commands(Radio, new(5), Links(InterferenceHomes.Row(2))).On(reach).Command.Should().BeNull();
    }

    /// <summary>One hop drawn at random: a place, then attempts, each in the conditions of its moment.</summary>
    private static double? Hop(Random random, Link link)
    {
        MediumAccess access = Radio.Access;
        var receiver = new Receiver(Radio);
        double z = Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        PowerLevel level = link.Received + new Decibels(5 * z);
        double busy = link.AtFrom!.ShareFrom(access.BusyThreshold!.Value), frame = Airtime.Milliseconds(Radio, Radio.FrameOctets), time = 0;
        for (int attempt = 0; attempt < access.Attempts; attempt++)
        {
            bool isFree = false;
            for (int look = 0, units = access.BackOffUnits; look < access.Looks && !isFree; look++, units = Math.Min(2 * units, access.MostBackOffUnits))
            {
                time += (random.Next(units) * 0.32) + 0.128;
                isFree = random.NextDouble() >= busy;
            }

            ReceptionCondition now = Drawn(random, link.AtTo!);
            bool arrives = isFree && random.NextDouble() >= receiver.LossAt(level - link.AtTo!.RiseIn(now));
            if (isFree) time += 0.192 + frame + (arrives ? 0.544 : 0.864);
            if (arrives) return time;
        }

        return null;
    }

    private static ReceptionCondition Drawn(Random random, Reception reception)
    {
        double left = random.NextDouble();
        foreach (ReceptionCondition condition in reception.Conditions)
            if ((left -= condition.Share) < 0) return condition;
        return reception.Conditions[^1];
    }

    private static ImmutableArray<Link> Links(Home home) => LinkTable.Compute(home, Net, new InterferenceHomes.TenDecibelsPerMetre(), state: null);

    private static CommandDelivery Along(ImmutableArray<Link> links, params int[] path) => Along(links, Radio, path);

    private static CommandDelivery Along(ImmutableArray<Link> links, RadioProfile radio, params int[] path) => new Commands(radio, new(5), links).Along(
        new() { Path = [.. path.Select(MeshSamples.Id)], Etx = 1, WeakestMargin = Decibels.Zero, Delivery = 1 });
}
