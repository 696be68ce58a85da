using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;
using MeshSim.Devices;
using MeshSim.Fitting.Estimation;
using MeshSim.Fitting.Findings;

namespace MeshSim.Fitting;

/// <summary>How far predictions lie from readings: with the catalogue, with the fit, and for devices that the fit never saw.</summary>
internal static class Discrepancies
{
    /// <summary>With some parameters.</summary>
    public static Discrepancy Of(FitProblem problem, Vector<double> parameters)
    {
        PathObservations observations = problem.Observations();
        return Of(Residuals(observations, parameters));
    }

    /// <summary>
    /// Each device left out in turn: everything is fitted to the pairs of the others, then its pairs are predicted. Its own offset
    /// is then unknown and taken as none. A pair is predicted twice, once for each end.
    /// </summary>
    /// <param name="problem">The problem, surprises included.</param>
    /// <param name="start">The fit to all.</param>
    /// <param name="findings">Surprises; pairs of the devices that they name are left out.</param>
    /// <param name="cancellation">Ends the work early.</param>
    public static Discrepancy CrossValidated(FitProblem problem, MapEstimate start, ImmutableArray<Finding> findings, CancellationToken cancellation)
    {
        HashSet<DeviceId> named = [.. findings.OfType<HiddenDevice>().Select(found => found.Device), .. findings.OfType<MovedDevice>().Select(found => found.Device)];
        DeviceId[] left = [.. problem.Home.DevicesOf(problem.Network).Select(device => device.Id).Where(id => !named.Contains(id))];
        var residuals = new IEnumerable<double>[left.Length];
        Parallel.For(0, left.Length, new ParallelOptions { CancellationToken = cancellation }, i => residuals[i] = WithOut(left[i]));
        return Of([.. residuals.SelectMany(some => some)]);

        double[] WithOut(DeviceId device)
        {
            ReadPair[] its = [.. problem.Pairs.Where(pair => pair.Has(device) && pair.IsHeard && !named.Contains(pair.First.Id) && !named.Contains(pair.Second.Id))];
            if (its.Length == 0) return [];
            MapEstimate others = problem.With(problem.Pairs.Where(pair => !pair.Has(device))).Fit(start: start.Parameters);
            return Residuals(problem.With(its).Observations(), others.Parameters);
        }
    }

    private static double[] Residuals(PathObservations observations, Vector<double> parameters)
    {
        ImmutableArray<Observation> values = observations.Values;
        Vector<double> predicted = observations.At(parameters).Values;
        return [.. Enumerable.Range(0, observations.Pairs.Length).Where(pair => observations.Pairs[pair].IsHeard).Select(pair => predicted[pair] - values[pair].Value)];
    }

    private static Discrepancy Of(double[] residuals) => residuals.Length == 0
        ? default
        : new(residuals.Length, new(Math.Sqrt(residuals.Average(residual => residual * residual))), new(residuals.Average()));
}
