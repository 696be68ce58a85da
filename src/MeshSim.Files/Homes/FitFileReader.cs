using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Sources;
using MeshSim.Files.Tables;
using MeshSim.Files.Yaml;
using MeshSim.Propagation;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Files.Homes;

/// <summary>Reads <c>fit.yaml</c>.</summary>
internal sealed class FitFileReader
{
    private static readonly ValidRange CorrectionDb = new(-100, 100, "dB");
    private static readonly ValidRange Error = new(0, 1000, "");
    private static readonly ValidRange Count = new(0, 1e9, "");
    private static readonly ValidRange Correlation = new(-1, 1, "");

    private readonly HomeDocument? home;
    private readonly DeviceTable? devices;
    private readonly DiagnosticList problems;

    private FitFileReader(HomeDocument? home, DeviceTable? devices, DiagnosticList problems) => (this.home, this.devices, this.problems) = (home, devices, problems);

    /// <summary>The fits by network; null with an error when nothing can be made of the file.</summary>
    /// <param name="file">The file.</param>
    /// <param name="home">The home that it belongs to; null when that could not be read.</param>
    /// <param name="devices">Its devices; null when they could not be read.</param>
    /// <param name="problems">Takes the errors.</param>
    public static ImmutableDictionary<string, NetworkFit>? Read(SourceFile file, HomeDocument? home, DeviceTable? devices, DiagnosticList problems)
    {
        if (YamlTree.Parse(file, problems) is not { } root) return null;
        if (MapReader.Open(root, "a fit file", problems, "fits") is not { } map || map.Require("fits") is null) return null;

        var reader = new FitFileReader(home, devices, problems);
        var fits = ImmutableDictionary.CreateBuilder<string, NetworkFit>();
        List<PlacedName> names = [];
        foreach (YamlNode node in map.List("fits"))
        {
            if (reader.ReadOne(node) is not { } fit) continue;
            names.Add(fit.Network);
            fits[fit.Network.Name] = fit.Fit;
        }

        UniqueNames.Check(names, "fitted network", problems);
        return fits.ToImmutable();
    }

    private (PlacedName Network, NetworkFit Fit)? ReadOne(YamlNode node)
    {
        MapReader? map = MapReader.Open(
            node, "a fit", problems, "network", "model", "readings", "shadowing", "exponent", "detour", "constructions", "mountings", "common offset", "offsets", "correlations");
        if (map?.RequiredText("network") is not { } network) return null;
        if (home is { AreNetworksComplete: true }) CheckKnown(network, map.PlaceOf("network"), [.. home.Networks.Select(known => known.Name.Name)], "network");
        ModelName model = ReadModel(map);
        double? shadowingDb = map.RequiredNumber("shadowing", FadingMargin.ShadowingDb);
        FittedParameter? exponent = map.Require("exponent") is { } at ? ReadFigures(at, "the exponent", FittedKind.Exponent, "value", LogDistance.Exponent) : null;
        string[]? constructions = home is null ? null : [.. home.Constructions.Keys.Select(name => name.Value).Order(StringComparer.Ordinal)];
        string[] mountings = [.. Catalogues.Mountings.Select(mounting => mounting.Name)];
        string[]? ids = devices is { IsComplete: true } ? [.. devices.Ids.Keys] : null;
        ImmutableArray<FittedParameter> parameters =
        [
            .. exponent is null ? [] : new[] { exponent },
            .. map.Find("detour") is { } round && ReadFigures(round, "the way round", FittedKind.Detour, "value", Detour.ExtraDb) is { } detour ? [detour] : Array.Empty<FittedParameter>(),
            .. ReadList(map, "constructions", FittedKind.Construction, "construction", "correction", constructions),
            .. ReadList(map, "mountings", FittedKind.Mounting, "mounting", "correction", mountings),
        ];
        ImmutableArray<FittedParameter> offsets =
        [
            .. map.Find("common offset") is { } common
                && ReadFigures(common, "the common offset", FittedKind.CommonOffset, "offset", CorrectionDb) is { } read ? [read] : Array.Empty<FittedParameter>(),
            .. ReadList(map, "offsets", FittedKind.Offset, "device", "offset", ids),
        ];
        int readings = map.WholeNumber("readings", Count) ?? 0;
        ImmutableArray<ImmutableArray<double>> correlations = ReadCorrelations(map, parameters.Length);
        if (exponent is null || shadowingDb is null) return null;
        return (new(network, map.PlaceOf("network")), new()
        {
            Model = model,
            Readings = readings,
            Shadowing = new(shadowingDb.Value),
            Parameters = parameters,
            Correlations = correlations,
            Offsets = offsets,
        });
    }

