using MeshSim.Files.Diagnostics;
using MeshSim.Files.Yaml;
using MeshSim.FloorPlans.Descriptions;

namespace MeshSim.Files.Homes;

/// <summary>Remembers where each element of the floor plan was described, so that the builder's problems get their place.</summary>
internal sealed class DescribedPlaces
{
    private static readonly Dictionary<Aspect, string[]> KeysOfAspects = new()
    {
        [Aspect.Name] = ["storey", "door", "window", "object", "name"],
        [Aspect.Outline] = ["corners", "from", "line"],
        [Aspect.Place] = ["between", "of", "wall", "line"],
        [Aspect.Offset] = ["at"],
        [Aspect.Width] = ["width"],
        [Aspect.Sill] = ["sill", "base"],
        [Aspect.Height] = ["height", "ceiling"],
        [Aspect.Thickness] = ["structure"],
        [Aspect.Outer] = ["outer"],
        [Aspect.Inner] = ["inner"],
    };

    private readonly List<(SourcePlace Place, MapReader Map)> elements = [];

    /// <summary>Remembers an element and gives its key.</summary>
    /// <param name="place">Where it begins.</param>
    /// <param name="map">What describes it.</param>
    public SourceKey Add(SourcePlace place, MapReader map)
    {
        elements.Add((place, map));
        return new(elements.Count - 1);
    }

    /// <summary>From where to where an element is described.</summary>
    public (SourcePlace From, SourcePlace To) RangeOf(SourceKey source)
    {
        (SourcePlace place, MapReader map) = elements[source.Value];
        SourcePlace from = (place.Line, place.Column).CompareTo((map.Place.Line, map.Place.Column)) < 0 ? place : map.Place;
        return (from, map.End);
    }

    /// <summary>The place of what a problem is about: the value of its key, or the element where there is no such key.</summary>
    public SourcePlace Find(SourceKey source, Aspect aspect)
    {
        (SourcePlace place, MapReader map) = elements[source.Value];
        string? key = KeysOfAspects.GetValueOrDefault(aspect, []).FirstOrDefault(map.Has);
        return key is null ? place : map.PlaceOf(key);
    }
}
