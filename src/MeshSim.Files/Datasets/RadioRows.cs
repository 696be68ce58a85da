using System.Collections.Immutable;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Tables;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Files.Datasets;

/// <summary>Reads <c>radios.csv</c>, <c>mountings.csv</c> and <c>band-limits.csv</c>.</summary>
internal static class RadioRows
{
    private static readonly ValidRange Megahertz = new(1, 100_000, "MHz");
    private static readonly ValidRange Dbm = new(-200, 60, "dBm");
    private static readonly ValidRange GainDb = new(-60, 60, "dB");
    private static readonly ValidRange Positive = new(double.Epsilon, 1e9, "");
    private static readonly ValidRange ZeroOrMore = new(0, 1e9, "");

    private static readonly ImmutableArray<string> RadioColumns =
    [
        "name", "description", "standard", "region", "first_carrier_mhz", "first_channel", "last_channel", "channel_step_mhz", "topology",
        "modulation", "bit_rate_kbps", "noise_bandwidth_khz", "sensitivity_dbm", "sensitivity_frame_octets", "noise_figure_db",
        "transmit_power_dbm", "antenna_gain_dbi", "hop_limit", "frame_octets", "overhead_octets", "retries",
        "back_off_unit_us", "back_off_units", "most_back_off_units", "looks", "look_us", "busy_threshold_dbm", "retry_delay_us",
        "retry_back_off_units", "turnaround_us", "ack_octets", "patience_us", "adjacent_rejection_db", "alternate_rejection_db", "source",
    ];

    private static readonly ImmutableArray<string> LimitColumns =
    [
        "region", "from_mhz", "to_mhz", "limit_mw", "reference", "duty_cycle", "min_bandwidth_khz", "max_bandwidth_khz", "rule", "source",
    ];

    private static readonly Dictionary<string, Topology> Topologies = new() { ["mesh"] = Topology.Mesh, ["star"] = Topology.Star };

    private static readonly Dictionary<string, Modulation> Modulations = new()
    {
        ["o-qpsk"] = Modulation.OQpsk,
        ["fsk"] = Modulation.Fsk,
        ["bpsk"] = Modulation.Bpsk,
        ["on-off"] = Modulation.OnOff,
    };

    private static readonly Dictionary<string, PowerReference> References = new()
    {
        ["erp"] = PowerReference.Erp,
        ["eirp"] = PowerReference.Eirp,
        ["conducted"] = PowerReference.Conducted,
    };

    private static readonly ImmutableArray<(string Column, Frequency Frequency)> MountingLosses =
    [
        ("loss_db_at_433.92_mhz", new(433.92)), ("loss_db_at_868.4_mhz", new(868.4)), ("loss_db_at_2440_mhz", new(2440)),
    ];

    /// <summary>Every radio profile.</summary>
    public static ImmutableArray<RadioProfile> Radios() => DatasetRows.Read("radios.csv", RadioColumns, Radio);

    /// <summary>Every mounting.</summary>
    public static ImmutableArray<Mounting> Mountings() =>
        DatasetRows.Read("mountings.csv", ["name", "description", .. MountingLosses.Select(loss => loss.Column), "spread_db", "spread_source", "source"], (row, _) => new Mounting
        {
            Name = row.RequiredText("name") ?? "",
            Description = row.RequiredText("description") ?? "",
            Losses = [.. MountingLosses.Select(loss => (loss.Frequency, new Decibels(row.RequiredNumber(loss.Column, ZeroOrMore) ?? 0)))],
            Spread = new(row.RequiredNumber("spread_db", ConstructionRows.SpreadDb) ?? 0),
            SpreadSource = row.RequiredNote("spread_source"),
            Source = row.RequiredNote("source"),
        });

