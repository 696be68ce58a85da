using MathNet.Numerics.LinearAlgebra;
using MeshSim.Fitting.Estimation;

namespace MeshSim.Tests.Fitting.Estimation;

/// <summary>Predictions that are linear in the parameters.</summary>
internal sealed class LinearObservations(Matrix<double> design) : IObservationModel
{
    public Predictions At(Vector<double> parameters) => new(design * parameters, design);
}
