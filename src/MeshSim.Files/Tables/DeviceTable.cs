using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Homes;
using MeshSim.Files.Sources;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Files.Tables;

/// <summary>Reads <c>devices.csv</c>.</summary>
internal sealed class DeviceTable
{
    /// <summary>Columns that must be there.</summary>
    public static readonly ImmutableArray<string> Required = ["id", "network", "power", "storey", "x", "y", "height"];

    /// <summary>Columns that may be there.</summary>
    public static readonly ImmutableArray<string> Optional = ["name", "kind", "role", "room", "mounting", "circuit", "switched_by", "tx_dbm", "note", "before", "after"];

    /// <summary>How power sources are written.</summary>
    public static readonly IReadOnlyDictionary<string, PowerSource> PowerWords = Enum.GetValues<PowerSource>().ToDictionary(DeviceWords.Of);

    /// <summary>How roles are written.</summary>
    public static readonly IReadOnlyDictionary<string, Role> RoleWords = Enum.GetValues<Role>().ToDictionary(DeviceWords.Of);

    /// <summary>The mounting of a device that states none.</summary>
    public const string DefaultMounting = "surface";

    /// <summary>
    /// Most devices of a home. Work grows with the square of their number and, where outages are rehearsed, faster: on two busy
    /// cores 500 devices in one network took 13 s for routes and minutes for a rehearsal, 1000 more than minutes for routes alone.
    /// </summary>
    public const int MostDevices = 500;

    private static readonly ValidRange TransmitDbm = new(-40, 40, "dBm");

    private readonly RoomFinder rooms;
    private readonly HomeDocument? home;
    private readonly DiagnosticList problems;
    private readonly List<(SourcePlace Place, Device Device)> statedPowers = [];

    private DeviceTable(HomeDocument? home, IReadOnlyList<BuiltStorey>? storeys, DiagnosticList problems)
    {
        this.home = home;
        rooms = new(storeys, home is { AreStoreysComplete: true }, problems);
        this.problems = problems;
    }

    /// <summary>Whether the id of every row is known, so that an unknown id is a mistake of whoever names it.</summary>
    public bool IsComplete { get; private set; } = true;

    /// <summary>The devices that could be read, in the order written.</summary>
    public List<Device> Devices { get; } = [];

    /// <summary>Every id with its network, whether the rest could be read or not; null for an unknown network. The first of two equal ids counts.</summary>
    public Dictionary<string, string?> Ids { get; } = [];

    /// <summary>Every circuit, in the order of its first device.</summary>
    public HashSet<string> Circuits { get; } = [];

    /// <summary>Every manual switch, in the order of its first device.</summary>
    public HashSet<string> Switches { get; } = [];

    /// <summary>Reads the table; null with an error when it is no table of devices.</summary>
    /// <param name="file">The file.</param>
    /// <param name="names">What its columns are called.</param>
    /// <param name="home">What <c>home.yaml</c> says; null when nothing could be made of it.</param>
    /// <param name="storeys">Its storeys as built, or null.</param>
    /// <param name="problems">Takes the errors and notices.</param>
    public static DeviceTable? Read(SourceFile file, ColumnNames names, HomeDocument? home, IReadOnlyList<BuiltStorey>? storeys, DiagnosticList problems)
    {
        if (CsvTable.Read(file, Required, Optional, problems, names.For(file)) is not { } table) return null;
        if (RowLimit.IsExceeded(table, MostDevices, "devices", problems)) return null;

        DeviceTable devices = new(home, storeys, problems) { IsComplete = table.IsComplete };
        UniqueNames ids = new("device", problems);
        foreach (CsvRow row in table.Rows) devices.ReadRow(new(row, problems), ids);
        foreach (NetworkDocument network in home?.Networks ?? [])
            BandNotices.OfDevices(devices.statedPowers.Where(one => one.Device.Network.Value == network.Name.Name), network, home!, problems);
        return devices;
    }

    private void ReadRow(RowReader row, UniqueNames ids)
    {
        string? id = row.RequiredText("id"), networkName = row.RequiredText("network");
        NetworkDocument? network = FindNetwork(row, networkName);
        IsComplete &= id is not null;
        if (id is not null)
        {
            ids.Add(new(id, row.PlaceOf("id")));
            Ids.TryAdd(id, network?.Name.Name);
        }

        string? circuit = row.Text("circuit"), manualSwitch = row.Text("switched_by");
        if (circuit is not null) Circuits.Add(circuit);
        if (manualSwitch is not null) Switches.Add(manualSwitch);

        int errorsBefore = problems.ErrorCount;
        string name = row.Text("name") ?? id ?? "", kind = row.Text("kind") ?? "";
        PowerSource? power = row.RequiredChoice("power", PowerWords);
        Role? stated = row.Choice("role", RoleWords);
        Mounting? mounting = FindMounting(row);
        double? transmitDbm = row.Number("tx_dbm", TransmitDbm);
        FoundPlace? place = rooms.Find(row);
        if (id is null || power is null || network is null) return;
        Role role = RoleRules.Decide(row, new(id), power.Value, stated, network, problems);
        if (problems.ErrorCount > errorsBefore || place is not { } found || mounting is null) return;
        Devices.Add(new()
        {
            Id = new(id),
            Name = name,
            Network = new(network.Name.Name),
            Kind = kind,
            Power = power.Value,
            Role = role,
            Storey = found.Storey,
            Point = found.Point,
            HeightMetres = found.HeightMetres,
            Room = found.Room,
            Mounting = mounting,
            Circuit = circuit,
            SwitchedBy = manualSwitch,
            TransmitPower = transmitDbm is { } dbm ? new PowerLevel(dbm) : null,
            Note = row.Note("note"),
            Before = row.Note("before"),
            After = row.Note("after"),
        });
        if (transmitDbm is not null) statedPowers.Add((row.PlaceOf("tx_dbm"), Devices[^1]));
    }

    private NetworkDocument? FindNetwork(RowReader row, string? name)
    {
        if (home is null || name is null) return null;
        NetworkDocument? network = home.Networks.FirstOrDefault(candidate => candidate.Name.Name == name);
        if (network is null && home.AreNetworksComplete)
            problems.Error(
                row.PlaceOf("network"),
                $"no network is called {KnownNames.Quote(name)}",
                () => KnownNames.Help(name, [.. home.Networks.Select(candidate => candidate.Name.Name)], "networks"));
        return network;
    }

    private Mounting? FindMounting(RowReader row)
    {
        string name = row.Text("mounting") ?? DefaultMounting;
        Mounting? mounting = Catalogues.Mountings.FirstOrDefault(candidate => candidate.Name == name);
        if (mounting is null)
            problems.Error(
                row.PlaceOf("mounting"),
                $"no mounting is called {KnownNames.Quote(name)}",
                () => KnownNames.Help(name, [.. Catalogues.Mountings.Select(candidate => candidate.Name)], "mountings"));
        return mounting;
    }
}
