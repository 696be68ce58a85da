using MeshSim.Quantities;

namespace MeshSim.Radio;

/// <summary>How a device stands to the band limits of its region.</summary>
/// <param name="Row">
/// The row that admits it with the fewest conditions; when none does, the row that it exceeds least; null when no row covers
/// its signal.
/// </param>
/// <param name="Excess">How far it lies above that row's limit; zero or less when admitted.</param>
public sealed record BandVerdict(BandLimit? Row, Decibels Excess)
{
    /// <summary>Whether a row admits the device. A device above its limit, or outside every band, is a finding to report.</summary>
    public bool IsAdmitted => Row is not null && Excess <= Decibels.Zero;
}

/// <summary>Holds a device's power against a regional table of band limits. The law in force decides, not this table.</summary>
public static class BandCheck
{
    /// <summary>The verdict on one device.</summary>
    /// <param name="radio">Its kind of radio. Its noise bandwidth stands for the bandwidth of its signal.</param>
    /// <param name="carrier">Its carrier.</param>
    /// <param name="transmitPower">At the antenna connector.</param>
    /// <param name="limits">The rows of its region.</param>
    public static BandVerdict Of(RadioProfile radio, Frequency carrier, PowerLevel transmitPower, IEnumerable<BandLimit> limits)
    {
        var rows = (from row in limits
                    where Covers(row, radio, carrier)
                    let excess = Radiated(row.Reference, transmitPower, radio.AntennaGain) - row.Limit
                    select new BandVerdict(row, excess)).ToList();

        // Of the rows that admit the device, the one with the freest use of time binds least, then the lowest power.
        IEnumerable<BandVerdict> admitting = rows.Where(verdict => verdict.IsAdmitted);
        return admitting.OrderByDescending(verdict => verdict.Row!.DutyCycle).ThenBy(verdict => verdict.Row!.Limit).FirstOrDefault()
            ?? rows.MinBy(verdict => verdict.Excess)
            ?? new BandVerdict(null, Decibels.Zero);
    }

    private static bool Covers(BandLimit row, RadioProfile radio, Frequency carrier) =>
        carrier >= row.From && carrier <= row.To
        && radio.NoiseBandwidthKilohertz >= row.MinBandwidthKilohertz
        && radio.NoiseBandwidthKilohertz <= row.MaxBandwidthKilohertz;

    private static PowerLevel Radiated(PowerReference reference, PowerLevel transmitPower, Decibels antennaGain) => reference switch
    {
        PowerReference.Conducted => transmitPower,
        PowerReference.Eirp => transmitPower + antennaGain,
        PowerReference.Erp => RadiatedPower.ErpFromEirp(transmitPower + antennaGain),
        _ => throw new ArgumentOutOfRangeException(nameof(reference), reference, "is not a power reference"),
    };
}
