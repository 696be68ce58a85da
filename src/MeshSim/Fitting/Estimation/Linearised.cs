using System.Collections.Immutable;
using MathNet.Numerics;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace MeshSim.Fitting.Estimation;

/// <summary>The problem about one set of parameters: weighted least squares whose solution is the next step.</summary>
internal sealed class Linearised
{
    // A weight of 0 would make the matrix singular where all observations of a parameter lie on the straight part of their loss.
    private const double LeastWeight = 1e-6;

    // Matrices of a few hundred rows: handing them to other threads costs more than the work itself.
    static Linearised() => Control.UseSingleThread();

    private readonly ImmutableArray<Observation> observations;
    private readonly ImmutableArray<Prior> priors;
    private readonly HuberLoss loss;
    private readonly double spoiled;

    public Linearised(
        Predictions predictions,
        Vector<double> parameters,
        double deviation,
        ImmutableArray<Observation> observations,
        ImmutableArray<Prior> priors,
        HuberLoss loss)
    {
        (Predictions, Parameters, Deviation, this.observations, this.priors, this.loss) = (predictions, parameters, deviation, observations, priors, loss);
        Residuals = Vector<double>.Build.Dense(observations.Length, i => observations[i].Value - predictions.Values[i]);
        Objective = Enumerable.Range(0, observations.Length).Sum(LossOf)
            + priors.Select((prior, p) => Square((parameters[p] - prior.Mean) / prior.Deviation) / 2).Sum();
        spoiled = SpoiledFactor();
    }

    public Predictions Predictions { get; }

    public Vector<double> Parameters { get; }

    public double Deviation { get; }

    public Vector<double> Residuals { get; }

    public double Objective { get; }

    /// <summary>The step of some parameters, the others held, and what it promises to gain.</summary>
    public (Vector<double> Step, double Gain) Solve(int[] free)
    {
        int known = priors.Count(prior => double.IsFinite(prior.Deviation));
        var matrix = Matrix<double>.Build.Dense(observations.Length + known, free.Length);
        var right = Vector<double>.Build.Dense(matrix.RowCount);
        for (int i = 0; i < observations.Length; i++)
        {
            double deviation = DeviationOf(i), residual = Residuals[i] / deviation;
            (double weight, double slope) = observations[i].IsCensored
                ? (CensoredWeight(-residual), -loss.CensoredSlope(-residual))
                : (loss.Weight(residual), loss.Slope(residual));
            double root = Math.Sqrt(weight);
            for (int p = 0; p < free.Length; p++) matrix[i, p] = root / deviation * Predictions.Gradients[i, free[p]];
            right[i] = slope / root;
        }

        int row = observations.Length;
        for (int p = 0; p < priors.Length; p++)
        {
            if (!double.IsFinite(priors[p].Deviation)) continue;
            if (Array.IndexOf(free, p) is >= 0 and int column) matrix[row, column] = 1 / priors[p].Deviation;
            right[row] = Array.IndexOf(free, p) < 0 ? 0 : (priors[p].Mean - Parameters[p]) / priors[p].Deviation;
            row++;
        }

        Vector<double> step = Factored(matrix).Solve(right), moved = matrix * step;
        return (step, moved * moved / 2);
    }

    /// <summary>
    /// The asymptotic covariance of Huber's estimate with the information of the priors added. What lies on the straight part of
    /// the loss says nothing, and the rest is worth as much less as the share of it is smaller (Huber 1981, section 7.6).
    /// </summary>
    public Matrix<double> Covariance()
    {
        int known = priors.Count(prior => double.IsFinite(prior.Deviation));
        var matrix = Matrix<double>.Build.Dense(observations.Length + known, priors.Length);
        for (int i = 0; i < observations.Length; i++)
            matrix.SetRow(i, Math.Sqrt(Information(i)) * Predictions.Gradients.Row(i));
        int row = observations.Length;
        for (int p = 0; p < priors.Length; p++)
            if (double.IsFinite(priors[p].Deviation)) matrix[row++, p] = 1 / priors[p].Deviation;

        Matrix<double> inverse = Factored(matrix).R.Inverse();
        return inverse.TransposeAndMultiply(inverse);
    }

    /// <summary>What one observation tells about its own prediction: one over a variance.</summary>
    public double Information(int observation)
    {
        double deviation = DeviationOf(observation);
        double curvature = observations[observation].IsCensored
            ? loss.CensoredCurvature(-Residuals[observation] / deviation)
            : 1 / spoiled;
        return curvature / (deviation * deviation);
    }

    private static QR<double> Factored(Matrix<double> matrix)
    {
        QR<double> factors = matrix.QR(QRMethod.Thin);
        if (!factors.IsFullRank) throw new ArgumentException("neither observations nor priors decide every parameter");
        return factors;
    }

    private double DeviationOf(int observation) => observations[observation].Deviation ?? Deviation;

    private double LossOf(int observation)
    {
        double residual = Residuals[observation] / DeviationOf(observation);
        return observations[observation].IsCensored ? loss.OfCensored(-residual) : loss.Of(residual);
    }

    /// <summary>A positive weight whose step goes down: the curvature, or on the straight part that of a parabola of the same slope.</summary>
    private double CensoredWeight(double excess)
    {
        double curvature = loss.CensoredCurvature(excess);
        return Math.Max(LeastWeight, curvature > 0 ? curvature : loss.CensoredSlope(excess) / Math.Max(1, excess));
    }

    /// <summary>Mean square slope over the square of the mean curvature: 1 for least squares.</summary>
    private double SpoiledFactor()
    {
        int heard = 0, curved = 0;
        for (int i = 0; i < observations.Length; i++)
        {
            if (observations[i].IsCensored) continue;
            heard++;
            if (loss.IsCurved(Residuals[i] / DeviationOf(i))) curved++;
        }

        double share = heard == 0 ? 1 : (double)Math.Max(1, curved) / heard;
        return loss.MeanSquareSlope / (share * share);
    }

    private static double Square(double value) => value * value;
}
