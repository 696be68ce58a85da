using MeshSim.Files.Diagnostics;
using MeshSim.Files.Importing.Mappings;

namespace MeshSim.Files.Importing;

/// <summary>A shape, or several that draw one thing, with the rule by which they are taken.</summary>
/// <param name="Shape">The shape; of several their lines together.</param>
/// <param name="Rule">The rule.</param>
/// <param name="Name">What the drawing calls it, or null.</param>
internal sealed record TakenShape(DrawnShape Shape, TakeRule Rule, string? Name);

/// <summary>The shapes of one storey.</summary>
/// <param name="Storey">The storey.</param>
internal sealed record SortedShapes(StoreyRule Storey)
{
    /// <summary>What is taken, in the drawing's order.</summary>
    public List<TakenShape> Taken { get; } = [];

    /// <summary>The shapes with a meaning.</summary>
    public IEnumerable<TakenShape> Of(Meaning meaning) => Taken.Where(taken => taken.Rule.Meaning == meaning);

    /// <summary>Sorts the shapes of a drawing into storeys; what no storey and no rule takes is left out.</summary>
    public static List<SortedShapes> Sort(Drawing drawing, ImportMapping mapping, string file, ImportFindings findings)
    {
        RuleBook book = new(mapping, file);
        List<SortedShapes> storeys =
        [
            .. mapping.Storeys.DefaultIfEmpty(new() { Place = SourcePlace.StartOf(file), Name = "ground" }).Select(storey => new SortedShapes(storey)),
        ];
        foreach (DrawnShape shape in drawing.Shapes)
        {
            SortedShapes? storey = storeys.Find(candidate => IsOn(candidate.Storey, shape));
            if (mapping.Storeys.Any(rule => rule.Anchor is { } anchor && anchor == shape.Names.Id)) continue;
            if (storey is null) findings.Leave(shape, "it lies in the layer of no storey");
            else if (book.Find(shape.Names) is not { } match) findings.Leave(shape, "no rule takes it, and neither layer nor class is named for a construction");
            else storey.Add(shape, match, findings);
        }

        return storeys;
    }

    private static bool IsOn(StoreyRule storey, DrawnShape shape) =>
        storey.Layer is null || shape.Names.Layers.Contains(storey.Layer, StringComparer.OrdinalIgnoreCase);

    private void Add(DrawnShape shape, RuleMatch match, ImportFindings findings)
    {
        TakeRule rule = match.Rule;
        bool isText = shape.Text is not null;
        if (rule.Meaning == Meaning.Nothing) findings.Leave(shape, "it is marked as nothing");
        else if (rule.Meaning == Meaning.RoomName && !isText) findings.Leave(shape, "only a text names a room");
        else if (isText && rule.Meaning is not (Meaning.Room or Meaning.RoomName))
            findings.Leave(shape, $"a text is no {MappingReader.Meanings.First(word => word.Value == rule.Meaning).Key}");
        else if (isText) Taken.Add(new(shape, rule with { Meaning = Meaning.RoomName }, shape.Text));
        else if (rule.Meaning is Meaning.Device or Meaning.Outlet or Meaning.Door or Meaning.Window) AddThing(shape, match);
        else Taken.Add(new(shape, rule, shape.OwnName));
    }

    // What lies in one group within the layer draws one thing: a circle and a cross are one lamp, a leaf and an arc one door.
    private void AddThing(DrawnShape shape, RuleMatch match)
    {
        string? group = match.LayerIndex >= 0 ? shape.Names.Layers.ElementAtOrDefault(match.LayerIndex + 1) : null;
        int index = group is null ? -1 : Taken.FindIndex(taken => taken.Rule == match.Rule && taken.Name == group);
        if (index < 0) Taken.Add(new(shape, match.Rule, group ?? shape.OwnName));
        else Taken[index] = Taken[index] with { Shape = Taken[index].Shape with { Lines = [.. Taken[index].Shape.Lines, .. shape.Lines] } };
    }
}