    private ModelName ReadModel(MapReader map)
    {
        string? model = map.RequiredText("model");
        if (model == ModelNames.LogDistance) return ModelName.LogDistance;
        if (model is not null && model != ModelNames.Detour)
            problems.Error(map.PlaceOf("model"), $"{KnownNames.Quote(model)} is no model that can be fitted", $"write {ModelNames.Detour} or {ModelNames.LogDistance}");
        return ModelName.Detour;
    }

    private List<FittedParameter> ReadList(MapReader map, string key, FittedKind kind, string nameKey, string valueKey, string[]? known)
    {
        List<PlacedName> names = [];
        List<FittedParameter> read = [];
        foreach (YamlNode node in map.List(key))
        {
            MapReader? entry = MapReader.Open(node, $"a fitted {nameKey}", problems, nameKey, valueKey, "error", "readings");
            if (entry?.RequiredText(nameKey) is not { } name) continue;
            names.Add(new(name, entry.PlaceOf(nameKey)));
            if (known is not null) CheckKnown(name, entry.PlaceOf(nameKey), known, nameKey);
            if (Figures(entry, kind, name, valueKey, CorrectionDb) is { } parameter) read.Add(parameter);
        }

        UniqueNames.Check(names, $"fitted {nameKey}", problems);
        return read;
    }

    private FittedParameter? ReadFigures(YamlNode node, string what, FittedKind kind, string valueKey, ValidRange range) =>
        MapReader.Open(node, what, problems, valueKey, "error", "readings") is { } map ? Figures(map, kind, "", valueKey, range) : null;

    private static FittedParameter? Figures(MapReader map, FittedKind kind, string name, string valueKey, ValidRange range)
    {
        double? value = map.RequiredNumber(valueKey, range), error = map.RequiredNumber("error", Error);
        int readings = map.WholeNumber("readings", Count) ?? 0;
        return value is null || error is null ? null : new(kind, name, value.Value, error.Value, readings);
    }

    private ImmutableArray<ImmutableArray<double>> ReadCorrelations(MapReader map, int parameters)
    {
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<double>>();
        foreach (YamlNode node in map.List("correlations"))
        {
            ImmutableArray<YamlNode> items = node is YamlList list ? list.Items : [];
            rows.Add([.. items.Select(item => map.NumberOf(item, "a correlation", Correlation) ?? 0)]);
            if (items.Length != rows.Count)
            {
                problems.Error(
                    node.Place,
                    FormattableString.Invariant($"row {rows.Count} of the correlations has {items.Length} numbers"),
                    FormattableString.Invariant($"it must have {rows.Count}; fit again"));
            }
        }

        if (rows.Count != Math.Max(0, parameters - 1) && !problems.HasErrorsIn(map.Place.File))
        {
            problems.Error(
                map.PlaceOf("correlations"),
                FormattableString.Invariant($"{rows.Count} rows of correlations for {parameters} parameters"),
                FormattableString.Invariant($"there must be {Math.Max(0, parameters - 1)}; fit again"));
        }

        return rows.ToImmutable();
    }

    private void CheckKnown(string name, SourcePlace place, string[] known, string what)
    {
        if (!known.Contains(name)) problems.Error(place, $"no {what} is called {KnownNames.Quote(name)}", () => KnownNames.Help(name, known, what + "s") + "; fit again, or delete the file");
    }
}
