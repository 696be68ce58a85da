using MathNet.Numerics.LinearAlgebra;

namespace MeshSim.Fitting.Estimation;

/// <summary>What parameters make of every observation. It need not be linear: each step asks anew.</summary>
public interface IObservationModel
{
    /// <summary>Predictions and their gradients.</summary>
    /// <param name="parameters">Within their bounds.</param>
    Predictions At(Vector<double> parameters);
}

/// <summary>What is predicted for each observation.</summary>
/// <param name="Values">One for each observation.</param>
/// <param name="Gradients">A row for each observation, a column for each parameter.</param>
public sealed record Predictions(Vector<double> Values, Matrix<double> Gradients);

/// <summary>One thing that was measured.</summary>
/// <param name="Value">What was measured; of a censored observation, what the truth lies below.</param>
/// <param name="IsCensored">Whether it is only known that the truth lies below <paramref name="Value"/>.</param>
/// <param name="Deviation">Its standard deviation where that is known; null where it is to be estimated, the same for all such.</param>
public readonly record struct Observation(double Value, bool IsCensored = false, double? Deviation = null);

/// <summary>What is known about a parameter before anything is measured: a normal distribution, cut off at bounds.</summary>
/// <param name="Mean">Its mean.</param>
/// <param name="Deviation">Its standard deviation; infinite where nothing is known.</param>
/// <param name="Least">Lowest possible value.</param>
/// <param name="Most">Highest possible value.</param>
public readonly record struct Prior(
    double Mean, double Deviation, double Least = double.NegativeInfinity, double Most = double.PositiveInfinity)
{
    /// <summary>Nothing is known.</summary>
    public static Prior Flat => new(0, double.PositiveInfinity);
}

/// <summary>What is known about the standard deviation before anything is measured.</summary>
/// <param name="Deviation">A guess.</param>
/// <param name="Weight">How many observations the guess is worth; 0 leaves everything to the observations.</param>
/// <param name="IsFixed">Whether the guess stands whatever is observed.</param>
public readonly record struct ScalePrior(double Deviation, double Weight, bool IsFixed = false);
