using MeshSim.Placement;

namespace MeshSim.Benchmarks.Masters;

/// <summary>A hitting set that a solver is asked for: the least costly outlets that satisfy every cut.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Costs">Per outlet what it costs.</param>
/// <param name="Exactly">Other costs that must be kept to; null for none.</param>
/// <param name="Candidates">Per outlet whether it may be chosen.</param>
/// <param name="Cuts">The cuts.</param>
internal sealed record MasterProblem(string Name, int[] Costs, ExactCost? Exactly, IReadOnlyList<bool> Candidates, Cut[] Cuts)
{
    /// <summary>Number of outlets that may be chosen.</summary>
    public int CandidateCount => Candidates.Count(isCandidate => isCandidate);

    /// <summary>What a choice costs.</summary>
    /// <exception cref="InvalidOperationException">It does not do what is asked.</exception>
    public int CostOf(int[] chosen)
    {
        if (!IsMetBy(chosen)) throw new InvalidOperationException(Name + ": the solver answered with a choice that misses a cut");
        return chosen.Sum(outlet => Costs[outlet]);
    }

    /// <summary>Whether a choice satisfies every cut and keeps to the other costs.</summary>
    public bool IsMetBy(int[] chosen)
    {
        double[] shares = new double[Costs.Length];
        foreach (int outlet in chosen) shares[outlet] = 1;
        return Exactly?.IsKeptBy(chosen) != false && Array.TrueForAll(Cuts, cut => cut.MissedBy(shares) <= 0);
    }
}

/// <summary>What a solver made of it.</summary>
/// <param name="Best">The cost of the best choice; null when none was found.</param>
/// <param name="LowerBound">No choice costs less.</param>
/// <param name="ProcessorSeconds">Time of a processor that went into it.</param>
internal readonly record struct MasterTrial(int? Best, int LowerBound, double ProcessorSeconds)
{
    /// <summary>Whether nothing is left open.</summary>
    public bool IsProven => Best == LowerBound;
}

/// <summary>Solves hitting sets within some processor time.</summary>
internal interface IMasterSolver
{
    /// <summary>What it is called.</summary>
    string Name { get; }

    /// <summary>Solves a problem.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="limitSeconds">Processor time after which to stop, s.</param>
    MasterTrial Solve(MasterProblem problem, double limitSeconds);
}
