using MeshSim.Materials;

namespace MeshSim.Propagation;

/// <summary>What the crossings of one path cost, floors apart from all others.</summary>
/// <param name="curves">By construction index.</param>
internal struct LossSum(LossCurve[] curves) : ICrossingVisitor
{
    /// <summary>Walls, openings and objects, dB.</summary>
    public double OthersDb;

    /// <summary>Floor structures, each as if it were alone, dB.</summary>
    public double FloorsDb;

    /// <summary>Number of floor structures.</summary>
    public int Floors;

    /// <inheritdoc/>
    public void Take(in Crossing crossing)
    {
        double lossDb = crossing.Weight * curves[crossing.Construction].At(crossing.Cosine).Value;
        if (crossing.Kind == LossKind.Floor)
        {
            FloorsDb += lossDb;
            Floors++;
        }
        else
        {
            OthersDb += lossDb;
        }
    }
}
