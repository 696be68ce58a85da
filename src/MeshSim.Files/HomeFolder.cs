using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Homes;
using MeshSim.Files.Sources;
using MeshSim.Files.Tables;
using MeshSim.FloorPlans;

namespace MeshSim.Files;

/// <summary>Reads a home folder: <c>home.yaml</c>, <c>devices.csv</c>, and perhaps <c>outlets.csv</c> and <c>readings.csv</c>.</summary>
public sealed class HomeFolder
{
    /// <summary>Longest accepted <c>home.yaml</c>: a building of a thousand rooms stays below.</summary>
    public const int LongestHomeFileBytes = 4 * 1024 * 1024;

    /// <summary>Longest accepted table: several hundred thousand lines.</summary>
    public const int LongestTableBytes = 64 * 1024 * 1024;

    private readonly string _folder;
    private readonly string _homeFile;
    private readonly string _deviceFile;
    private readonly string _outletFile;
    private readonly string _readingFile;
    private readonly DiagnosticList _problems;

    private HomeFolder(string folder)
    {
        _folder = folder;
        _homeFile = Path.Combine(folder, HomeFileNames.Home);
        _deviceFile = Path.Combine(folder, HomeFileNames.Devices);
        _outletFile = Path.Combine(folder, HomeFileNames.Outlets);
        _readingFile = Path.Combine(folder, HomeFileNames.Readings);
        _problems = new([folder, _homeFile, _deviceFile, _outletFile, _readingFile]);
    }

    /// <summary>Reads a home folder. Whatever is wrong with it is data in the answer; all of it comes in one run.</summary>
    /// <param name="folder">The folder; diagnostics name their files beneath it as it is written here.</param>
    public static HomeReadResult Read(string folder)
    {
        ArgumentException.ThrowIfNullOrEmpty(folder);

        HomeFolder reader = new(folder);
        Home? home = Directory.Exists(folder) ? reader.ReadFiles() : null;
        if (home is null && !reader._problems.HasErrors) reader._problems.Error(SourcePlace.StartOf(folder), "there is no such folder", "name a folder that holds a home.yaml");
        return new()
        {
            Home = reader._problems.HasErrors ? null : home,
            Problems = reader._problems.Sorted(Severity.Error),
            Notices = reader._problems.Sorted(Severity.Notice),
        };
    }

    private Home? ReadFiles()
    {
        HomeDocument? document = Open(_homeFile, isRequired: true, LongestHomeFileBytes) is { } homeFile ? HomeFileReader.Read(homeFile, _problems) : null;
        ImmutableArray<BuiltStorey>? storeys = document is null ? null : BuiltStorey.BuildAll(document, _problems);
        DeviceTable? devices = Open(_deviceFile, isRequired: true, LongestTableBytes) is { } deviceFile ? DeviceTable.Read(deviceFile, document, storeys, _problems) : null;

        HashSet<string> circuits = devices is null ? [] : [.. devices.Circuits];
        ImmutableArray<Outlet>? outlets = Open(_outletFile, isRequired: false, LongestTableBytes) is { } outletFile ? OutletTable.Read(outletFile, document, storeys, circuits, _problems) : null;
        ImmutableArray<Reading> readings = Open(_readingFile, isRequired: false, LongestTableBytes) is { } readingFile ? ReadingTable.Read(readingFile, devices, _problems) : [];
        if (document is null || storeys is not { } built) return null;

        foreach (NetworkDocument network in document.Networks) BandNotices.OfNetwork(network.Name.Place, network, document, _problems);
        ImmutableArray<AccessPoint> accessPoints = CrossChecks.AccessPoints(document, built, _problems);
        if (devices is not null)
        {
            CrossChecks.Coordinators(document, devices, _problems);
            CrossChecks.States(document, devices, circuits, _problems);
        }

        return _problems.HasErrors ? null : Assemble(document, new([.. built.Select(storey => storey.Storey)]), devices!, outlets, readings, accessPoints);
    }

    private SourceFile? Open(string path, bool isRequired, int longestBytes)
    {
        if (File.Exists(path) || Directory.Exists(path)) return SourceFile.Read(path, longestBytes, _problems);

        string name = Path.GetFileName(path);
        string[] others = [.. Directory.EnumerateFiles(_folder).Select(file => Path.GetFileName(file)).Except(HomeFileNames.All).Order(StringComparer.Ordinal)];
        string? similar = KnownNames.Nearest(name, others);
        if (isRequired)
            _problems.Error(SourcePlace.StartOf(path), "the file is missing", similar is null ? "every home folder has it" : $"is {KnownNames.Quote(similar)} meant? Then rename it");
        else if (similar is not null)
            _problems.Notice(SourcePlace.StartOf(path), "there is no such file", $"is {KnownNames.Quote(similar)} meant? It is not read under that name");
        return null;
    }

    private static Home Assemble(HomeDocument document, FloorPlan plan, DeviceTable devices, ImmutableArray<Outlet>? outlets, ImmutableArray<Reading> readings, ImmutableArray<AccessPoint> accessPoints) => new()
    {
        Name = document.Name,
        Region = document.Region,
        FloorPlan = plan,
        Constructions = document.Constructions,
        Networks = [.. document.Networks.Select(network => new Network
        {
            Name = new(network.Name.Name),
            Radio = network.Radio!,
            Channel = network.Channel,
            Coordinator = new(network.Coordinator!.Value.Name),
            HopLimit = network.HopLimit ?? network.Radio!.HopLimit,
        })],
        Devices = [.. devices.Devices],
        Outlets = outlets ?? AssumedOutlets.Along(plan),
        AccessPoints = accessPoints,
        States = [.. document.States.Select(state => new State
        {
            Name = state.Name,
            DevicesOff = [.. state.DevicesOff.Select(device => new DeviceId(device.Name))],
            CircuitsOff = [.. state.CircuitsOff.Select(circuit => circuit.Name)],
            SwitchesOff = [.. state.SwitchesOff.Select(manual => manual.Name)],
            Open = [.. state.Open.Select(opening => opening.Name)],
            MustHold = state.MustHold,
        })],
        Readings = readings,
        BandLimits = [.. Catalogues.BandLimits.Where(limit => limit.Region == document.Region)],
        Parameters = document.Parameters,
    };
}
