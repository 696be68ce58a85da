using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Homes;
using MeshSim.Files.Sources;
using MeshSim.Files.Tables;
using MeshSim.FloorPlans;

namespace MeshSim.Files;

/// <summary>Reads a home folder: <c>home.yaml</c>, <c>devices.csv</c>, and perhaps <c>outlets.csv</c>, <c>readings.csv</c> and <c>fit.yaml</c>.</summary>
public sealed class HomeFolder
{
    /// <summary>Longest accepted <c>home.yaml</c>: a building of a thousand rooms stays below.</summary>
    public const int LongestHomeFileBytes = 4 * 1024 * 1024;

    /// <summary>Longest accepted table: several hundred thousand lines.</summary>
    public const int LongestTableBytes = 64 * 1024 * 1024;

    private readonly string folder;
    private readonly string homeFile;
    private readonly string deviceFile;
    private readonly string outletFile;
    private readonly string readingFile;
    private readonly string fitFile;

    // Made when all has been read, so that it knows every problem.
    private Func<HomeDraft?>? draft;
    private readonly string columnFile;
    private readonly DiagnosticList problems;

    private HomeFolder(string folder)
    {
        this.folder = folder;
        homeFile = Path.Combine(folder, HomeFileNames.Home);
        deviceFile = Path.Combine(folder, HomeFileNames.Devices);
        outletFile = Path.Combine(folder, HomeFileNames.Outlets);
        readingFile = Path.Combine(folder, HomeFileNames.Readings);
        columnFile = Path.Combine(folder, HomeFileNames.Columns);
        fitFile = Path.Combine(folder, HomeFileNames.Fit);
        problems = new([folder, homeFile, columnFile, deviceFile, outletFile, readingFile, fitFile]);
    }

    /// <summary>Reads a home folder. Whatever is wrong with it is data in the answer; all of it comes in one run.</summary>
    /// <param name="folder">The folder; diagnostics name their files beneath it as it is written here.</param>
    public static HomeReadResult Read(string folder)
    {
        ArgumentException.ThrowIfNullOrEmpty(folder);

        HomeFolder reader = new(folder);
        Home? home = Directory.Exists(folder) ? reader.ReadFiles() : null;
        if (home is null && !reader.problems.HasErrors)
            reader.problems.Error(
                SourcePlace.StartOf(folder),
                File.Exists(folder) ? "this is a file, not a folder" : "there is no such folder",
                "name a folder that holds a home.yaml, or make one with meshsim new");
        return new()
        {
            Home = reader.problems.HasErrors ? null : home,
            Draft = reader.draft?.Invoke(),
            Problems = reader.problems.Sorted(Severity.Error),
            Notices = reader.problems.Sorted(Severity.Notice),
        };
    }

    private Home? ReadFiles()
    {
        HomeDocument? document = ReadFile(homeFile, isRequired: true, LongestHomeFileBytes, file => HomeFileReader.Read(file, problems));
        ImmutableArray<BuiltStorey>? storeys = document is null ? null : BuiltStorey.BuildAll(document, problems);
        ColumnNames columns = File.Exists(columnFile) ? ReadFile(columnFile, isRequired: false, LongestHomeFileBytes, file => ColumnNames.Read(file, problems)) ?? new() : new();
        DeviceTable? devices = ReadTable(deviceFile, isRequired: true, file => DeviceTable.Read(file, columns, document, storeys, problems));

        HashSet<string> circuits = devices is null ? [] : [.. devices.Circuits];
        ImmutableArray<Outlet>? outlets = ReadTable(outletFile, isRequired: false, file => OutletTable.Read(file, columns, document, storeys, circuits, problems));
        ImmutableArray<Reading>? readings = ReadTable(readingFile, isRequired: false, file => ReadingTable.Read(file, columns, devices, problems));
        ImmutableDictionary<string, NetworkFit>? fits =
            ReadFile(fitFile, isRequired: false, LongestHomeFileBytes, file => FitFileReader.Read(file, document, devices, problems));
        if (document is null || storeys is not { } built) return null;
        draft = () => DraftBuilding.Of(document, built, devices?.Devices ?? [], outlets ?? [], problems);

        foreach (NetworkDocument network in document.Networks) BandNotices.OfNetwork(network.Name.Place, network, document, problems);
        ImmutableArray<AccessPoint> accessPoints = CrossChecks.AccessPoints(document, built, problems);
        if (devices is not null)
        {
            CrossChecks.Coordinators(document, devices, problems);
            CrossChecks.States(document, devices, circuits, problems);
            if (devices.IsComplete && !problems.HasErrors) CrossChecks.Circuits(document, circuits, problems);
        }

        if (problems.HasErrors) return null;
        FloorPlan plan = new([.. built.Select(storey => storey.Storey)]);
        return Assemble(document, plan, devices!, fits) with
        {
            Outlets = outlets ?? AssumedOutlets.Along(plan),
            AccessPoints = accessPoints,
            Readings = readings ?? [],
        };
    }

    private T? ReadTable<T>(string path, bool isRequired, Func<SourceFile, T?> read) => ReadFile(path, isRequired, LongestTableBytes, read);

    private T? ReadFile<T>(string path, bool isRequired, int longestBytes, Func<SourceFile, T?> read) =>
        Open(path, isRequired, longestBytes) is { } file ? read(file) : default;

    private SourceFile? Open(string path, bool isRequired, int longestBytes)
    {
        if (File.Exists(path) || Directory.Exists(path)) return SourceFile.Read(path, longestBytes, problems);

        string name = Path.GetFileName(path);
        IEnumerable<string> names = Directory.EnumerateFiles(folder).Select(file => Path.GetFileName(file));
        string[] others = [.. names.Except(HomeFileNames.All).Order(StringComparer.Ordinal)];
        string? similar = KnownNames.Nearest(name, others);
        if (isRequired)
            problems.Error(
                SourcePlace.StartOf(path),
                "the file is missing",
                similar is null ? "every home folder has it" : $"is {KnownNames.Quote(similar)} meant? Then rename it");
        else if (similar is not null)
            problems.Notice(
                SourcePlace.StartOf(path),
                "there is no such file",
                $"is {KnownNames.Quote(similar)} meant? It is not read under that name");
        return null;
    }

    private static Home Assemble(HomeDocument document, FloorPlan plan, DeviceTable devices, ImmutableDictionary<string, NetworkFit>? fits) => new()
    {
        Name = document.Name,
        Region = document.Region,
        FloorPlan = plan,
        Constructions = document.Constructions,
        Networks = [.. document.Networks.Select(network => network.ToNetwork() with { Fit = fits?.GetValueOrDefault(network.Name.Name) })],
        Devices = [.. devices.Devices],
        Circuits = [.. document.Circuits.Select(circuit => circuit.Circuit)],
        States = [.. document.States.Select(state => new State
        {
            Name = state.Name,
            DevicesOff = [.. state.DevicesOff.Select(device => new DeviceId(device.Name))],
            CircuitsOff = [.. state.CircuitsOff.Select(circuit => circuit.Name)],
            SwitchesOff = [.. state.SwitchesOff.Select(manual => manual.Name)],
            Open = [.. state.Open.Select(opening => opening.Name)],
            MustHold = state.MustHold,
        })],
        BandLimits = [.. Catalogues.BandLimits.Where(limit => limit.Region == document.Region)],
        Parameters = document.Parameters,
        Costs = document.Costs,
    };
}
