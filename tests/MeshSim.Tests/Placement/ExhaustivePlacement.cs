using MeshSim.Placement;

namespace MeshSim.Tests.Placement;

/// <summary>Answers a <see cref="ProblemSample"/> by trying every subset of the outlets, with nothing of the solver's in it.</summary>
internal sealed class ExhaustivePlacement
{
    private readonly ProblemSample sample;

    public ExhaustivePlacement(ProblemSample sample)
    {
        this.sample = sample;
        double[] all = StrongestRoutesDb((1 << sample.OutletCount) - 1), none = StrongestRoutesDb(0);
        int[] devices = [.. Enumerable.Range(1, sample.Relays.Length - 1)];
        Unservable = [.. devices.Where(device => !IsServed(all[device]))];
        Served = [.. devices.Except(Unservable)];
        Needy = [.. Served.Where(device => !IsServed(none[device]))];
        var best = Enumerable.Range(0, 1 << sample.OutletCount)
            .Where(Serves)
            .Select(subset => (Count: int.PopCount(subset), Steps: Steps(subset), Places: OutletsOf(subset).Sum()))
            .OrderBy(choice => choice.Count)
            .ThenByDescending(choice => choice.Steps)
            .ThenBy(choice => choice.Places)
            .First();
        (Count, BestSteps, LeastPlaces) = best;
    }

    /// <summary>The fewest outlets that serve everybody who can be served.</summary>
    public int Count { get; }

    /// <summary>Among the fewest: the most whole steps that the weakest route of a needy device lies above the design margin.</summary>
    public int BestSteps { get; }

    /// <summary>Among these: the least sum of places.</summary>
    public int LeastPlaces { get; }

    public int[] Unservable { get; }

    private int[] Served { get; }

    /// <summary>The devices that need a repeater.</summary>
    private int[] Needy { get; }

    public static int SubsetOf(IEnumerable<int> outlets) => outlets.Aggregate(0, (subset, outlet) => subset | (1 << outlet));

    /// <summary>Whether some outlets serve everybody who can be served.</summary>
    public bool Serves(int subset)
    {
        double[] strongest = StrongestRoutesDb(subset);
        return Array.TrueForAll(Served, device => IsServed(strongest[device]));
    }

    /// <summary>Whether some outlets serve one device.</summary>
    public bool ServesDevice(int device, int subset) => IsServed(StrongestRoutesDb(subset)[device]);

    /// <summary>Whole steps that the weakest route of a needy device lies above the design margin.</summary>
    public int Steps(int subset)
    {
        double[] strongest = StrongestRoutesDb(subset);
        double worstDb = Needy.Select(device => strongest[device]).DefaultIfEmpty(sample.DesignMarginDb).Min();
        return (int)Math.Floor((worstDb - sample.DesignMarginDb) / RepeaterSolver.MarginStep.Value);
    }

    /// <summary>Per node the margin of the weakest link on the strongest route within the hop limit, link by link.</summary>
    public double[] StrongestRoutesDb(int subset) => StrongestRoutesDb(sample, subset);

    /// <summary>The same for any problem.</summary>
    public static double[] StrongestRoutesDb(ProblemSample sample, int subset)
    {
        int devices = sample.Relays.Length;
        double[] strongest = [double.PositiveInfinity, .. Enumerable.Repeat(double.NegativeInfinity, sample.NodeCount - 1)];
        for (int hop = 0; hop < sample.HopLimit; hop++)
        {
            double[] next = [.. strongest];
            for (int relay = 0; relay < sample.NodeCount; relay++)
            {
                bool isRelay = relay < devices ? sample.Relays[relay] : (subset >> (relay - devices) & 1) != 0;
                if (!isRelay) continue;
                for (int node = 0; node < sample.NodeCount; node++)
                    if (node != relay) next[node] = Math.Max(next[node], Math.Min(strongest[relay], sample.MarginsDb[relay, node]));
            }

            strongest = next;
        }

        return strongest;
    }

    private bool IsServed(double strongestDb) => strongestDb >= sample.DesignMarginDb;

    private IEnumerable<int> OutletsOf(int subset) => Enumerable.Range(0, sample.OutletCount).Where(outlet => (subset >> outlet & 1) != 0);
}
