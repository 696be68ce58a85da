using System.Collections.Immutable;
using System.Numerics;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Mesh.Reliability;
using MeshSim.Radio;

namespace MeshSim.Tests.Mesh.Reliability;

public sealed class ConnectionDrawsTests
{
    private const int Many = 1_000_000;

    /// <summary>A fixed seed that is off by more than this many standard errors has one chance in 16000 to be honest bad luck.</summary>
    private const double Errors = 4;

    [Theory]
    [InlineData(0.3)]
    [InlineData(0.5)]
    [InlineData(0.9)]
    public void The_bridge_network_lies_within_the_interval(double p)
    {
        ConnectionChance chance = ConnectionDraws.Estimate(ReliabilitySamples.Bridge(p), new(ReliabilitySamples.Deviation, correlation: 0), 100_000, seed: 1)[2];
        chance.Device.Should().Be(MeshSamples.Id(3));
        ReliabilitySamples.BridgeFormula(p).Should().BeInRange(chance.Interval.Low, chance.Interval.High);
    }

    [Fact]
    public void The_interval_holds_the_truth_in_95_of_100_seeds()
    {
        const int Seeds = 400;
        double fourErrors = Errors * Math.Sqrt(0.95 * 0.05 / Seeds);
        MeshGraph graph = ReliabilitySamples.Bridge(0.6);
        double truth = ReliabilitySamples.BridgeFormula(0.6);
        int held = Enumerable.Range(0, Seeds)
            .Select(seed => ConnectionDraws.Estimate(graph, new(ReliabilitySamples.Deviation, 0), 2000, (ulong)seed)[2].Interval)
            .Count(interval => interval.Low <= truth && truth <= interval.High);
        ((double)held / Seeds).Should().BeApproximately(0.95, fourErrors);
    }

    [Fact]
    public void Random_small_networks_agree_with_the_enumeration()
    {
        for (int seed = 0; seed < 40; seed++)
        {
            MeshGraph graph = MeshSamples.RandomGraph(seed, devices: 6, hopLimit: 1 + (seed % 4), isTied: false);
            ImmutableArray<double> exact = ExactConnection.Of(graph, ReliabilitySamples.Deviation);
            ImmutableArray<ConnectionChance> chances = ConnectionDraws.Estimate(graph, new(ReliabilitySamples.Deviation, 0), 50_000, (ulong)seed);
            for (int node = 1; node < 6; node++)
                ShouldEstimate(chances[node - 1], exact[node]);
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.2)]
    [InlineData(0.4)]
    [InlineData(0.5)]
    public void One_link_exists_equally_often_whatever_the_correlation(double correlation)
    {
        MeshGraph graph = ReliabilitySamples.Graph(2, [MeshSamples.Link(0, 1, marginDb: 4)]);
        ShouldEstimate(Estimate(graph, correlation)[0], NormalDistribution.Tail(-4 / ReliabilitySamples.Deviation.Value));
    }

    /// <summary>Two normal variables of correlation ρ are both positive with probability 1/4 + asin(ρ)/2π (W. F. Sheppard, 1899).</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(0.25)]
    [InlineData(0.4)]
    [InlineData(0.5)]
    public void Two_links_that_share_an_end_exist_together_as_often_as_their_correlation_says(double correlation)
    {
        MeshGraph graph = ReliabilitySamples.Graph(3, [MeshSamples.Link(0, 1, marginDb: 0), MeshSamples.Link(1, 2, marginDb: 0)]);
        ShouldEstimate(Estimate(graph, correlation)[1], 0.25 + (Math.Asin(correlation) / (2 * Math.PI)));
    }

    [Fact]
    public void The_answer_is_the_same_as_block_after_block_on_one_thread()
    {
        MeshGraph graph = MeshSamples.RandomGraph(5, devices: 30, hopLimit: 5, isTied: false);
        LinkShadowing shadowing = new(ReliabilitySamples.Deviation);
        const int Draws = 10_050;
        Link[] links = [.. DrawnLinks.Of(graph)];
        (int From, int To)[] ends = DrawnLinks.EndsOf(graph, links);
        var counts = new int[30];
        for (int block = 0; block * 64 < Draws; block++)
        {
            var drawn = new LinkDraws(30, ends, [.. links.Select(link => link.Margin.Value)], shadowing);
            var reach = new ReachWords(30, graph.Relays, ends);
            SplitMix64 random = SplitMix64.OfBlock(3, block);
            drawn.Draw(ref random);
            reach.Spread(Spreading.In(graph), drawn.Exists);
            ulong counted = Draws - (64 * block) >= 64 ? ulong.MaxValue : (1UL << (Draws - (64 * block))) - 1;
            for (int node = 0; node < 30; node++)
                counts[node] += BitOperations.PopCount(reach.Reached[node] & counted);
        }

        ImmutableArray<ConnectionChance> chances = ConnectionDraws.Estimate(graph, shadowing, Draws, seed: 3);
        chances.Select(chance => chance.Connected).Should().Equal(counts.Skip(1));
        ConnectionDraws.Estimate(graph, shadowing, Draws, seed: 3).Should().Equal(chances);
        ConnectionDraws.Estimate(graph, shadowing, Draws, seed: 4).Should().NotEqual(chances);
    }

    [Fact]
    public void Nobody_is_connected_when_the_coordinator_has_no_power_or_is_alone()
    {
        var off = new MeshGraph(MeshSamples.Network(hopLimit: 5), [MeshSamples.Device(1, Role.Router)], [], MeshSamples.DesignMargin);
        Estimate(off, 0.4).Should().Equal(new ConnectionChance(MeshSamples.Id(1), 0, Many));
        var alone = new MeshGraph(MeshSamples.Network(hopLimit: 5), [MeshSamples.Device(0, Role.Coordinator)], [], MeshSamples.DesignMargin);
        Estimate(alone, 0.4).Should().BeEmpty();
        Estimate(new(MeshSamples.Network(hopLimit: 5), [], [], MeshSamples.DesignMargin), 0.4).Should().BeEmpty();
    }

    [Fact]
    public void Numbers_out_of_range_are_refused()
    {
        FluentActions.Invoking(() => ConnectionDraws.Estimate(ReliabilitySamples.Bridge(0.5), new(ReliabilitySamples.Deviation), 0, 1)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => new LinkShadowing(ReliabilitySamples.Deviation, 0.51)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => new LinkShadowing(new(-1))).Should().Throw<ArgumentOutOfRangeException>();
    }

    private static ImmutableArray<ConnectionChance> Estimate(MeshGraph graph, double correlation) =>
        ConnectionDraws.Estimate(graph, new(ReliabilitySamples.Deviation, correlation), Many, seed: 7);

    private static void ShouldEstimate(ConnectionChance chance, double truth) =>
        chance.Probability.Should().BeApproximately(truth, (Errors * Math.Sqrt(truth * (1 - truth) / chance.Draws)) + 1e-12);
}
