using System.Collections.Immutable;
using MeshSim.Mesh;
using MeshSim.Mesh.Reliability;

namespace MeshSim.Placement.Robustness;

/// <summary>Draws the unknowns that losses hang on, 64 times at once: normal, in standard deviations, correlated as readings left them.</summary>
internal sealed class UnknownDraws
{
    private readonly double[][] factor;

    /// <summary>Splits the correlations into their lower triangular factor (A.-L. Cholesky).</summary>
    /// <param name="unknowns">The unknowns.</param>
    /// <param name="correlation">Of each two of them.</param>
    public UnknownDraws(ImmutableArray<LossUnknown> unknowns, Func<LossUnknown, LossUnknown, double> correlation)
    {
        factor = new double[unknowns.Length][];
        for (int row = 0; row < unknowns.Length; row++)
        {
            factor[row] = new double[row + 1];
            for (int column = 0; column <= row; column++)
            {
                double rest = correlation(unknowns[row], unknowns[column]);
                for (int i = 0; i < column; i++) rest -= factor[row][i] * factor[column][i];

                // Rounded correlations may leave a trace below 0, and nothing to share out.
                factor[row][column] = row == column ? Math.Sqrt(Math.Max(0, rest)) : factor[column][column] > 0 ? rest / factor[column][column] : 0;
            }
        }
    }

    /// <summary>Number of unknowns.</summary>
    public int Count => factor.Length;

    /// <summary>Draws 64 times.</summary>
    /// <param name="random">Where the numbers come from.</param>
    /// <param name="values">Receives 64 values per unknown, in standard deviations.</param>
    public void Draw(ref SplitMix64 random, Span<double> values)
    {
        for (int i = 0; i < values.Length; i += 2) (values[i], values[i + 1]) = random.NextNormals();

        // From the last row up, so that each row still finds those above as they were drawn.
        for (int row = Count - 1; row >= 0; row--)
        {
            for (int draw = 0; draw < 64; draw++)
            {
                double value = 0;
                for (int column = 0; column <= row; column++) value += factor[row][column] * values[(64 * column) + draw];
                values[(64 * row) + draw] = value;
            }
        }
    }
}
