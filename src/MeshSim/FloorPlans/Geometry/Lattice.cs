using MeshSim.Quantities;

namespace MeshSim.FloorPlans.Geometry;

/// <summary>
/// The grid of tenths of a millimetre on which every plan position and height lies. Whole numbers make each question of
/// side and order exact: a cross product of two plan vectors stays below 2^53, so it is exact as a <see cref="double"/> and
/// as a <see cref="long"/>. A tape measure does not reach a tenth of a millimetre.
/// </summary>
public static class Lattice
{
    /// <summary>Lattice steps per metre.</summary>
    public const int StepsPerMetre = 10_000;

    /// <summary>Accepted plan coordinates and heights: the bound that keeps cross products exact.</summary>
    public static readonly ValidRange CoordinateMetres = new(-1000, 1000, "m");

    /// <summary>The nearest lattice coordinate.</summary>
    /// <param name="metres">A coordinate or a height, m.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside <see cref="CoordinateMetres"/>, or not a number.</exception>
    public static int FromMetres(double metres) => (int)Math.Round(CoordinateMetres.Check(metres) * StepsPerMetre, MidpointRounding.AwayFromZero);

    /// <summary>A lattice coordinate in metres.</summary>
    public static double ToMetres(long steps) => steps / (double)StepsPerMetre;
}
