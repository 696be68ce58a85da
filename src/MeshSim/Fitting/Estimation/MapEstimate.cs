using MathNet.Numerics.LinearAlgebra;

namespace MeshSim.Fitting.Estimation;

/// <summary>Where the posterior density is greatest, and how sharply.</summary>
public sealed record MapEstimate
{
    /// <summary>The parameters.</summary>
    public required Vector<double> Parameters { get; init; }

    /// <summary>Their covariance, as if there were no bounds.</summary>
    public required Matrix<double> Covariance { get; init; }

    /// <summary>The standard deviation of observations that state none.</summary>
    public required double Deviation { get; init; }

    /// <summary>Observed less predicted, in the unit of the observations; of a censored one its limit less predicted.</summary>
    public required Vector<double> Residuals { get; init; }

    /// <summary>Minus the logarithm of the posterior density, but for a constant.</summary>
    public required double Objective { get; init; }

    /// <summary>How many parameters the observations decide, the rest being left to what was known before.</summary>
    public required double EffectiveParameters { get; init; }

    /// <summary>Standard error of a parameter.</summary>
    public double StandardError(int parameter) => Math.Sqrt(Covariance[parameter, parameter]);

    /// <summary>Correlation of two parameters.</summary>
    public double Correlation(int first, int second) => Covariance[first, second] / (StandardError(first) * StandardError(second));
}
