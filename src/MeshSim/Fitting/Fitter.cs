using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;
using MeshSim.Devices;
using MeshSim.Fitting.Estimation;
using MeshSim.Fitting.Findings;
using MeshSim.FloorPlans;
using MeshSim.Propagation;
using MeshSim.Radio;

namespace MeshSim.Fitting;

/// <summary>Fits the model of one network to what its radios reported.</summary>
public static class Fitter
{
    /// <summary>Correlations from here on are reported: four fifths of what one parameter gains the other loses.</summary>
    private const double ReportedCorrelation = 0.8;

    /// <summary>A path farther off than this is named; one in 2000 is by chance.</summary>
    private const double OddDeviations = 3.5;

    /// <summary>Fits.</summary>
    /// <param name="home">The home with its readings, all doors closed; fitted values that it holds are left aside.</param>
    /// <param name="network">One of its networks.</param>
    /// <param name="model">The path-loss model.</param>
    /// <param name="cancellation">Ends the work early.</param>
    /// <returns>Null when the network has no readings.</returns>
    /// <exception cref="OperationCanceledException">The work was ended early.</exception>
    public static FitResult? Fit(Home home, Network network, ModelName model, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(home);
        ArgumentNullException.ThrowIfNull(network);

        FitProblem asPlanned = FitProblem.Of(home, network, model);
        if (asPlanned.Pairs.IsEmpty) return null;

        (FitProblem problem, MapEstimate estimate, ImmutableArray<Finding> findings) = FindingSearch.Run(asPlanned, cancellation);
        var catalogue = Vector<double>.Build.DenseOfEnumerable(asPlanned.Unknowns.Select(unknown => unknown.Prior.Mean));
        ImmutableArray<ParameterChange> changes = Changes(problem, estimate);
        return new FitResult
        {
            Network = network,
            Fit = Store(problem, estimate, changes, model),
            PairsHeard = problem.Pairs.Count(pair => pair.IsHeard),
            PairsNotHeard = problem.Pairs.Count(pair => !pair.IsHeard),
            Parameters = changes,
            Uncrossed = Uncrossed(home, problem),
            Confounded = ConfoundedOf(changes, estimate),
            Before = Discrepancies.Of(asPlanned, catalogue),
            After = Discrepancies.Of(problem, estimate.Parameters),
            CrossValidated = Discrepancies.CrossValidated(problem, estimate, findings, cancellation),
            Findings = findings,
            OddPaths = OddPaths(problem, estimate),
        };
    }

    private static ImmutableArray<ParameterChange> Changes(FitProblem problem, MapEstimate estimate)
    {
        Matrix<double> gradients = problem.Observations().At(estimate.Parameters).Gradients;
        return [.. Enumerable.Range(0, problem.Unknowns.Length).Where(i => KindOf(problem.Unknowns[i].Kind) is not null).Select(Change)];

        ParameterChange Change(int index)
        {
            PathUnknown unknown = problem.Unknowns[index];
            int readings = Enumerable.Range(0, problem.Pairs.Length).Where(pair => gradients[pair, index] != 0).Sum(pair => problem.Pairs[pair].Readings);
            FittedKind kind = KindOf(unknown.Kind)!.Value;
            return new(
                new(kind, unknown.Name, estimate.Parameters[index], estimate.StandardError(index), readings),
                CatalogueValue(problem, kind, unknown),
                unknown.Prior.Deviation);
        }
    }

    /// <summary>The lower bound of a loss is reached when nothing of what the catalogue says is left.</summary>
    private static double CatalogueValue(FitProblem problem, FittedKind kind, PathUnknown unknown) => kind switch
    {
        FittedKind.Exponent => problem.Home.Parameters.Exponent,
        FittedKind.Detour => problem.Home.Parameters.Detour.Value,
        FittedKind.Construction or FittedKind.Mounting => -unknown.Prior.Least,
        _ => 0,
    };

    private static NetworkFit Store(FitProblem problem, MapEstimate estimate, ImmutableArray<ParameterChange> changes, ModelName model)
    {
        FittedParameter[] all = [.. changes.Select(change => change.Parameter)];
        FittedParameter[] stored = [.. all.Where(parameter => !IsOffset(parameter))];
        return new()
        {
            Model = model,
            Readings = problem.Pairs.Sum(pair => pair.Readings),
            Shadowing = new(Math.Clamp(estimate.Deviation, FadingMargin.ShadowingDb.Min, FadingMargin.ShadowingDb.Max)),
            Parameters = [.. stored],
            Correlations = [.. Enumerable.Range(1, stored.Length - 1).Select(row => Enumerable.Range(0, row).Select(column => estimate.Correlation(row, column)).ToImmutableArray())],
            Offsets = [.. all.Where(IsOffset)],
        };
    }

    private static ImmutableArray<Confounded> ConfoundedOf(ImmutableArray<ParameterChange> changes, MapEstimate estimate) =>
    [
        .. from first in Enumerable.Range(0, changes.Length)
           from second in Enumerable.Range(first + 1, changes.Length - first - 1)
           let correlation = estimate.Correlation(first, second)
           where Math.Abs(correlation) >= ReportedCorrelation
           select new Confounded(changes[first].Parameter, changes[second].Parameter, correlation),
    ];

    private static ImmutableArray<ConstructionName> Uncrossed(Home home, FitProblem problem) =>
    [
        .. new CrossingTracer(home.FloorPlan).Constructions
            .Where(name => problem.Unknowns.All(unknown => unknown.Kind != UnknownKind.Construction || unknown.Name != name.Value))
            .OrderBy(name => name.Value, StringComparer.Ordinal),
    ];

    private static ImmutableArray<OddPath> OddPaths(FitProblem problem, MapEstimate estimate) =>
    [
        .. from place in Enumerable.Range(0, problem.Pairs.Length)
           let pair = problem.Pairs[place]
           let excessDb = estimate.Residuals[place]
           let isOff = pair.IsHeard ? Math.Abs(excessDb) : -excessDb
           where isOff > OddDeviations * estimate.Deviation
           orderby isOff descending
           select new OddPath(pair.First.Id, pair.Second.Id, new(excessDb), excessDb / estimate.Deviation),
    ];

    private static bool IsOffset(FittedParameter parameter) => parameter.Kind is FittedKind.Offset or FittedKind.CommonOffset;

    private static FittedKind? KindOf(UnknownKind kind) => kind switch
    {
        UnknownKind.Exponent => FittedKind.Exponent,
        UnknownKind.Detour => FittedKind.Detour,
        UnknownKind.Construction => FittedKind.Construction,
        UnknownKind.Mounting => FittedKind.Mounting,
        UnknownKind.CommonOffset => FittedKind.CommonOffset,
        UnknownKind.Offset => FittedKind.Offset,
        _ => null,
    };
}
