using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Propagation;
using MeshSim.Studies;

namespace MeshSim.Cli.Json;

/// <summary>The device record of one network as JSON.</summary>
internal sealed record RecordJson(
    string Home, ModelName Model, string? State, string Network, string Coordinator, double DesignMarginDb, ImmutableArray<DeviceRecordJson> Devices)
{
    /// <summary>The record of a network.</summary>
    public static RecordJson Of(Home home, Network network, StudyOptions options, IEnumerable<DeviceRecord> records) => new(
        home.Name,
        options.Model,
        options.State?.Name,
        network.Name.Value,
        network.Coordinator.Value,
        home.ParametersOf(network).DesignMargin.Value,
        [.. records.Select(DeviceRecordJson.Of)]);
}

/// <summary>One device on record. What belongs to a way is null without one.</summary>
internal sealed record DeviceRecordJson(
    string Device,
    string Name,
    string Kind,
    string Power,
    string Role,
    string Storey,
    string? Room,
    double XMetres,
    double YMetres,
    double HeightMetres,
    string Mounting,
    string Hidden,
    string? Circuit,
    string? IsolatedAt,
    string? SwitchedBy,
    bool IsAlarm,
    string? Parent,
    ImmutableArray<string>? Route,
    double? WeakestMarginDb,
    SecondRouteJson? SecondRoute,
    ImmutableArray<string> Drops,
    ImmutableArray<string> LeavesOneWay,
    ImmutableArray<string> OnSameCircuit,
    ImmutableArray<string> DropsWithCircuit,
    ImmutableArray<RemovalStep> TakeOut,
    ImmutableArray<string> TakeOutWords,
    string Before,
    string After,
    string Note)
{
    /// <summary>The record of a device.</summary>
    public static DeviceRecordJson Of(DeviceRecord record)
    {
        Device device = record.Device;
        return new(
            device.Id.Value,
            device.Name,
            device.Kind,
            DeviceWords.Of(device.Power),
            DeviceWords.Of(device.Role),
            device.Storey.Value,
            device.Room?.Value,
            device.Point.XMetres,
            device.Point.YMetres,
            device.HeightMetres,
            device.Mounting.Name,
            device.Mounting.Description,
            device.Circuit,
            record.IsolatedAt,
            device.SwitchedBy,
            Alarms.Includes(device),
            record.Parent?.Value,
            record.Reach?.Route is { } route ? JsonIds.Of(route.Path) : null,
            record.Reach?.Route?.WeakestMargin.Value,
            record.Reach?.SecondRoute is { } second ? SecondRouteJson.Of(second) : null,
            JsonIds.Of(record.Drops),
            JsonIds.Of(record.LeavesOneWay),
            JsonIds.Of(record.OnSameCircuit),
            JsonIds.Of(record.DropsWithCircuit),
            record.Removal,
            RemovalWords.Of(record),
            device.Before,
            device.After,
            device.Note);
    }
}
