using MeshSim.Placement;

namespace MeshSim.Tests.Placement;

/// <summary>
/// Answers a <see cref="SurvivalSample"/> by trying every subset of the outlets in every case, with nothing of the solver's in it.
/// </summary>
internal sealed class ExhaustiveSurvival
{
    private readonly SurvivalSample sample;
    private readonly (UnmetDemand Wanted, bool NeedsRepeater)[] met;

    public ExhaustiveSurvival(SurvivalSample sample)
    {
        this.sample = sample;
        int all = (1 << sample.Everyday.OutletCount) - 1;
        ILookup<bool, UnmetDemand> wanted = Wanted().ToLookup(demand => IsMet(demand, all));
        met = [.. wanted[true].Select(demand => (demand, !IsMet(demand, 0)))];
        Unservable = [.. wanted[false].Where(demand => demand is { Situation: 0, Lost: null }).Select(demand => demand.Device)];
        Unmet = [.. wanted[false].Where(demand => demand.Situation > 0 || !Unservable.Contains(demand.Device))];
        // Fewer outlets are tried before more, so that problems of sixteen outlets take no longer than their answers are large.
        (Count, BestSteps, LeastPlaces) = Enumerable.Range(0, all + 1)
            .GroupBy(int.PopCount)
            .OrderBy(subsets => subsets.Key)
            .Select(subsets => subsets.Where(Serves).Select(subset => (Count: subsets.Key, Steps: Steps(subset), Places: Places(subset))).ToArray())
            .First(choices => choices.Length > 0)
            .OrderByDescending(choice => choice.Steps)
            .ThenBy(choice => choice.Places)
            .First();
    }

    /// <summary>The fewest outlets that do everything that can be done.</summary>
    public int Count { get; }

    /// <summary>Among the fewest: the most whole steps that the weakest needed route lies above the design margin.</summary>
    public int BestSteps { get; }

    /// <summary>Among these: the least sum of places.</summary>
    public int LeastPlaces { get; }

    /// <summary>The devices out of reach everyday whatever is chosen.</summary>
    public int[] Unservable { get; }

    /// <summary>What else cannot be had.</summary>
    public UnmetDemand[] Unmet { get; }

    /// <summary>Whether some outlets do everything that can be done.</summary>
    public bool Serves(int subset) => Array.TrueForAll(met, entry => IsMet(entry.Wanted, subset));

    /// <summary>Whole steps that the weakest needed route lies above the design margin.</summary>
    public int Steps(int subset)
    {
        double worstDb = met.Where(entry => entry.NeedsRepeater).Select(entry => StrongestDb(entry.Wanted, subset))
            .DefaultIfEmpty(sample.Everyday.DesignMarginDb).Min();
        return (int)Math.Floor((worstDb - sample.Everyday.DesignMarginDb) / RepeaterSolver.MarginStep.Value);
    }

    private int Places(int subset) => Enumerable.Range(0, sample.Everyday.OutletCount).Where(outlet => (subset >> outlet & 1) != 0).Sum();

    private IEnumerable<UnmetDemand> Wanted()
    {
        ProblemSample everyday = sample.Everyday;
        for (int situation = 0; situation < sample.Situations.Length; situation++)
            for (int device = 1; device < everyday.Relays.Length; device++)
                if (!sample.Off[situation].Contains(device)) yield return new(device, situation, null);
        if (sample.Ways == 1) yield break;
        for (int lost = 1; lost < everyday.NodeCount; lost++)
        {
            if (sample.Off[0].Contains(lost) || (lost < everyday.Relays.Length && !everyday.Relays[lost])) continue;
            for (int device = 1; device < everyday.Relays.Length; device++)
                if (device != lost && !sample.Off[0].Contains(device)) yield return new(device, 0, lost);
        }
    }

    private bool IsMet(UnmetDemand demand, int subset) => StrongestDb(demand, subset) >= sample.Everyday.DesignMarginDb;

    /// <summary>The weakest link of the strongest route to a device, in the case asked for, within the hop limit.</summary>
    private double StrongestDb(UnmetDemand demand, int subset)
    {
        // A node without power has no link to anybody.
        ProblemSample situation = sample.Situations[demand.Situation];
        double[,] margins = (double[,])situation.MarginsDb.Clone();
        foreach (int node in sample.Off[demand.Situation].Concat(demand.Lost is { } lost ? [lost] : []))
            for (int other = 0; other < situation.NodeCount; other++) margins[node, other] = margins[other, node] = double.NegativeInfinity;
        return ExhaustivePlacement.StrongestRoutesDb(situation with { MarginsDb = margins }, subset)[demand.Device];
    }
}
