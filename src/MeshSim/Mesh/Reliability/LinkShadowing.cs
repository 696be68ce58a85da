using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Mesh.Reliability;

/// <summary>
/// Log-normal shadowing of all links of a network together: the link of devices i and j deviates from its median by
/// a (n_i + n_j) + b e_ij, where all n and e are independent and normal, a = σ √ρ and b = σ √(1 − 2ρ). Each link then has
/// deviation σ, two links that share an end have correlation ρ, and two that do not have none.
/// </summary>
public sealed record LinkShadowing
{
    /// <summary>
    /// Correlation used where nothing is said; assumed. Cellular planning takes 0.5 for one terminal heard at two sites (3GPP TR
    /// 36.942, from memory), which is also the most that this form can have; here some of what surrounds a device is already
    /// counted as walls and mountings, so a little less.
    /// </summary>
    public const double DefaultCorrelation = 0.4;

    /// <summary>Accepted correlations: above one half the form has none of its own left for a link.</summary>
    public static readonly ValidRange CorrelationRange = new(0, 0.5, "(correlation)");

    /// <summary>Checks the parameters.</summary>
    /// <param name="deviation">σ, within <see cref="DeliveryRatio.ShadowingDb"/>.</param>
    /// <param name="correlation">ρ, within <see cref="CorrelationRange"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A parameter is outside its range.</exception>
    public LinkShadowing(Decibels deviation, double correlation = DefaultCorrelation)
    {
        DeliveryRatio.ShadowingDb.Check(deviation.Value);
        Deviation = deviation;
        Correlation = CorrelationRange.Check(correlation);
    }

    /// <summary>σ, of every link.</summary>
    public Decibels Deviation { get; }

    /// <summary>ρ, of two links that share an end.</summary>
    public double Correlation { get; }

    /// <summary>a: the part of a device, which all its links have in common.</summary>
    public Decibels OfDevice => Math.Sqrt(Correlation) * Deviation;

    /// <summary>b: the part of a link alone.</summary>
    public Decibels OfLink => Math.Sqrt(1 - (2 * Correlation)) * Deviation;
}
