using System.Collections.Immutable;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.FloorPlans.Descriptions;

/// <summary>Checks objects.</summary>
internal static class ObjectChecks
{
    /// <summary>The sound objects of a description.</summary>
    public static ImmutableArray<BlockingObject> Objects(StoreyDescription description, Findings findings)
    {
        var sound = ImmutableArray.CreateBuilder<BlockingObject>();
        foreach (ObjectDescription described in description.Objects)
            if (ProperObject(described, description, findings) is { } item) sound.Add(item);
        return sound.ToImmutable();
    }

    private static BlockingObject? ProperObject(ObjectDescription described, StoreyDescription description, Findings findings)
    {
        string label = $"\"{described.Name}\"";
        int before = findings.Problems.Count;
        List<PlanPoint>? corners = RoomChecks.ProperOutline(described.Source, label, described.Corners, findings);
        if (corners is not null && !new Polygon([.. corners]).IsConvex)
            findings.Wrong(
                described.Source,
                Aspect.Outline,
                $"the outline of {label} bends inwards",
                $"an outline that bends outwards at every corner; two objects for an L-shaped thing");

        if (!(described.BaseMetres >= 0))
            findings.Wrong(described.Source, Aspect.Sill, $"the underside of {label} lies {described.BaseMetres} m above the floor", $"0 m or more");
        double topMetres = described.BaseMetres + described.HeightMetres;
        if (!(described.HeightMetres > 0))
            findings.Wrong(described.Source, Aspect.Height, $"{label} is {described.HeightMetres} m high", $"more than 0 m");
        else if (description.CeilingMetres > 0 && topMetres > description.CeilingMetres + Lattice.ToMetres(1))
            findings.Wrong(
                described.Source,
                Aspect.Height,
                $"the top of {label} lies {topMetres:0.####} m above the floor, higher than the ceiling",
                $"at most {description.CeilingMetres} m");
        if (findings.Problems.Count > before) return null;

        return new BlockingObject
        {
            Name = described.Name,
            Footprint = new Polygon([.. corners!]),
            BaseMetres = described.BaseMetres,
            HeightMetres = Math.Min(described.HeightMetres, description.CeilingMetres - described.BaseMetres),
            Construction = described.Construction,
        };
    }
}
