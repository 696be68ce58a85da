using Google.OrTools.LinearSolver;
using MeshSim.Placement;

namespace MeshSim.Benchmarks.Masters;

/// <summary>SCIP through the linear-solver interface, limited by its own clock of processor time.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Settings">What it is told besides.</param>
internal sealed record ScipMaster(string Name, string Settings) : IMasterSolver
{
    /// <summary>Without cutting planes of its own.</summary>
    public const string WithoutCuttingPlanes = "separating/maxroundsroot = 0\nseparating/maxrounds = 0\n";

    /// <inheritdoc/>
    public MasterTrial Solve(MasterProblem problem, double limitSeconds)
    {
        ProcessorClock clock = new();
        using LinearModel model = new(problem, "SCIP");
        Limit(model.Solver, Settings, limitSeconds);
        Solver.ResultStatus status = model.Solver.Solve();
        return LinearAnswer.Of(problem, model, status, clock);
    }

    /// <summary>Settings, one of which makes its clock one of processor time.</summary>
    public static void Limit(Solver solver, string settings, double limitSeconds) =>
        solver.SetSolverSpecificParametersAsString(FormattableString.Invariant($"{settings}timing/clocktype = 1\nlimits/time = {limitSeconds}"));
}

/// <summary>HiGHS through the linear-solver interface, which knows the time of day alone.</summary>
internal sealed record HighsMaster : IMasterSolver
{
    /// <inheritdoc/>
    public string Name => "HiGHS";

    /// <inheritdoc/>
    public MasterTrial Solve(MasterProblem problem, double limitSeconds) => ProcessorClock.Within(limitSeconds, timeOfDaySeconds =>
    {
        ProcessorClock clock = new();
        using LinearModel model = new(problem, "HIGHS");
        model.Solver.SetTimeLimit((long)(1000 * timeOfDaySeconds));
        Solver.ResultStatus status = model.Solver.Solve();
        return LinearAnswer.Of(problem, model, status, clock);
    });
}

/// <summary>
/// GLOP first: its relaxation, rounded, is a choice, and what would cost too much beside it by its reduced cost is left out; SCIP without
/// cutting planes then looks for something cheaper among the rest.
/// </summary>
internal sealed record RelaxedFirstMaster : IMasterSolver
{
    /// <inheritdoc/>
    public string Name => "GLOP, then SCIP";

    /// <inheritdoc/>
    public MasterTrial Solve(MasterProblem problem, double limitSeconds)
    {
        ProcessorClock clock = new();
        using LinearModel relaxed = new(problem, "GLOP"), exact = new(problem, "SCIP");
        if (relaxed.Solver.Solve() != Solver.ResultStatus.OPTIMAL) throw new InvalidOperationException(problem.Name + ": no relaxed answer");
        double cost = relaxed.Solver.Objective().Value();
        int lower = LinearAnswer.Whole(cost);
        int? upper = Rounded(problem, relaxed) is { } rounded ? problem.CostOf(rounded) : null;
        if (upper is { } known)
        {
            if (known == lower) return new(known, lower, clock.Seconds);
            exact.AddRow(0, known - 1, Enumerable.Range(0, problem.Costs.Length), i => problem.Costs[i]);
            for (int i = 0; i < problem.Costs.Length; i++)
                if (cost + relaxed.Shares[i]?.ReducedCost() > known - 1 + CutSearch.SolverTolerance) exact.Shares[i]!.SetUb(0);
        }

        ScipMaster.Limit(exact.Solver, ScipMaster.WithoutCuttingPlanes, Math.Max(0, limitSeconds - clock.Seconds));
        Solver.ResultStatus status = exact.Solver.Solve();
        if (status == Solver.ResultStatus.INFEASIBLE) return new(upper, upper ?? lower, clock.Seconds);
        MasterTrial trial = LinearAnswer.Of(problem, exact, status, clock);
        return trial with { Best = trial.Best ?? upper, LowerBound = Math.Max(lower, trial.LowerBound) };
    }

    /// <summary>The largest shares until every cut is satisfied, then without those that are not needed; null when other costs must be kept to.</summary>
    private static int[]? Rounded(MasterProblem problem, LinearModel relaxed)
    {
        if (problem.Exactly is not null) return null;
        int[] order = [.. Enumerable.Range(0, relaxed.Shares.Length).Where(i => relaxed.Shares[i] is not null)
            .OrderBy(i => relaxed.Shares[i]!.SolutionValue()).ThenByDescending(i => problem.Costs[i])];
        return ChosenSets.Thin(order, stay => problem.IsMetBy([.. stay]));
    }
}

/// <summary>Reads the answer of a linear solver.</summary>
internal static class LinearAnswer
{
    /// <summary>The answer; a bound that the solver does not tell is 0.</summary>
    public static MasterTrial Of(MasterProblem problem, LinearModel model, Solver.ResultStatus status, ProcessorClock clock)
    {
        double seconds = clock.Seconds;
        int? best = status is Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE ? problem.CostOf(model.Chosen()) : null;
        return new(best, best is null ? 0 : Whole(model.Solver.Objective().BestBound()), seconds);
    }

    /// <summary>A bound in whole units; costs are whole.</summary>
    public static int Whole(double bound) => double.IsFinite(bound) ? Math.Max(0, (int)Math.Ceiling(bound - CutSearch.SolverTolerance)) : 0;
}
