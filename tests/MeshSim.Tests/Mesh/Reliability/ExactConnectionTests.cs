using System.Collections.Immutable;
using CsCheck;
using MathNet.Numerics;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Mesh.Reliability;
using MeshSim.Quantities;

namespace MeshSim.Tests.Mesh.Reliability;

public sealed class ExactConnectionTests
{
    /// <summary>A margin made from a probability and turned back goes through two series of the normal distribution.</summary>
    private const double ThereAndBack = 1e-12;

    public static TheoryData<double> Probabilities => [0.05, 0.3, 0.5, 0.9, 0.99];

    [Theory]
    [MemberData(nameof(Probabilities))]
    public void The_bridge_network_has_its_closed_form(double p) =>
        Of(ReliabilitySamples.Bridge(p))[3].Should().BeApproximately(ReliabilitySamples.BridgeFormula(p), ThereAndBack);

    [Theory]
    [MemberData(nameof(Probabilities))]
    public void Links_in_series_multiply(double p) =>
        Of(ReliabilitySamples.Graph(5, p, (0, 1), (1, 2), (2, 3), (3, 4))).Select((value, node) => value - Math.Pow(p, node))
            .Should().OnlyContain(difference => Math.Abs(difference) < ThereAndBack);

    [Theory]
    [MemberData(nameof(Probabilities))]
    public void Ways_in_parallel_fail_together_only(double p)
    {
        ImmutableArray<double> exact = Of(ReliabilitySamples.Graph(5, p, (0, 1), (0, 2), (0, 3), (1, 4), (2, 4), (3, 4)));
        exact[4].Should().BeApproximately(1 - Math.Pow(1 - (p * p), 3), ThereAndBack);
    }

    /// <summary>E. N. Gilbert, "Random graphs", Annals of Mathematical Statistics 30 (1959): both recursions.</summary>
    [Theory]
    [MemberData(nameof(Probabilities))]
    public void Two_devices_of_a_complete_network_are_connected_as_Gilberts_recursion_says(double p)
    {
        for (int n = 2; n <= 6; n++)
        {
            (int From, int To)[] links = [.. from a in Enumerable.Range(0, n) from b in Enumerable.Range(a + 1, n - a - 1) select (a, b)];
            ImmutableArray<double> exact = Of(ReliabilitySamples.Graph(n, p, links));
            for (int node = 1; node < n; node++)
                exact[node].Should().BeApproximately(TwoConnected(n, p), ThereAndBack);
        }
    }

    [Fact]
    public void All_of_a_complete_network_are_connected_as_often_as_counted_one_by_one()
    {
        // The values of the recursion itself, so that the test above does not lean on it unchecked: K3 is 3p² − 2p³.
        AllConnected(3, 0.3).Should().BeApproximately((3 * 0.09) - (2 * 0.027), ThereAndBack);

        // K4 by its number of connected graphs with 3, 4, 5 and 6 of its 6 links: 16, 15, 6, 1.
        AllConnected(4, 0.5).Should().BeApproximately((16 + 15 + 6 + 1) / 64.0, ThereAndBack);
    }

    [Fact]
    public void Hop_limit_and_end_devices_count()
    {
        Link[] links = [ReliabilitySamples.Link(0, 1, 0.5), ReliabilitySamples.Link(1, 2, 0.5), ReliabilitySamples.Link(2, 3, 0.5)];
        MeshGraph graph = MeshSamples.Graph(MeshSamples.Network(hopLimit: 2), [Role.Router, Role.Router, Role.Router], [.. links]);
        Of(graph).Should().Equal([1, 0.5, 0.25, 0], (a, b) => Math.Abs(a - b) < ThereAndBack);
        MeshGraph sleepers = MeshSamples.Graph(MeshSamples.Network(hopLimit: 9), [Role.EndDevice, Role.Router, Role.Router], [.. links]);
        Of(sleepers).Should().Equal([1, 0.5, 0, 0], (a, b) => Math.Abs(a - b) < ThereAndBack);
    }

    [Fact]
    public void Without_shadowing_the_margins_decide()
    {
        MeshGraph graph = ReliabilitySamples.Graph(4, [MeshSamples.Link(0, 1, marginDb: 0), MeshSamples.Link(1, 2, marginDb: -0.001), MeshSamples.Link(1, 3)]);
        ExactConnection.Of(graph, Decibels.Zero).Should().Equal(1, 1, 0, 1);
        ConnectionDraws.Estimate(graph, new(Decibels.Zero), 100, 1).Select(chance => chance.Probability).Should().Equal(1, 0, 1);
    }

    [Fact]
    public void A_better_link_never_makes_a_device_less_sure() =>
        Gen.Select(Gen.Int[0, int.MaxValue], Gen.Double[0, 10]).Sample(
            (seed, gainDb) =>
            {
                MeshGraph graph = MeshSamples.RandomGraph(seed, devices: 6, hopLimit: 3, isTied: false);
                if (graph.Links.IsEmpty) return;
                Link raised = graph.Links[seed % graph.Links.Length];
                MeshGraph better = new(
                    MeshSamples.Network(3),
                    Enumerable.Range(0, 6).Select(node => MeshSamples.Device(node, node == 0 ? Role.Coordinator : graph.Relays(node) ? Role.Router : Role.EndDevice)),
                    graph.Links.Replace(raised, raised with { Margin = raised.Margin + new Decibels(gainDb) }),
                    MeshSamples.DesignMargin);
                Of(graph).Zip(Of(better)).Should().OnlyContain(pair => pair.Second >= pair.First - ThereAndBack);
            },
            iter: 100);

    [Fact]
    public void Too_many_links_are_refused()
    {
        (int From, int To)[] links = [.. from a in Enumerable.Range(0, 7) from b in Enumerable.Range(a + 1, 6 - a) select (a, b)];
        FluentActions.Invoking(() => Of(ReliabilitySamples.Graph(7, 0.5, links))).Should().Throw<ArgumentException>().WithMessage("21 links; at most 20*");
    }

    private static ImmutableArray<double> Of(MeshGraph graph) => ExactConnection.Of(graph, ReliabilitySamples.Deviation);

    private static double AllConnected(int n, double p) =>
        1 - Enumerable.Range(1, n - 1).Sum(k => SpecialFunctions.Binomial(n - 1, k - 1) * AllConnected(k, p) * Math.Pow(1 - p, k * (n - k)));

    private static double TwoConnected(int n, double p) =>
        1 - Enumerable.Range(1, n - 1).Sum(k => SpecialFunctions.Binomial(n - 2, k - 1) * AllConnected(k, p) * Math.Pow(1 - p, k * (n - k)));
}
