using System.Collections.Immutable;
using MeshSim.Placement;

namespace MeshSim.Tests.Placement;

/// <summary>A problem with patches of floor in plain view: the patches are the last end devices of a sample.</summary>
/// <param name="Problem">Devices, patches, outlets.</param>
/// <param name="Patches">Number of patches.</param>
internal sealed record LadderSample(ProblemSample Problem, int Patches)
{
    private int Devices => Problem.Relays.Length - Patches;

    public static LadderSample Random(int seed)
    {
        ProblemSample sample = ProblemSample.Random(seed, isCoarse: seed % 2 == 0);
        int patches = seed % 4;
        ImmutableArray<bool> relays = [.. sample.Relays.Select((relays, i) => relays && i < Math.Max(1, sample.Relays.Length - patches))];
        return new(sample with { Relays = relays }, Math.Min(patches, sample.Relays.Length - 1));
    }

    public ImmutableArray<Rung> Climb(WorkLimit? limit = null)
    {
        int first = Devices, outlets = Problem.OutletCount;
        RepeaterProblem bare = new(
            Problem.Relays[..first], 0, outlets, Problem.HopLimit, new(Problem.DesignMarginDb), (a, b) => new(Problem.MarginsDb[Full(a), Full(b)]));
        ImmutableArray<FloorPatch> floor =
        [
            .. Enumerable.Range(first, Patches).Select(patch =>
                new FloorPatch([.. Enumerable.Range(0, first + outlets).Select(node => Problem.MarginsDb[patch, Full(node)] >= Problem.DesignMarginDb)], PointsOf(patch))),
        ];
        return CoverageLadder.Climb(Situation.WithAllPower(bare), floor, outlets, limit);

        int Full(int node) => node < first ? node : node + Patches;
    }

    /// <summary>The best that so many outlets can do.</summary>
    public Coverage Best(int count) => Enumerable.Range(0, 1 << Problem.OutletCount).Where(subset => int.PopCount(subset) <= count).Select(Of).Max();

    /// <summary>What some outlets cover.</summary>
    public Coverage Of(int subset)
    {
        bool[] reached = Reached(Problem, subset);
        bool[] twice = [.. reached];
        for (int lost = 1; lost < Problem.NodeCount; lost++)
        {
            double[,] margins = (double[,])Problem.MarginsDb.Clone();
            for (int other = 0; other < Problem.NodeCount; other++) margins[lost, other] = margins[other, lost] = double.NegativeInfinity;
            bool[] without = Reached(Problem with { MarginsDb = margins }, subset);
            for (int node = 0; node < Devices; node++) twice[node] &= node == lost || without[node];
        }

        return new(
            Enumerable.Range(1, Devices - 1).Count(device => reached[device]),
            Enumerable.Range(1, Devices - 1).Count(device => twice[device]),
            Enumerable.Range(Devices, Patches).Where(patch => reached[patch]).Sum(PointsOf));
    }

    private static int PointsOf(int patch) => patch + 1;

    private static bool[] Reached(ProblemSample sample, int subset) =>
        [.. ExhaustivePlacement.StrongestRoutesDb(sample, subset).Select(marginDb => marginDb >= sample.DesignMarginDb)];
}
