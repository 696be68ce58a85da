using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Importing.GeoJson;
using MeshSim.Files.Importing.Mappings;
using MeshSim.Files.Importing.Svg;
using MeshSim.Files.Sources;
using MeshSim.FloorPlans;

namespace MeshSim.Files.Importing;

/// <summary>Makes a home of a drawing in an open format: SVG or GeoJSON.</summary>
public sealed class DrawingImport
{
    private readonly string file;
    private readonly ImportOptions options;
    private readonly DiagnosticList problems;
    private readonly ImportFindings findings;

    private DrawingImport(string file, ImportOptions options)
    {
        (this.file, this.options) = (file, options);
        problems = new(options.MappingFile is { } mapping ? [file, mapping] : [file]);
        findings = new(problems);
    }

    /// <summary>Reads a drawing. Whatever is wrong with it is data in the answer, all of it at once; whatever is not taken is listed.</summary>
    /// <param name="file">The drawing; its ending says what it is: <c>.svg</c>, <c>.geojson</c> or <c>.json</c>.</param>
    /// <param name="options">How to take it.</param>
    public static ImportResult Read(string file, ImportOptions options)
    {
        ArgumentException.ThrowIfNullOrEmpty(file);
        ArgumentNullException.ThrowIfNull(options);

        DrawingImport import = new(file, options);
        Home? home = import.ReadHome();
        return new()
        {
            Home = import.problems.HasErrors ? null : home,
            Problems = import.problems.Sorted(Severity.Error),
            Notices = import.problems.Sorted(Severity.Notice),
            LeftOut = import.findings.LeftOut,
            Taken = import.findings.Taken,
            Remarks = import.findings.Remarks,
        };
    }

    private Home? ReadHome()
    {
        ImportMapping? mapping = options.MappingFile is { } path
            ? SourceFile.Read(path, HomeFolder.LongestHomeFileBytes, problems) is { } file ? MappingReader.Read(file, problems) : null
            : new();
        if (ReadDrawing(mapping) is not { } drawing || mapping is null) return null;

        foreach (LeftOut one in drawing.LeftOut) findings.Leave(one.Place, one.What, one.Why);
        List<SortedShapes> sorted = SortedShapes.Sort(drawing, mapping, this.file, findings);
        if (!PlanOrigin.Settle(sorted, drawing, this.file, findings)) return null;

        StoreyAssembly assembly = new(mapping, options, findings);
        List<(SortedShapes Shapes, Storey Storey)> storeys = [];
        foreach (SortedShapes shapes in sorted)
            if (assembly.Add(shapes) is { } storey) storeys.Add((shapes, storey));
        return storeys.Count == 0 ? null : Assemble(mapping, storeys);
    }

    private Drawing? ReadDrawing(ImportMapping? mapping)
    {
        bool isSvg = this.file.EndsWith(".svg", StringComparison.OrdinalIgnoreCase);
        bool isGeoJson = this.file.EndsWith(".geojson", StringComparison.OrdinalIgnoreCase) || this.file.EndsWith(".json", StringComparison.OrdinalIgnoreCase);
        if (!isSvg && !isGeoJson)
        {
            problems.Error(SourcePlace.StartOf(this.file), "the ending of the file says neither SVG nor GeoJSON", "name a file that ends in .svg, .geojson or .json");
            return null;
        }

        if (SourceFile.Read(this.file, isSvg ? SvgXml.LongestBytes : GeoJsonDrawing.LongestBytes, problems) is not { } file) return null;
        if (isGeoJson) return GeoJsonDrawing.Read(file, options.MetresPerUnit, problems);

        // What the caller states takes the place of both words of the mapping.
        bool isStated = options.Length is not null || options.Ratio is not null;
        StatedLength? length = isStated ? options.Length : mapping?.Length;
        double? ratio = isStated ? options.Ratio : mapping?.Ratio;
        return SvgDrawing.Read(file, length, ratio, options.CurveMetres, problems);
    }

    private Home Assemble(ImportMapping mapping, List<(SortedShapes Shapes, Storey Storey)> storeys)
    {
        ImmutableArray<Network> networks = NetworksOf(mapping);
        DeviceTaking taking = new(networks, findings);
        List<Device> devices = [];
        List<Outlet> outlets = [];
        foreach ((SortedShapes shapes, Storey storey) in storeys)
        {
            devices.AddRange(taking.Devices(shapes, storey));
            outlets.AddRange(taking.Outlets(shapes, storey));
            findings.Take(storey.Name, "devices", "", shapes.Of(Meaning.Device).Count());
            findings.Take(storey.Name, "outlets", "", shapes.Of(Meaning.Outlet).Count());
        }

        foreach (Network network in networks.Where(network => !devices.Exists(device => device.Id == network.Coordinator)))
            devices.Insert(0, taking.AssumedCoordinator(network, storeys[0].Storey, SourcePlace.StartOf(file)));
        FloorPlan plan = new([.. storeys.Select(one => one.Storey)]);
        string region = options.Region ?? mapping.Region ?? "EU";
        if (options.Region is null && mapping.Region is null) findings.Remark($"the region is taken to be {region}");
        return new()
        {
            Name = options.HomeName ?? mapping.Home ?? Path.GetFileNameWithoutExtension(file),
            Region = region,
            FloorPlan = plan,
            Constructions = mapping.Constructions,
            Networks = networks,
            Devices = [.. devices],
            Outlets = outlets.Count > 0 ? [.. outlets] : AssumedOutlets.Along(plan),
            BandLimits = [.. Catalogues.BandLimits.Where(limit => limit.Region == region)],
            Parameters = new() { NorthDegrees = mapping.NorthDegrees },
        };
    }

    private ImmutableArray<Network> NetworksOf(ImportMapping mapping)
    {
        if (!mapping.Networks.IsEmpty && mapping.Networks.All(network => network is { Radio: not null, Coordinator: not null }))
            return [.. mapping.Networks.Select(network => network.ToNetwork())];
        findings.Remark($"the network is taken to be a mesh by IEEE 802.15.4 at 2.4 GHz on channel {UsualRadio.FirstChannel}, with \"{UsualCoordinator}\" for its coordinator");
        return
        [
            new()
            {
                Name = new("mesh"),
                Radio = UsualRadio,
                Channel = UsualRadio.FirstChannel,
                Coordinator = new(UsualCoordinator),
                HopLimit = UsualRadio.HopLimit,
            },
        ];
    }

    private const string UsualCoordinator = "hub";

    private static Radio.RadioProfile UsualRadio => Catalogues.Radios[0];
}
