using System.Globalization;
using MeshSim.Devices;

namespace MeshSim.Studies.Changes;

/// <summary>What a person wrote differently, named as the home folder names it.</summary>
internal static class PropertyChanges
{
    private static readonly (string Name, Func<Device, string> Of)[] DeviceProperties =
    [
        ("name", device => device.Name),
        ("network", device => device.Network.Value),
        ("kind", device => device.Kind),
        ("power", device => DeviceWords.Of(device.Power)),
        ("role", device => DeviceWords.Of(device.Role)),
        ("mounting", device => device.Mounting.Name),
        ("circuit", device => device.Circuit ?? ""),
        ("switched_by", device => device.SwitchedBy ?? ""),
        ("tx_dbm", device => device.TransmitPower is { } power ? Number(power.Dbm) : ""),
        ("note", device => device.Note),
        ("before", device => device.Before),
        ("after", device => device.After),
    ];

    private static readonly (string Name, Func<Network, string> Of)[] NetworkProperties =
    [
        ("radio", network => network.Radio.Name),
        ("channel", network => Number(network.Channel)),
        ("coordinator", network => network.Coordinator.Value),
        ("hops", network => Number(network.HopLimit)),
        ("usb3 beside", network => Flag(network.IsBesideUsb3)),
        ("lead", network => Number(network.LeadMetres)),
        ("fit", network => network.Fit is { } fit
            ? FormattableString.Invariant($"{fit.Readings} readings, exponent {fit.Exponent:0.####}, scatter {fit.Shadowing}, {fit.Parameters.Length - 1} corrections")
            : ""),
    ];

    private static readonly (string Name, Func<State, string> Of)[] StateProperties =
    [
        ("off", state => string.Join(", ", state.DevicesOff)),
        ("circuits off", state => string.Join(", ", state.CircuitsOff)),
        ("switches off", state => string.Join(", ", state.SwitchesOff)),
        ("open", state => string.Join(", ", state.Open)),
        ("must hold", state => Flag(state.MustHold)),
    ];

    private static readonly (string Name, Func<AccessPoint, string> Of)[] AccessPointProperties =
    [
        ("storey", point => point.Storey.Value),
        ("at", point => FormattableString.Invariant($"{point.Point} {point.HeightMetres:0.####} m up")),
        ("channel", point => Number(point.Channel)),
        ("width", point => Number(point.WidthMegahertz)),
        ("power", point => Number(point.Power.Dbm)),
        ("busy", point => Number(point.Busy)),
    ];

    private static readonly (string Name, Func<Home, string> Of)[] HomeProperties =
    [
        ("region", home => home.Region),
        ("north", home => Number(home.Parameters.NorthDegrees)),
        ("exponent", home => Number(home.Parameters.Exponent)),
        ("detour", home => Number(home.Parameters.Detour.Value)),
        ("shadowing", home => Number(home.Parameters.Shadowing.Value)),
        ("availability", home => Number(home.Parameters.Availability)),
        ("fading", home => home.Parameters.Fading.ToString().ToLowerInvariant()),
        ("costs: repeater", home => Number(home.Costs.Repeater)),
        ("costs: hub move", home => Number(home.Costs.HubMove)),
        ("costs: switch given up", home => Number(home.Costs.SwitchGivenUp)),
        ("k", home => home.Parameters.Fading == Fading.Rician ? Number(home.Parameters.SteadyToScattered.Value) : ""),
    ];

    /// <summary>A device, its place left out.</summary>
    public static IEnumerable<PropertyChange> Of(Device before, Device after) => Between(after.Id.Value, DeviceProperties, before, after);

    /// <summary>Everything but devices, outlets and the building.</summary>
    public static IEnumerable<PropertyChange> OfSettings(Home before, Home after) =>
    [
        .. Between("", HomeProperties, before, after),
        .. OfEach("network", NetworkProperties, before.Networks, after.Networks, network => network.Name.Value),
        .. OfEach("state", StateProperties, before.States, after.States, state => state.Name),
        .. OfEach("access point", AccessPointProperties, before.AccessPoints, after.AccessPoints, point => point.Name),
        .. OfEach("circuit", [("isolated at", circuit => circuit.IsolatedAt)], before.Circuits, after.Circuits, circuit => circuit.Name),
    ];

    private static IEnumerable<PropertyChange> OfEach<T>(
        string what, (string Name, Func<T, string> Of)[] properties, IReadOnlyList<T> before, IReadOnlyList<T> after, Func<T, string> nameOf) =>
    [
        .. HomeComparing.Only(before, after, nameOf).Select(gone => new PropertyChange($"{what} {nameOf(gone)}", "", "there", "")),
        .. HomeComparing.Only(after, before, nameOf).Select(added => new PropertyChange($"{what} {nameOf(added)}", "", "", "there")),
        .. HomeComparing.Pairs(before, after, nameOf).SelectMany(pair => Between($"{what} {nameOf(pair.After)}", properties, pair.Before, pair.After)),
    ];

    private static IEnumerable<PropertyChange> Between<T>(string subject, (string Name, Func<T, string> Of)[] properties, T before, T after) =>
        from property in properties
        let was = property.Of(before)
        let becomes = property.Of(after)
        where was != becomes
        select new PropertyChange(subject, property.Name, was, becomes);

    private static string Number(double number) => number.ToString("0.####", CultureInfo.InvariantCulture);

    private static string Flag(bool isSo) => isSo ? "true" : "";
}
