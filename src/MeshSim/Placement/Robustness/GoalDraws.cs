using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Mesh.Reliability;

namespace MeshSim.Placement.Robustness;

/// <summary>
/// How often a recommendation keeps its promise when shadowing and losses are drawn: a seeded experiment in blocks of 64 draws. Each
/// block has its own stream of random numbers and adds whole numbers, so the answer is the same on any number of threads.
/// </summary>
public static class GoalDraws
{
    /// <summary>Draws.</summary>
    /// <param name="placement">The recommendation.</param>
    /// <param name="options">How often, and the seed; at least one draw.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number of draws or the correlation is outside its range.</exception>
    public static GoalChances Estimate(SurveyedPlacement placement, RobustnessOptions options)
    {
        ArgumentNullException.ThrowIfNull(placement);
        ArgumentNullException.ThrowIfNull(options);
        ConnectionDraws.Draws.Check(options.Draws);
        LinkShadowing shadowing = new(placement.Home.ParametersOf(placement.Network).Shadowing, options.Correlation);
        PlannedLinks links = new(placement);
        UnknownDraws unknowns = new(links.Unknowns, new MarginUncertainties(placement.Home, placement.Network).Correlation);
        DrawnCase[] cases = [.. placement.Cases().Select(entry => DrawnCase.Of(entry.Demand, links))];
        GoalCounts total = new(links.Nodes.Length);
        Lock gate = new();
        Parallel.For(
            0,
            (options.Draws + 63) / 64,
            () => new GoalWorker(links, shadowing, unknowns, cases),
            (block, _, worker) =>
            {
                ulong counted = ulong.MaxValue >> Math.Max(0, (64 * (block + 1)) - options.Draws);
                worker.Work(SplitMix64.OfBlock(options.Seed, block), counted);
                return worker;
            },
            worker =>
            {
                lock (gate) total.Add(worker.Counts);
            });
        return Summary(placement, options, cases, total);
    }

    private static GoalChances Summary(SurveyedPlacement placement, RobustnessOptions options, DrawnCase[] cases, GoalCounts total)
    {
        ImmutableArray<int> everyday = [.. cases.Where(drawn => drawn.IsEveryday).SelectMany(drawn => drawn.Devices)];
        return new()
        {
            Options = options,
            Everyday = Shares(total.Everyday),
            Goal = Shares(total.Goal),
            Devices =
            [
                .. everyday.Select(node => new ConnectionChance(IdOf(node), total.Connected[node], options.Draws)).OrderBy(chance => chance.Connected),
            ],
        };

        ChanceBy Shares(int[] held) => new(
            new(held[(int)Drawn.Shadowing], options.Draws), new(held[(int)Drawn.Losses], options.Draws), new(held[(int)Drawn.Both], options.Draws));

        DeviceId IdOf(int node) => placement.Survey.Devices[node].Id;
    }
}
