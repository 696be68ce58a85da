using MeshSim.Quantities;

namespace MeshSim.Radio;

/// <summary>What a power limit is measured against.</summary>
public enum PowerReference
{
    /// <summary>Effective radiated power, over a half-wave dipole.</summary>
    Erp,

    /// <summary>Equivalent isotropically radiated power.</summary>
    Eirp,

    /// <summary>Power at the antenna connector.</summary>
    Conducted,
}

/// <summary>One row of a regional table of band limits. The rules change: check them against the law in force.</summary>
public sealed record BandLimit
{
    /// <summary>Region, such as "EU".</summary>
    public required string Region { get; init; }

    /// <summary>Lower edge of the band.</summary>
    public required Frequency From { get; init; }

    /// <summary>Upper edge of the band.</summary>
    public required Frequency To { get; init; }

    /// <summary>Highest power.</summary>
    public required PowerLevel Limit { get; init; }

    /// <summary>What the limit is measured against.</summary>
    public required PowerReference Reference { get; init; }

    /// <summary>Largest share of time on the air, 0 to 1; 1 where there is no limit.</summary>
    public required double DutyCycle { get; init; }

    /// <summary>Least bandwidth of the signals that the row admits, kHz; 0 where it admits narrow ones.</summary>
    public double MinBandwidthKilohertz { get; init; }

    /// <summary>Greatest bandwidth of the signals that the row admits, kHz; infinite where there is no limit.</summary>
    public double MaxBandwidthKilohertz { get; init; } = double.PositiveInfinity;

    /// <summary>Conditions in words.</summary>
    public required string Rule { get; init; }

    /// <summary>Where the row comes from.</summary>
    public required string Source { get; init; }
}
