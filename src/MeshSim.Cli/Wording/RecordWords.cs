using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Studies;

namespace MeshSim.Cli.Wording;

/// <summary>The device record in words.</summary>
internal static class RecordWords
{
    /// <summary>What holds for every device of the record.</summary>
    public static readonly ImmutableArray<string> Cautions =
    [
        "Work on the mains is for licensed electricians, under the wiring rules of the place: isolate, lock off and prove dead before anything is opened.",
        "Smoke, gas, medical and security alarms must not depend on this mesh.",
        "Ways and margins are computed from the drawing; the rest is as the home folder says. Check both against the house.",
    ];

    /// <summary>The answer in one line: how much is on record, and what is missing.</summary>
    public static string Answer(IReadOnlyCollection<DeviceRecord> records)
    {
        string[] unknown =
        [
            .. records.Where(record => record.IsolatedAt is null).Select(record => record.Device.Circuit).OfType<string>()
                .Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal),
        ];
        int unfed = records.Count(record => record.Device is { Power: PowerSource.Mains, Circuit: null });
        string text = $"{Figures.Counted(records.Count, "device")} on record.";
        if (unknown.Length > 0) text += $" Where it is isolated is not on record for {NameList.Spoken(unknown)}.";
        if (unfed > 0) text += $" {Figures.Counted(unfed, "mains device")} without a circuit.";
        return text;
    }

    /// <summary>Where a device is, such as "ground, hall; x 1.5, y 2, 1.2 m above the floor".</summary>
    public static string Place(Home home, Device device) =>
        $"{CoverageWords.Place(home, device.Id)}; x {Figures.Plain(device.Point.XMetres)}, y {Figures.Plain(device.Point.YMetres)}, "
        + $"{Figures.Plain(device.HeightMetres)} m above the floor";

    /// <summary>The circuit with its isolation point.</summary>
    public static string Circuit(DeviceRecord record) => (record.Device.Circuit, record.IsolatedAt) switch
    {
        (null, _) => record.Device.Power == PowerSource.Mains ? "not on record" : "none",
        ({ } circuit, null) => $"{circuit}; where it is isolated is not on record",
        ({ } circuit, { } at) => $"{circuit}, isolated at: {at}",
    };

    /// <summary>What drops when the device does.</summary>
    public static string Drops(DeviceRecord record)
    {
        if (record.Drops.IsEmpty && record.LeavesOneWay.IsEmpty) return "nobody";
        string drops = record.Drops.IsEmpty ? "nobody" : NameList.Short(record.Drops);
        return record.LeavesOneWay.IsEmpty ? drops : $"{drops}; left with one way: {NameList.Short(record.LeavesOneWay)}";
    }

    /// <summary>What goes when the circuit is isolated.</summary>
    public static string WithCircuit(DeviceRecord record)
    {
        string off = record.OnSameCircuit.IsEmpty ? "no other device goes off" : $"also off: {NameList.Short(record.OnSameCircuit)}";
        return record.DropsWithCircuit.IsEmpty ? off : $"{off}; drops: {NameList.Short(record.DropsWithCircuit)}";
    }
}
