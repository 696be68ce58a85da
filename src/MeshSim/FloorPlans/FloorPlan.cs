using System.Collections.Immutable;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.FloorPlans;

/// <summary>The building: its storeys, lowest first. Heights of devices are above the floor of their storey.</summary>
/// <param name="Storeys">Lowest first; at least one.</param>
public sealed record FloorPlan(ImmutableArray<Storey> Storeys)
{
    /// <summary>The storey of that name, or null.</summary>
    public Storey? FindStorey(StoreyName name) => Storeys.FirstOrDefault(storey => storey.Name == name);

    /// <summary>The storey of that name.</summary>
    /// <exception cref="ArgumentException">No storey has that name.</exception>
    public Storey Storey(StoreyName name) => FindStorey(name) ?? throw new ArgumentException($"no storey is called \"{name}\"", nameof(name));

    /// <summary>The place in the building of a point on a storey.</summary>
    /// <param name="storey">A storey of this plan.</param>
    /// <param name="point">Place on the plan.</param>
    /// <param name="heightMetres">Above that storey's floor, m.</param>
    public Position PositionOf(StoreyName storey, PlanPoint point, double heightMetres) =>
        new(point, Lattice.FromMetres(Storey(storey).ElevationMetres + heightMetres));

    /// <summary>
    /// The heights between which a storey's walls stand, lattice steps above the lowest floor, the upper one not included: from
    /// the middle of the floor structure below to the middle of the one above; from the floor of the lowest storey, to the
    /// ceiling of the highest.
    /// </summary>
    /// <param name="storey">A storey of this plan.</param>
    public (int Low, int High) ExtentOf(Storey storey)
    {
        int low = MiddleOfStructureBelow(storey);
        return (low, StoreyAbove(storey) is { } above ? MiddleOfStructureBelow(above) : Lattice.FromMetres(storey.ElevationMetres + storey.CeilingMetres));
    }

    /// <summary>
    /// The rooms above and below the floor structure under a storey. It spans all of them: over a room that has none above, it
    /// stands for the roof. Empty when one of the two storeys is given as walls alone; the structure is then everywhere.
    /// </summary>
    /// <param name="storey">A storey of this plan, not the lowest.</param>
    public ImmutableArray<Room> SpannedBy(Storey storey)
    {
        Storey below = Storeys[IndexOf(storey) - 1];
        return storey.Rooms.IsEmpty || below.Rooms.IsEmpty ? [] : [.. storey.Rooms, .. below.Rooms];
    }

    /// <summary>The same building with some doors and windows standing open; the others stay as they are.</summary>
    /// <param name="openings">Names of openings of this plan.</param>
    /// <exception cref="ArgumentException">No opening has one of the names.</exception>
    public FloorPlan WithOpen(IEnumerable<string> openings)
    {
        var open = openings.ToHashSet();
        if (open.Count == 0) return this;

        var known = Storeys.SelectMany(storey => storey.Walls).SelectMany(wall => wall.Openings).Select(opening => opening.Name).ToHashSet();
        if (open.FirstOrDefault(name => !known.Contains(name)) is { } unknown)
            throw new ArgumentException($"no door or window is called \"{unknown}\"", nameof(openings));
        return new([.. Storeys.Select(storey => storey with { Walls = [.. storey.Walls.Select(wall => Opened(wall, open))] })]);
    }

    private int IndexOf(Storey storey)
    {
        for (int i = 0; i < Storeys.Length; i++)
            if (Storeys[i].Name == storey.Name) return i;
        throw new ArgumentException($"no storey is called \"{storey.Name}\"", nameof(storey));
    }

    private Storey? StoreyAbove(Storey storey) => IndexOf(storey) + 1 is var above && above < Storeys.Length ? Storeys[above] : null;

    private static int MiddleOfStructureBelow(Storey storey) =>
        Lattice.FromMetres(storey.ElevationMetres - ((storey.Floor?.ThicknessMetres ?? 0) / 2));

    private static Wall Opened(Wall wall, HashSet<string> open) => wall with
    {
        Openings = [.. wall.Openings.Select(opening => open.Contains(opening.Name) ? opening with { IsOpen = true } : opening)],
    };
}
