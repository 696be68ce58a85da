using System.Collections.Immutable;
using CsCheck;
using MeshSim.Placement;

namespace MeshSim.Tests.Placement;

/// <summary>A repeater problem of several situations in plain view: the same nodes, other links and other power in each.</summary>
/// <param name="Situations">Everyday first.</param>
/// <param name="Off">Per situation the nodes without power; never the coordinator.</param>
/// <param name="Ways">1 or 2.</param>
internal sealed record SurvivalSample(ImmutableArray<ProblemSample> Situations, ImmutableArray<ImmutableArray<int>> Off, int Ways)
{
    /// <summary>Random problems of one to three situations and one or two ways, up to eight devices and eight outlets.</summary>
    public static readonly Gen<SurvivalSample> Any = Gen.Select(Gen.Int[0, int.MaxValue], Gen.Bool, Gen.Int[1, 2]).Select(Random);

    public ProblemSample Everyday => Situations[0];

    public ImmutableArray<Situation> Asked => [.. Situations.Zip(Off, SituationOf)];

    public static SurvivalSample Random(int seed, bool isCoarse, int ways)
    {
        var random = new Random(seed);
        ProblemSample everyday = ProblemSample.Random(seed, isCoarse);
        int situations = random.Next(1, 4);
        ProblemSample[] all = [everyday, .. Enumerable.Range(1, situations - 1).Select(_ => OtherDoors())];
        return new([.. all], [.. all.Select((_, index) => OffIn(index))], ways);

        // A door that opens or closes changes some margins by some decibels.
        ProblemSample OtherDoors()
        {
            double[,] margins = (double[,])everyday.MarginsDb.Clone();
            for (int a = 0; a < everyday.NodeCount; a++)
            {
                for (int b = a + 1; b < everyday.NodeCount; b++)
                    if (random.Next(6) == 0) margins[a, b] = margins[b, a] = margins[a, b] + random.Next(-6, 7);
            }

            return everyday with { MarginsDb = margins };
        }

        ImmutableArray<int> OffIn(int index) =>
            index == 0 ? [] : [.. Enumerable.Range(1, everyday.NodeCount - 1).Where(_ => random.Next(6) == 0)];
    }

    public RepeaterSolution Solve(WorkLimit? limit = null) => RepeaterSolver.Solve(Asked, Ways, limit);

    public RepeaterSolution SolveAt(ImmutableArray<int> costs) => RepeaterSolver.Solve(Asked, Ways, costs);

    /// <summary>The same with some nodes off everyday too, as a device is that could be kept powered in another state.</summary>
    public SurvivalSample WithSomeOffEveryday(int seed)
    {
        var random = new Random(seed);
        return this with { Off = Off.SetItem(0, [.. Enumerable.Range(1, Everyday.NodeCount - 1).Where(_ => random.Next(6) == 0)]) };
    }

    /// <summary>The same under another hop limit.</summary>
    public SurvivalSample Within(int hopLimit) => this with { Situations = [.. Situations.Select(situation => situation with { HopLimit = hopLimit })] };

    /// <summary>The same without the last outlet.</summary>
    public SurvivalSample WithoutLastOutlet()
    {
        int last = Everyday.NodeCount - 1;
        return this with { Situations = [.. Situations.Select(s => s.WithoutLastOutlet())], Off = [.. Off.Select(off => off.Remove(last))] };
    }

    /// <summary>The same with second outlets beside some of its outlets, after all others: alike in what they hear and in when they have power.</summary>
    public SurvivalSample WithTwins(ImmutableArray<int> outlets)
    {
        (int devices, int nodes) = (Everyday.Relays.Length, Everyday.NodeCount);
        return this with
        {
            Situations = [.. Situations.Select(situation => situation.WithTwins(outlets))],
            Off = [.. Off.Select(off => off.AddRange(Enumerable.Range(0, outlets.Length).Where(twin => off.Contains(devices + outlets[twin])).Select(twin => nodes + twin)))],
        };
    }

    /// <summary>Everyday and nothing else, one way.</summary>
    public SurvivalSample WithFewerGoals() => this with { Situations = Situations[..1], Off = Off[..1], Ways = 1 };

    private static Situation SituationOf(ProblemSample sample, ImmutableArray<int> off) => new(sample.Problem(), off);
}
