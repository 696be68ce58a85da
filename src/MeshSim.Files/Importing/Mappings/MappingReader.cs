using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Homes;
using MeshSim.Files.Sources;
using MeshSim.Files.Tables;
using MeshSim.Files.Yaml;
using MeshSim.FloorPlans;
using MeshSim.Materials;
using MeshSim.Quantities;

namespace MeshSim.Files.Importing.Mappings;

/// <summary>Reads a mapping file.</summary>
internal sealed class MappingReader
{
    /// <summary>How meanings are written.</summary>
    public static readonly ImmutableSortedDictionary<string, Meaning> Meanings = new Dictionary<string, Meaning>
    {
        ["nothing"] = Meaning.Nothing,
        ["wall"] = Meaning.Wall,
        ["room"] = Meaning.Room,
        ["room name"] = Meaning.RoomName,
        ["door"] = Meaning.Door,
        ["window"] = Meaning.Window,
        ["object"] = Meaning.Object,
        ["stairwell"] = Meaning.Stairwell,
        ["device"] = Meaning.Device,
        ["outlet"] = Meaning.Outlet,
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    private static readonly string[] Selectors = ["layer", "class", "id"];
    private static readonly ValidRange ThicknessMetres = new(0, 2, "m");

    private readonly ConstructionReader constructions;
    private readonly DiagnosticList problems;

    private MappingReader(ConstructionReader constructions, DiagnosticList problems) => (this.constructions, this.problems) = (constructions, problems);

    /// <summary>Reads a mapping; null with an error when nothing can be made of the file.</summary>
    public static ImportMapping? Read(SourceFile file, DiagnosticList problems)
    {
        if (YamlTree.Parse(file, problems) is not { } root) return null;
        MapReader? map = MapReader.Open(
            root, "a mapping", problems, "home", "region", "north", "length", "scale", "storeys", "take", "networks", "constructions");
        if (map is null) return null;

        ConstructionReader known = ConstructionReader.Read(map, problems);
        MappingReader reader = new(known, problems);
        return new()
        {
            Home = map.Text("home"),
            Region = HomeFileReader.ReadRegion(map, isRequired: false, problems) is { Length: > 0 } region ? region : null,
            NorthDegrees = map.Number("north", HomeFileReader.NorthDegrees) ?? 0,
            Length = reader.ReadLength(map),
            Ratio = map.Number("scale", ImportOptions.AcceptedRatio),
            Storeys = [.. map.List("storeys").Select(reader.ReadStorey).OfType<StoreyRule>()],
            Rules = [.. map.List("take").Select(reader.ReadRule).OfType<TakeRule>()],
            Networks = map.Has("networks") ? NetworkReader.Read(map, problems) : [],
            Constructions = known.Known,
        };
    }

    private static string[] KeysFor(Meaning meaning) => meaning switch
    {
        Meaning.Wall => ["is", "by thickness", "drawn as", "thickest"],
        Meaning.Door or Meaning.Window => ["is", "sill", "height", "open"],
        Meaning.Object => ["is", "base", "height"],
        Meaning.Device => ["network", "power", "kind", "height", "mounting", "circuit", "switched by"],
        Meaning.Outlet => ["height", "circuit"],
        _ => [],
    };

    private StatedLength? ReadLength(MapReader map)
    {
        if (map.Find("length") is not { } node) return null;
        MapReader? length = MapReader.Open(node, "a length", problems, "id", "metres");
        string? id = length?.RequiredText("id");
        double? metres = length?.RequiredNumber("metres", ImportOptions.AcceptedLengthMetres);
        return id is not null && metres is { } known ? new(id, known) : null;
    }

    private StoreyRule? ReadStorey(YamlNode node)
    {
        MapReader? map = MapReader.Open(node, "a storey", problems, "storey", "layer", "ceiling", "floor", "structure", "outer", "inner", "anchor");
        if (map?.RequiredText("storey") is not { } name) return null;
        return new()
        {
            Place = map.PlaceOf("storey"),
            Name = name,
            Layer = map.Text("layer"),
            CeilingMetres = map.Number("ceiling", StoreyReader.CeilingMetres),
            Floor = constructions.Find(map, "floor", ConstructionUse.Floor, isRequired: false),
            StructureMetres = map.Number("structure", StoreyReader.StructureMetres),
            Outer = constructions.Find(map, "outer", ConstructionUse.Wall, isRequired: false),
            Inner = constructions.Find(map, "inner", ConstructionUse.Wall, isRequired: false),
            Anchor = map.Text("anchor"),
        };
    }

    private TakeRule? ReadRule(YamlNode node)
    {
        if (MeaningOf(node) is not { } meaning) return null;
        MapReader? map = MapReader.Open(node, "a rule for this", problems, [.. Selectors, "as", .. KeysFor(meaning)]);
        if (map is null) return null;
        if (!Selectors.Any(map.Has))
            problems.Error(map.Place, "the rule does not say which shapes it is for", "name a layer, a class or an id");

        TakeRule rule = new()
        {
            Place = map.Place,
            Meaning = meaning,
            Layer = map.Text("layer"),
            Class = map.Text("class"),
            Id = map.Text("id"),
            Construction = ConstructionOf(map, meaning),
            HeightMetres = map.Number("height", meaning is Meaning.Device or Meaning.Outlet ? OpeningRanges.SillMetres : OpeningRanges.HeightMetres),
            SillMetres = map.Number("sill", OpeningRanges.SillMetres) ?? map.Number("base", OpeningRanges.SillMetres),
        };
        return meaning switch
        {
            Meaning.Wall => rule with
            {
                AreFaces = FacesOf(map),
                ByThickness = ThicknessesOf(map),
                ThickestMetres = map.Number("thickest", ThicknessMetres) ?? TakeRule.DefaultThickestMetres,
            },
            Meaning.Door or Meaning.Window => rule with { IsOpen = map.Flag("open") },
            Meaning.Device or Meaning.Outlet => WithSupply(rule, map),
            _ => rule,
        };
    }

    private Meaning? MeaningOf(YamlNode node)
    {
        if ((node as YamlMap)?.Find("as")?.Value is YamlText { IsEmpty: false } text)
        {
            if (Meanings.TryGetValue(text.Text, out Meaning meaning)) return meaning;
            problems.Error(text.Place, $"a shape cannot be taken as {KnownNames.Quote(text.Text)}", KnownNames.Help(text.Text, [.. Meanings.Keys], "meanings"));
        }
        else
        {
            problems.Error(node.Place, "the rule does not say what its shapes are taken as", "write { layer: name, as: wall, is: construction }");
        }

        return null;
    }

    private ConstructionName? ConstructionOf(MapReader map, Meaning meaning) => meaning switch
    {
        Meaning.Wall => constructions.Find(map, "is", ConstructionUse.Wall, isRequired: !map.Has("by thickness")),
        Meaning.Door => constructions.Find(map, "is", ConstructionUse.Door, isRequired: true),
        Meaning.Window => constructions.Find(map, "is", ConstructionUse.Window, isRequired: true),
        Meaning.Object => constructions.Find(map, "is", ConstructionUse.Object, isRequired: true),
        _ => null,
    };

    private bool? FacesOf(MapReader map)
    {
        switch (map.Text("drawn as"))
        {
            case null: return map.Has("by thickness") ? true : null;
            case "faces": return true;
            case "centre line": return false;
            case var other:
                problems.Error(map.PlaceOf("drawn as"), $"walls are not drawn as {KnownNames.Quote(other)}", "write \"faces\" or \"centre line\"");
                return null;
        }
    }

    private ImmutableArray<(double, ConstructionName)> ThicknessesOf(MapReader map)
    {
        if (map.Find("by thickness") is not { } node) return [];
        if (node is not YamlMap { Entries.Length: > 0 } table)
        {
            problems.Error(node.Place, "thicknesses are written as metres and constructions", "write { 0: stud-partition, 0.2: cavity-brick }");
            return [];
        }

        List<(double, ConstructionName)> all = [];
        MapReader thicknesses = MapReader.Open(node, "a list of thicknesses", problems, [.. table.Entries.Select(entry => entry.Key)])!;
        foreach (YamlEntry entry in table.Entries)
        {
            double? metres = map.NumberOf(new YamlText(entry.Place, entry.Key, IsEmpty: false), "the least thickness", ThicknessMetres);
            if (constructions.Find(thicknesses, entry.Key, ConstructionUse.Wall, isRequired: true) is { } name && metres is { } least) all.Add((least, name));
        }

        return [.. all.OrderBy(one => one.Item1)];
    }

    private TakeRule WithSupply(TakeRule rule, MapReader map)
    {
        string? power = map.Text("power"), mounting = map.Text("mounting");
        if (power is not null && !DeviceTable.PowerWords.ContainsKey(power))
            problems.Error(map.PlaceOf("power"), $"unknown word {KnownNames.Quote(power)}", KnownNames.Help(power, [.. DeviceTable.PowerWords.Keys], "words"));
        if (mounting is not null && !Catalogues.Mountings.Any(known => known.Name == mounting))
        {
            problems.Error(
                map.PlaceOf("mounting"),
                $"no mounting is called {KnownNames.Quote(mounting)}",
                KnownNames.Help(mounting, [.. Catalogues.Mountings.Select(known => known.Name)], "mountings"));
        }

        return rule with
        {
            Network = map.Text("network"),
            Power = power is not null && DeviceTable.PowerWords.TryGetValue(power, out PowerSource source) ? source : null,
            Kind = map.Text("kind") ?? "",
            Mounting = mounting,
            Circuit = map.Text("circuit"),
            SwitchedBy = map.Text("switched by"),
        };
    }
}
