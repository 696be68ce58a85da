using Google.OrTools.Sat;
using MeshSim.Placement;

namespace MeshSim.Benchmarks.Masters;

/// <summary>CP-SAT with one worker, limited by its own count of work, which is repeatable.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Settings">What it is told besides.</param>
internal sealed record ConstraintMaster(string Name, string Settings) : IMasterSolver
{
    /// <summary>All rows in its linear relaxation, not only those that are more than clauses.</summary>
    public const string AllRowsRelaxed = "linearization_level:2";

    /// <inheritdoc/>
    public MasterTrial Solve(MasterProblem problem, double limitSeconds) => ProcessorClock.Within(limitSeconds, work =>
    {
        ProcessorClock clock = new();
        CpModel model = new();
        BoolVar?[] shares = [.. problem.Candidates.Select((isCandidate, i) => isCandidate ? model.NewBoolVar(FormattableString.Invariant($"x{i}")) : null)];
        foreach (Cut cut in problem.Cuts) model.Add(Sum(cut.Outlets, cut.WeightOf) >= cut.Need);
        int[] all = [.. Enumerable.Range(0, shares.Length)];
        if (problem.Exactly is { } exactly) model.Add(Sum(all, i => exactly.Costs[i]) == exactly.Total);
        model.Minimize(Sum(all, i => problem.Costs[i]));

        CpSolver solver = new() { StringParameters = FormattableString.Invariant($"num_workers:1 random_seed:1 max_deterministic_time:{work} {Settings}") };
        CpSolverStatus status = solver.Solve(model);
        double seconds = clock.Seconds;
        int lower = LinearAnswer.Whole(solver.BestObjectiveBound);
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible)) return new(null, lower, seconds);
        return new(problem.CostOf([.. all.Where(i => shares[i] is { } share && solver.BooleanValue(share))]), lower, seconds);

        LinearExpr Sum(IEnumerable<int> outlets, Func<int, int> weight)
        {
            int[] those = [.. outlets.Where(i => shares[i] is not null)];
            return LinearExpr.WeightedSum(those.Select(i => shares[i]!), those.Select(i => weight(i)));
        }
    });
}
