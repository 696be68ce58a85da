using System.Collections.Immutable;
using MeshSim.Drawing.Margins;
using MeshSim.Drawing.Sheets;
using MeshSim.FloorPlans;
using MeshSim.Propagation.Fields;
using MeshSim.Studies.Sites;

namespace MeshSim.Drawing.Zones;

/// <summary>A zone on one storey of the sheet.</summary>
/// <param name="Number">The number of its site.</param>
/// <param name="Name">What it is called on the map.</param>
/// <param name="Inside">Above 0 in the zone, below 0 elsewhere, between −1 and 1: the line at 0 is its edge.</param>
/// <param name="Edges">Its edges on the sheet, each closed.</param>
/// <param name="Patches">The pieces of it that hang together, the largest first.</param>
internal sealed record ZoneShape(int Number, string Name, Field Inside, ImmutableArray<Pixel[]> Edges, ImmutableArray<ZonePatch> Patches)
{
    /// <summary>The zone of a site on a storey; nothing where it has no part there.</summary>
    public static IEnumerable<ZoneShape> On(Storey storey, int number, SiteZone zone, bool isHub, Projection projection)
    {
        Field? spare = zone.Spare.FirstOrDefault(field => field.Grid.Storey == storey.Name);
        if (spare is null || !spare.Values.Any(value => value >= 0)) yield break;

        // Cut off at 1 dB either side, so that the edge at a wall lies half-way between the last point inside and the first outside.
        Field inside = new(spare.Grid, [.. spare.Values.Select(value => float.IsNaN(value) ? -1 : value >= 0 ? Math.Clamp(value, 0.01f, 1) : Math.Clamp(value, -1, -0.01f))]);
        yield return new(
            number,
            isHub ? "zone of the hub" : FormattableString.Invariant($"zone {number}"),
            inside,
            [.. ContourTracer.Trace(inside, 0).Select(edge => edge.Points.Select(projection.ToPixel).ToArray())],
            ZonePatch.Of(inside, projection));
    }
}
