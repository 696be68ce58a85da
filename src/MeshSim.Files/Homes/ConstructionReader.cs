using System.Collections.Immutable;
using MeshSim.Files.Datasets;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Yaml;
using MeshSim.FloorPlans;
using MeshSim.Materials;
using MeshSim.Quantities;

namespace MeshSim.Files.Homes;

/// <summary>The constructions that one home may name: those of the catalogue and those that it defines.</summary>
internal sealed class ConstructionReader
{
    /// <summary>Spread of a construction that states none: assumed, that of a wall of doubtful build-up in the catalogue.</summary>
    public static readonly Decibels AssumedSpread = new(3);

    private readonly DiagnosticList problems;
    private readonly ImmutableDictionary<ConstructionName, Construction>.Builder known = Catalogues.ConstructionsByName.ToBuilder();

    // Names in the order in which they are suggested, with what they are for; a definition that could not be read counts as known here.
    private readonly List<(string Name, ConstructionUse Use)> names =
        [.. Catalogues.Constructions.Select(construction => (construction.Name.Value, construction.Use))];

    private ConstructionReader(DiagnosticList problems) => this.problems = problems;

    /// <summary>All that may be named.</summary>
    public ImmutableDictionary<ConstructionName, Construction> Known => known.ToImmutable();

    /// <summary>Reads the home's own constructions.</summary>
    public static ConstructionReader Read(MapReader home, DiagnosticList problems)
    {
        ConstructionReader reader = new(problems);
        foreach (YamlNode node in home.List("constructions")) reader.ReadOne(node);
        return reader;
    }

    /// <summary>The construction that a key names; null when it names none, with an error when it must or when the name is unknown.</summary>
    /// <param name="map">What holds the key.</param>
    /// <param name="key">The key.</param>
    /// <param name="use">What is built of it: only such constructions are suggested, but any is taken.</param>
    /// <param name="isRequired">Whether the key must be there.</param>
    public ConstructionName? Find(MapReader map, string key, ConstructionUse use, bool isRequired)
    {
        string? name = isRequired ? map.RequiredText(key) : map.Text(key);
        if (name is null) return null;
        if (IsKnown(name)) return new ConstructionName(name);
        problems.Error(map.PlaceOf(key), $"no construction is called {KnownNames.Quote(name)}", () => HelpFor(name, use));
        return null;
    }

    private bool IsKnown(string name) => names.Exists(known => known.Name == name);

    private string HelpFor(string name, ConstructionUse use)
    {
        // A roof is listed as a floor and stands as the wall of a loft.
        string[] fitting =
            [.. names.Where(known => known.Use == use || (use == ConstructionUse.Wall && known.Use == ConstructionUse.Floor)).Select(known => known.Name)];
        return KnownNames.Help(name, fitting, "constructions that fit here") + " (meshsim loss --list shows all)";
    }

    private void ReadOne(YamlNode node)
    {
        MapReader? map = MapReader.Open(node, "a construction", problems, "construction", "use", "layers", "stated", "spread", "description", "source");
        if (map?.RequiredText("construction") is not { } name) return;
        if (IsKnown(name))
        {
            problems.Error(
                map.PlaceOf("construction"),
                $"there is already a construction called {KnownNames.Quote(name)}",
                "give it a name that neither the catalogue nor this list has");
            return;
        }

        ConstructionUse use = UseOf(map);
        names.Add((name, use));
        if (map.Has("layers") == map.Has("stated"))
        {
            problems.Error(
                map.Place,
                "a construction has either layers or stated losses",
                "write \"layers: material:mm, material:mm\" or \"stated: {868.4: 5}\"");
            return;
        }

        Construction construction = new()
        {
            Name = new(name),
            Description = map.Text("description") ?? name,
            Use = use,
            Layers = map.Has("layers") ? LayersOf(map) : [],
            Stated = map.Has("stated") ? StatedOf(map) : [],
            Spread = map.Number("spread", ConstructionRows.SpreadDb) is { } spreadDb ? new(spreadDb) : AssumedSpread,
            Source = map.Text("source") ?? "stated by the home",
        };
        known[construction.Name] = construction;
    }

    private ConstructionUse UseOf(MapReader map)
    {
        if (map.Text("use") is not { } use) return ConstructionUse.Wall;
        if (ConstructionRows.Uses.TryGetValue(use, out ConstructionUse found)) return found;
        problems.Error(
            map.PlaceOf("use"),
            $"unknown use {KnownNames.Quote(use)}",
            KnownNames.Help(use, [.. ConstructionRows.Uses.Keys], "uses"));
        return ConstructionUse.Wall;
    }

    private ImmutableArray<Layer> LayersOf(MapReader map)
    {
        if (map.Text("layers") is not { } text) return [];
        ParsedLayers parsed = LayerText.Parse(text, Catalogues.FindMaterial);
        foreach (LayerProblem problem in parsed.Problems)
        {
            string help = problem.Kind == LayerProblemKind.UnknownMaterial
                ? KnownNames.Help(problem.Text, Catalogues.MaterialNames, "materials")
                : ""; // The message says it already.
            problems.Error(map.PlaceOf("layers"), problem.Message, help);
        }

        return parsed.Layers;
    }

    private ImmutableArray<StatedLoss> StatedOf(MapReader map)
    {
        if (map.Find("stated") is not YamlMap { Entries.Length: > 0 } stated)
        {
            problems.Error(
                map.PlaceOf("stated"),
                "stated losses are written as megahertz and decibels",
                "write {433.92: 3, 868.4: 4, 2440: 8}");
            return [];
        }

        ImmutableArray<StatedLoss>.Builder losses = ImmutableArray.CreateBuilder<StatedLoss>();
        foreach (YamlEntry entry in stated.Entries)
        {
            double? megahertz = map.NumberOf(new YamlText(entry.Place, entry.Key, IsEmpty: false), "the frequency", ConstructionRows.StatedMegahertz);
            double? lossDb = map.NumberOf(entry.Value, "the loss", ConstructionRows.LossDb);
            if (megahertz is null || lossDb is null) continue;
            if (losses.Any(loss => loss.Frequency.Megahertz == megahertz))
                problems.Error(entry.Place, $"the loss at {NumberText.Of(megahertz.Value)} MHz is stated twice", "keep one");
            losses.Add(new(new(megahertz.Value), new(lossDb.Value)));
        }

        return [.. losses.OrderBy(loss => loss.Frequency)];
    }
}
