using Google.OrTools.LinearSolver;
using MeshSim.Placement;

namespace MeshSim.Benchmarks.Masters;

/// <summary>A hitting set as a linear program, in whole numbers or relaxed as the solver has it.</summary>
internal sealed class LinearModel : IDisposable
{
    private const double Half = 0.5;

    /// <summary>Sets the program up.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="kind">Which solver.</param>
    public LinearModel(MasterProblem problem, string kind)
    {
        Solver = Solver.CreateSolver(kind) ?? throw new NotSupportedException(kind + " is not in this build");
        Solver.SuppressOutput();
        Shares = [.. problem.Candidates.Select((isCandidate, i) => isCandidate ? Solver.MakeVar(0, 1, Solver.IsMip(), FormattableString.Invariant($"x{i}")) : null)];
        for (int i = 0; i < Shares.Length; i++)
            if (Shares[i] is { } share) Solver.Objective().SetCoefficient(share, problem.Costs[i]);
        Solver.Objective().SetMinimization();
        foreach (Cut cut in problem.Cuts) AddRow(cut.Need, double.PositiveInfinity, cut.Outlets, outlet => cut.WeightOf(outlet));
        if (problem.Exactly is { } exactly) AddRow(exactly.Total, exactly.Total, Enumerable.Range(0, Shares.Length), i => exactly.Costs[i]);
    }

    /// <summary>The solver.</summary>
    public Solver Solver { get; }

    /// <summary>Per outlet its variable; null for one that may not be chosen.</summary>
    public Variable?[] Shares { get; }

    /// <summary>The outlets of which the solver's answer has all.</summary>
    public int[] Chosen() => [.. Enumerable.Range(0, Shares.Length).Where(i => Shares[i]?.SolutionValue() > Half)];

    /// <summary>Adds a row.</summary>
    public void AddRow(double low, double high, IEnumerable<int> outlets, Func<int, double> weight)
    {
        Constraint row = Solver.MakeConstraint(low, high);
        foreach (int i in outlets)
            if (Shares[i] is { } share) row.SetCoefficient(share, weight(i));
    }

    /// <inheritdoc/>
    public void Dispose() => Solver.Dispose();
}
