using MeshSim.Quantities;

namespace MeshSim.Radio;

/// <summary>
/// How much USB 3 storage on the same hub raises the noise floor of a stick at 2.4 GHz. Sources of the noise and its band:
/// a chip maker's paper, number 327216-001 of April 2012 (transcribed); nearly 20 dB close by is from memory of it. No law for
/// distance or cable length is published that we know of: the fall with the square of the distance is this program's choice.
/// </summary>
public static class SharedHubNoise
{
    /// <summary>Accepted lengths of an extension lead.</summary>
    public static readonly ValidRange LeadMetres = new(0, 10, "m");

    /// <summary>Carriers that are disturbed.</summary>
    public static readonly ValidRange DisturbedMegahertz = new(2400, 2500, "MHz");

    /// <summary>Rise of the noise floor close by.</summary>
    public static readonly Decibels CloseBy = new(20);

    /// <summary>Distance that counts as close by, m. Assumed: two sockets of one hub.</summary>
    public const double CloseByMetres = 0.1;

    /// <summary>The rise at the end of a lead: the added noise power falls with the square of the distance from <see cref="CloseByMetres"/> on.</summary>
    /// <param name="leadMetres">Length of the lead, taken as the distance, within <see cref="LeadMetres"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside its range.</exception>
    public static Decibels Rise(double leadMetres)
    {
        double nearness = CloseByMetres / Math.Max(LeadMetres.Check(leadMetres), CloseByMetres);
        return Decibels.FromPowerRatio(1 + ((CloseBy.PowerRatio - 1) * nearness * nearness));
    }
}
