using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Sources;
using MeshSim.Files.Yaml;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Files.Homes;

/// <summary>Reads <c>home.yaml</c>.</summary>
internal static class HomeFileReader
{
    /// <summary>Accepted directions of north.</summary>
    public static readonly ValidRange NorthDegrees = new(-360, 360, "degrees");

    /// <summary>Kinds of small-scale fading as they are written.</summary>
    public static readonly ImmutableSortedDictionary<string, Fading> Fadings =
        Enum.GetValues<Fading>().ToImmutableSortedDictionary(fading => fading.ToString().ToLowerInvariant(), fading => fading, StringComparer.Ordinal);

    /// <summary>Reads a home; null with an error when nothing can be made of the file.</summary>
    public static HomeDocument? Read(SourceFile file, DiagnosticList problems)
    {
        if (YamlTree.Parse(file, problems) is not { } root) return null;
        MapReader? map = MapReader.Open(root, "a home", problems, "home", "region", "north", "model", "constructions", "storeys", "networks", "wifi", "circuits", "states", "costs");
        if (map is null) return null;

        PlanningParameters parameters = ReadParameters(map, problems);
        ConstructionReader constructions = ConstructionReader.Read(map, problems);
        DescribedPlaces places = new();
        ImmutableArray<StoreyDocument> storeys = ReadStoreys(map, parameters.NorthDegrees, constructions, places, problems);
        ImmutableArray<NetworkDocument> networks = NetworkReader.Read(map, problems);
        return new()
        {
            Name = map.RequiredText("home") ?? "",
            Region = ReadRegion(map, isRequired: true, problems),
            Parameters = parameters,
            Costs = CostReader.Read(map, problems),
            Constructions = constructions.Known,
            Storeys = storeys,
            AreStoreysComplete = map.Find("storeys") is YamlList storeyList && storeyList.Items.Length == storeys.Length,
            Places = places,
            Networks = networks,
            AreNetworksComplete = map.Find("networks") is YamlList networkList && networkList.Items.Length == networks.Length,
            AccessPoints = AccessPointReader.Read(map, problems),
            Circuits = CircuitReader.Read(map, problems),
            States = StateReader.Read(map, problems),
        };
    }

    /// <summary>The region that a map names; "" when it names none, with an error when it must or when the region is unknown.</summary>
    public static string ReadRegion(MapReader map, bool isRequired, DiagnosticList problems)
    {
        if ((isRequired ? map.RequiredText("region") : map.Text("region")) is not { } region) return "";
        if (Catalogues.Regions.Contains(region)) return region;
        problems.Error(
            map.PlaceOf("region"),
            $"unknown region {KnownNames.Quote(region)}",
            KnownNames.Help(region, Catalogues.Regions, "regions"));
        return "";
    }

    private static PlanningParameters ReadParameters(MapReader home, DiagnosticList problems)
    {
        PlanningParameters defaults = new() { NorthDegrees = home.Number("north", NorthDegrees) ?? 0 };
        if (home.Find("model") is not { } node) return defaults;
        if (MapReader.Open(node, "the model", problems, "exponent", "detour", "shadowing", "availability", "fading", "k") is not { } map) return defaults;
        Fading fading = ReadFading(map, problems);
        return defaults with
        {
            Exponent = map.Number("exponent", LogDistance.Exponent) ?? defaults.Exponent,
            Detour = map.Number("detour", Detour.ExtraDb) is { } detourDb ? new(detourDb) : defaults.Detour,
            Shadowing = map.Number("shadowing", FadingMargin.ShadowingDb) is { } shadowingDb ? new(shadowingDb) : defaults.Shadowing,
            Availability = map.Number("availability", FadingMargin.Availability) ?? defaults.Availability,
            Fading = fading,
            SteadyToScattered = map.Number("k", FadingMargin.SteadyToScatteredDb) is { } k ? new(k) : defaults.SteadyToScattered,
        };
    }

    private static Fading ReadFading(MapReader map, DiagnosticList problems)
    {
        string? word = map.Text("fading");
        Fading fading = default;
        if (word is not null && !Fadings.TryGetValue(word, out fading))
            problems.Error(map.PlaceOf("fading"), $"unknown fading {KnownNames.Quote(word)}", KnownNames.Help(word, [.. Fadings.Keys], "kinds of fading"));
        else if (map.Has("k") && fading != Fading.Rician)
            problems.Error(map.PlaceOf("k"), "\"k\" belongs to Rician fading", "write \"fading: rician\" or leave \"k\" out");
        return fading;
    }

    private static ImmutableArray<StoreyDocument> ReadStoreys(
        MapReader home,
        double northDegrees,
        ConstructionReader constructions,
        DescribedPlaces places,
        DiagnosticList problems)
    {
        if (home.Require("storeys") is null) return [];
        ImmutableArray<StoreyDocument>.Builder storeys = ImmutableArray.CreateBuilder<StoreyDocument>();
        ImmutableArray<YamlNode> nodes = home.List("storeys");
        if (nodes.IsEmpty && home.Find("storeys") is YamlList or YamlText { IsEmpty: true })
            problems.Error(home.PlaceOf("storeys"), "the home has no storey", "list at least one under \"storeys:\"");

        foreach (YamlNode node in nodes)
        {
            StoreyDocument? below = storeys.Count == 0 ? null : storeys[^1];
            if (StoreyReader.Read(node, below, northDegrees, constructions, places, problems) is not { } storey) continue;
            if (storey.Description.ElevationMetres + storey.Description.CeilingMetres > Lattice.CoordinateMetres.Max)
            {
                problems.Error(
                    storey.Place,
                    FormattableString.Invariant($"this storey ends more than {Lattice.CoordinateMetres.Max} m above the lowest floor"),
                    "a home is lower");
                break;
            }

            storeys.Add(storey);
        }

        UniqueNames.Check(storeys.Select(storey => new PlacedName(storey.Description.Name.Value, storey.Place)), "storey", problems);
        UniqueNames.Check(storeys.SelectMany(storey => storey.RoomNames), "room", problems);
        UniqueNames.Check(storeys.SelectMany(storey => storey.OpeningNames), "opening", problems);
        return storeys.ToImmutable();
    }
}
