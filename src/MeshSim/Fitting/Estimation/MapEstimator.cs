using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;

namespace MeshSim.Fitting.Estimation;

/// <summary>
/// Maximum a posteriori estimation by Gauss–Newton steps within bounds, with Huber's loss, censored observations and a scale by
/// Huber's second proposal. Without priors, bounds, bend and censoring it is ordinary least squares.
/// </summary>
public sealed class MapEstimator
{
    /// <summary>Rounds of a step and a new scale; a fit takes some twenty.</summary>
    private const int MostRounds = 200;

    /// <summary>Halvings of a step that does not help.</summary>
    private const int MostHalvings = 30;

    /// <summary>A step that promises to gain less, natural logarithm, is the last.</summary>
    private const double SettledGain = 1e-9;

    /// <summary>A scale that moves by less than this share has settled.</summary>
    private const double SettledShare = 1e-7;

    private readonly IObservationModel model;
    private readonly ImmutableArray<Observation> observations;
    private readonly ImmutableArray<Prior> priors;
    private readonly HuberLoss loss;
    private readonly ScalePrior scale;

    /// <summary>States the problem.</summary>
    /// <param name="model">What parameters make of the observations.</param>
    /// <param name="observations">What was measured.</param>
    /// <param name="priors">What is known about each parameter.</param>
    /// <param name="loss">How residuals count.</param>
    /// <param name="scale">What is known about the standard deviation.</param>
    public MapEstimator(
        IObservationModel model, ImmutableArray<Observation> observations, ImmutableArray<Prior> priors, HuberLoss loss, ScalePrior scale)
    {
        (this.model, this.observations, this.priors, this.loss, this.scale) = (model, observations, priors, loss, scale);
    }

    /// <summary>Estimates.</summary>
    /// <param name="start">Where to begin; null begins at the means of the priors.</param>
    /// <exception cref="ArgumentException">Observations and priors together do not decide every parameter or the scale.</exception>
    public MapEstimate Estimate(Vector<double>? start = null)
    {
        Vector<double> parameters = Clip(start ?? Vector<double>.Build.DenseOfEnumerable(priors.Select(prior => prior.Mean)));
        Linearised here = At(parameters, scale.Deviation);
        bool isSettled = false;
        for (int round = 0; round < MostRounds && !isSettled; round++)
        {
            (Linearised next, double gain) = Step(here);
            double deviation = scale.IsFixed ? here.Deviation : NextDeviation(next);
            isSettled = gain <= SettledGain && Math.Abs(deviation - here.Deviation) <= SettledShare * here.Deviation;
            here = deviation == next.Deviation ? next : At(next.Parameters, deviation);
        }

        (Matrix<double> covariance, double effective) = Spread(here);
        return new()
        {
            Parameters = here.Parameters,
            Covariance = covariance,
            Deviation = here.Deviation,
            Residuals = here.Residuals,
            Objective = here.Objective,
            EffectiveParameters = effective,
        };
    }

    private Linearised At(Vector<double> parameters, double deviation) => new(model.At(parameters), parameters, deviation, observations, priors, loss);

    /// <summary>One step, shortened until it helps, and what it promised to gain.</summary>
    private (Linearised Next, double Gain) Step(Linearised here)
    {
        (Vector<double> step, double gain) = StepFrom(here);
        double share = 1;
        for (int halving = 0; halving < MostHalvings; halving++, share /= 2)
        {
            Linearised tried = At(Clip(here.Parameters + (share * step)), here.Deviation);

            // Where nothing is left to gain, rounding decides which objective is the lower.
            if (tried.Objective <= here.Objective || gain <= SettledGain) return (tried, gain);
        }

        return (here, 0);
    }

    /// <summary>The step of least squares, among the parameters that are not held at a bound.</summary>
    private (Vector<double> Step, double Gain) StepFrom(Linearised here)
    {
        int[] free = [.. Enumerable.Range(0, priors.Length)];
        while (true)
        {
            (Vector<double> solved, double gain) = here.Solve(free);
            var step = Vector<double>.Build.Dense(priors.Length);
            for (int i = 0; i < free.Length; i++) step[free[i]] = solved[i];
            int[] kept = [.. free.Where(p => !IsHeld(p, here.Parameters[p], step[p]))];
            if (kept.Length == free.Length) return (step, gain);
            if (kept.Length == 0) return (Vector<double>.Build.Dense(priors.Length), 0);
            free = kept;
        }
    }

    private bool IsHeld(int parameter, double value, double step) =>
        (value <= priors[parameter].Least && step < 0) || (value >= priors[parameter].Most && step > 0);

    private Vector<double> Clip(Vector<double> parameters) =>
        parameters.MapIndexed((i, value) => Math.Clamp(value, priors[i].Least, priors[i].Most), Zeros.Include);

    private double NextDeviation(Linearised here)
    {
        double squares = scale.Weight * loss.MeanSquareSlope * scale.Deviation * scale.Deviation / (here.Deviation * here.Deviation);
        double count = scale.Weight;
        for (int i = 0; i < observations.Length; i++)
        {
            if (observations[i].Deviation is not null) continue;
            double residual = here.Residuals[i] / here.Deviation;
            squares += observations[i].IsCensored ? loss.CensoredMeanSquareSlope(-residual) : loss.Slope(residual) * loss.Slope(residual);
            count++;
        }

        double degrees = count - Spread(here).Effective;
        if (!(degrees > 0)) throw new ArgumentException("there are too few observations to tell how much they scatter");
        return here.Deviation * Math.Sqrt(squares / (loss.MeanSquareSlope * degrees));
    }

    /// <summary>Covariance, and the effective number of parameters among observations whose deviation is estimated.</summary>
    private (Matrix<double> Covariance, double Effective) Spread(Linearised here)
    {
        Matrix<double> covariance = here.Covariance();
        double effective = 0;
        for (int i = 0; i < observations.Length; i++)
        {
            if (observations[i].Deviation is not null) continue;
            Vector<double> row = here.Predictions.Gradients.Row(i);
            effective += here.Information(i) * (row * (covariance * row));
        }

        return (covariance, effective);
    }
}
