using System.Reflection;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation;
using MeshSim.Propagation.Fields;
using MeshSim.Studies;
using MeshSim.Studies.Changes;

namespace MeshSim.Drawing.Legends;

/// <summary>What a sheet says above and below the map.</summary>
/// <param name="Title">Which home, network and storey.</param>
/// <param name="Subtitle">What is drawn.</param>
/// <param name="Provenance">What made it, without a date, so that equal input gives equal sheets.</param>
internal sealed record SheetWords(string Title, string Subtitle, string Provenance)
{
    /// <summary>The words of a margin map.</summary>
    public static SheetWords Of(NetworkCoverage coverage, MarginMap map, Storey storey)
    {
        Network network = coverage.Network;
        return new(
            $"{coverage.Home.Name}: network {map.Network}, storey {map.Storey}",
            $"Margin of a {Receiver(map.Margin.Grid, storey)}, {network.Carrier}, model {ModelNames.Of(coverage.Model)}",
            ProvenanceOf(coverage, FormattableString.Invariant($"{network.Radio.Name} channel {network.Channel}"), map.Margin.Grid));
    }

    /// <summary>The words of a sheet with several storeys.</summary>
    public static SheetWords Of(NetworkCoverage coverage, IReadOnlyList<MarginMap> maps, Storey lowest)
    {
        string names = string.Join(", ", maps.Select(map => map.Storey.Value));
        return Of(coverage, maps[0], lowest) with { Title = $"{coverage.Home.Name}: network {coverage.Network.Name}, {(maps.Count == 1 ? "storey" : "storeys")} {names}" };
    }

    /// <summary>The words of a map of sites.</summary>
    public static SheetWords Of(NetworkCoverage coverage, SitePlan plan, StoreyName storey, FieldGrid grid)
    {
        Network network = coverage.Network;
        return new(
            $"{coverage.Home.Name}: {plan.Title}, storey {storey}",
            FormattableString.Invariant($"Hatched: where a site does as well; design margin {coverage.DesignMargin}, model {ModelNames.Of(coverage.Model)}"),
            ProvenanceOf(coverage, FormattableString.Invariant($"{network.Radio.Name} channel {network.Channel}"), grid));
    }

    /// <summary>The words of a map of the difference between two networks.</summary>
    public static SheetWords Of(BandComparison bands, BandMap map, Storey storey)
    {
        (Network first, Network second) = (bands.First.Network, bands.Second.Network);
        return new(
            $"{bands.First.Home.Name}: {first.Name} against {second.Name}, storey {map.Storey}",
            $"Margin at {first.Carrier} less margin at {second.Carrier}, {Receiver(map.First.Grid, storey)}, model {ModelNames.Of(bands.First.Model)}",
            ProvenanceOf(bands.First, FormattableString.Invariant($"{first.Radio.Name} channel {first.Channel} against {second.Radio.Name} channel {second.Channel}"), map.First.Grid));
    }

    /// <summary>The words of a map of the difference between a home before and after.</summary>
    public static SheetWords Of(NetworkChanges changes, MarginChange map, Storey storey)
    {
        NetworkCoverage after = changes.After.Coverage;
        Network network = after.Network;
        return new(
            $"{after.Home.Name}: network {network.Name}, storey {map.Storey}, after less before",
            $"Margin after the changes less margin before, {Receiver(map.After.Grid, storey)}, {network.Carrier}, model {ModelNames.Of(after.Model)}",
            ProvenanceOf(after, FormattableString.Invariant($"{network.Radio.Name} channel {network.Channel}"), map.After.Grid));
    }

    private static string Receiver(FieldGrid grid, Storey storey) =>
        FormattableString.Invariant($"battery device {Lattice.ToMetres(grid.Z) - storey.ElevationMetres:0.##} m above the floor");

    private static string ProvenanceOf(NetworkCoverage coverage, string radios, FieldGrid grid)
    {
        string state = coverage.State is { } named ? $"state {named.Name}" : "everything on, doors closed";
        Version version = Assembly.GetExecutingAssembly().GetName().Version ?? new Version();
        return FormattableString.Invariant($"MeshSim {version.ToString(3)}, {radios}, {state}, grid {Lattice.ToMetres(grid.Step):0.###} m");
    }
}
