using System.Collections.Immutable;
using MeshSim.Fitting.Estimation;
using MeshSim.Propagation;

namespace MeshSim.Fitting.Findings;

/// <summary>A fit as a search for surprises sees it: every path with what it crosses, and how far off its reading is.</summary>
internal sealed class Glance
{
    private const int GoldenSteps = 40;

    private static readonly double Golden = (Math.Sqrt(5) - 1) / 2;

    private readonly ImmutableArray<Observation> observations;

    /// <summary>Prepares.</summary>
    public Glance(FitProblem problem, MapEstimate estimate)
    {
        (Problem, Estimate) = (problem, estimate);
        Observations = problem.Observations();
        observations = Observations.Values;
        Model = Observations.ModelAt(estimate.Parameters);
        Paths = [.. problem.Pairs.Select(pair => Observations.PathOf(Model, pair))];
    }

    /// <summary>The problem.</summary>
    public FitProblem Problem { get; }

    /// <summary>Its fit.</summary>
    public MapEstimate Estimate { get; }

    /// <summary>Its observations.</summary>
    public PathObservations Observations { get; }

    /// <summary>The fitted path-loss model.</summary>
    public IPathLossModel Model { get; }

    /// <summary>The path of each pair, mountings left out.</summary>
    public ImmutableArray<PathLoss> Paths { get; }

    /// <summary>What the readings of some pairs cost with their predictions moved.</summary>
    /// <param name="pairs">Places of the pairs.</param>
    /// <param name="shiftDb">By how much the prediction of each is raised.</param>
    public double LossOf(IReadOnlyList<int> pairs, Func<int, double> shiftDb) => pairs.Sum(pair =>
    {
        double residual = (Estimate.Residuals[pair] - shiftDb(pair)) / Estimate.Deviation;
        return observations[pair].IsCensored ? HuberLoss.Usual.OfCensored(-residual) : HuberLoss.Usual.Of(residual);
    });

    /// <summary>What one unknown more explains at most, everything else held.</summary>
    /// <param name="pairs">The pairs that it concerns.</param>
    /// <param name="slope">By how much their predictions rise with it.</param>
    /// <param name="prior">What is known about it.</param>
    public double Gain(IReadOnlyList<int> pairs, Func<int, double> slope, Prior prior)
    {
        (double low, double high) = (Math.Max(prior.Least, -60), Math.Min(prior.Most, 60));
        for (int i = 0; i < GoldenSteps; i++)
        {
            double first = high - (Golden * (high - low)), second = low + (Golden * (high - low));
            if (CostOf(first) <= CostOf(second)) high = second;
            else low = first;
        }

        return CostOf(0) - CostOf((low + high) / 2);

        double CostOf(double value) => LossOf(pairs, pair => slope(pair) * value) + (value * value / (2 * prior.Deviation * prior.Deviation));
    }

    /// <summary>The price of a search: so many possibilities, so many unknowns each decided by so many pairs (Schwarz 1978).</summary>
    public static double Price(int possibilities, int unknowns, int pairs) => Math.Log(possibilities) + (unknowns * Math.Log(pairs) / 2);

    /// <summary>Fits with one unknown more.</summary>
    /// <returns>The problem, the fit, and by how much better everything is explained.</returns>
    public (FitProblem Problem, MapEstimate Estimate, double Gain) Refit(PathUnknown surprise)
    {
        FitProblem problem = Problem.With(surprise);
        MapEstimate estimate = problem.Fit(Estimate.Deviation, Estimate.Parameters);
        return (problem, estimate, Before - estimate.Objective);
    }

    /// <summary>The objective without any surprise, at the same scatter.</summary>
    public double Before => Estimate.Objective;
}
