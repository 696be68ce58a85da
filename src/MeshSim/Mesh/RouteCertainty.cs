using MeshSim.Devices;

namespace MeshSim.Mesh;

/// <summary>How sure a route is.</summary>
/// <param name="Weakest">Its link of least margin.</param>
/// <param name="Holds">
/// The probability that each of its links meets what its receiver needs, as if links went wrong independently. They share walls of
/// one kind and devices, so all hold together rather more often than this.
/// </param>
public readonly record struct RouteCertainty(Link Weakest, double Holds)
{
    /// <summary>How sure a route over some links is.</summary>
    /// <param name="links">Links among which those of the route are.</param>
    /// <param name="route">The route.</param>
    /// <exception cref="ArgumentException">A link of the route is not among them.</exception>
    public static RouteCertainty Of(IEnumerable<Link> links, Route route)
    {
        ArgumentNullException.ThrowIfNull(links);
        ArgumentNullException.ThrowIfNull(route);

        HashSet<(DeviceId, DeviceId)> steps = [.. route.Path.Zip(route.Path.Skip(1))];
        Link[] used = [.. links.Where(link => steps.Contains((link.From, link.To)) || steps.Contains((link.To, link.From)))];
        return used.Length == route.Hops
            ? new(used.MinBy(link => link.Margin.Value)!, used.Aggregate(1.0, (all, link) => all * link.Holds))
            : throw new ArgumentException("a link of the route is not among the links", nameof(links));
    }
}