    /// <summary>Every band limit.</summary>
    public static ImmutableArray<BandLimit> BandLimits() =>
        DatasetRows.Read("band-limits.csv", LimitColumns, (row, _) => new BandLimit
        {
            Region = row.RequiredText("region") ?? "",
            From = new(row.RequiredNumber("from_mhz", Megahertz) ?? 1),
            To = new(row.RequiredNumber("to_mhz", Megahertz) ?? 1),
            Limit = PowerLevel.FromMilliwatts(row.RequiredNumber("limit_mw", Positive) ?? 1),
            Reference = row.RequiredChoice("reference", References) ?? default,
            DutyCycle = row.RequiredNumber("duty_cycle", new(double.Epsilon, 1, "")) ?? 1,
            MinBandwidthKilohertz = row.Number("min_bandwidth_khz", Positive) ?? 0,
            MaxBandwidthKilohertz = row.Number("max_bandwidth_khz", Positive) ?? double.PositiveInfinity,
            Rule = row.RequiredText("rule") ?? "",
            Source = row.RequiredNote("source"),
        });

    private static RadioProfile Radio(RowReader row, DiagnosticList problems) => new()
    {
        Name = row.RequiredText("name") ?? "",
        Description = row.RequiredText("description") ?? "",
        Standard = row.RequiredText("standard") ?? "",
        Region = row.Text("region"),
        FirstCarrier = new(row.RequiredNumber("first_carrier_mhz", Megahertz) ?? 1),
        FirstChannel = Whole(row, "first_channel", problems),
        LastChannel = Whole(row, "last_channel", problems),
        ChannelStepMegahertz = row.RequiredNumber("channel_step_mhz", ZeroOrMore) ?? 0,
        Topology = row.RequiredChoice("topology", Topologies) ?? default,
        Modulation = row.RequiredChoice("modulation", Modulations) ?? default,
        BitRateKilobitsPerSecond = row.RequiredNumber("bit_rate_kbps", Positive) ?? 1,
        NoiseBandwidthKilohertz = row.RequiredNumber("noise_bandwidth_khz", Positive) ?? 1,
        Sensitivity = new(row.RequiredNumber("sensitivity_dbm", Dbm) ?? 0),
        SensitivityFrameOctets = Whole(row, "sensitivity_frame_octets", problems),
        NoiseFigure = new(row.RequiredNumber("noise_figure_db", GainDb) ?? 0),
        TransmitPower = new(row.RequiredNumber("transmit_power_dbm", Dbm) ?? 0),
        AntennaGain = new(row.RequiredNumber("antenna_gain_dbi", GainDb) ?? 0),
        HopLimit = Whole(row, "hop_limit", problems),
        FrameOctets = Whole(row, "frame_octets", problems),
        OverheadOctets = Whole(row, "overhead_octets", problems),
        Access = Access(row, problems),
        AdjacentRejection = row.Number("adjacent_rejection_db", GainDb) is { } adjacentDb ? new(adjacentDb) : null,
        AlternateRejection = row.Number("alternate_rejection_db", GainDb) is { } alternateDb ? new(alternateDb) : null,
        Source = row.RequiredNote("source"),
    };

    private static MediumAccess Access(RowReader row, DiagnosticList problems) => new()
    {
        Retries = Whole(row, "retries", problems),
        BackOffUnitMicroseconds = row.RequiredNumber("back_off_unit_us", ZeroOrMore) ?? 0,
        BackOffUnits = Whole(row, "back_off_units", problems),
        MostBackOffUnits = Whole(row, "most_back_off_units", problems),
        Looks = Whole(row, "looks", problems),
        LookMicroseconds = row.RequiredNumber("look_us", ZeroOrMore) ?? 0,
        BusyThreshold = row.Number("busy_threshold_dbm", Dbm) is { } thresholdDbm ? new(thresholdDbm) : null,
        RetryDelayMicroseconds = row.RequiredNumber("retry_delay_us", ZeroOrMore) ?? 0,
        RetryBackOffUnits = Whole(row, "retry_back_off_units", problems),
        TurnaroundMicroseconds = row.RequiredNumber("turnaround_us", ZeroOrMore) ?? 0,
        AcknowledgementOctets = Whole(row, "ack_octets", problems),
        PatienceMicroseconds = row.RequiredNumber("patience_us", ZeroOrMore) ?? 0,
    };

    private static int Whole(RowReader row, string column, DiagnosticList problems)
    {
        double number = row.RequiredNumber(column, ZeroOrMore) ?? 0;
        if (number != Math.Floor(number)) problems.Error(row.PlaceOf(column), $"{column} is not a whole number", "write a whole number");
        return (int)number;
    }
}
