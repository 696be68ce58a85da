using System.Globalization;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Files.Tests.Fixtures;

/// <summary>What a home means, line by line: independent of which end a wall starts at and of digits that no tape measure shows.</summary>
internal static class Meaning
{
    public static IEnumerable<string> Of(Home home) =>
    [
        FormattableString.Invariant($"{home.Name} {home.Region} {home.Parameters} {home.Costs}"),
        .. home.FloorPlan.Storeys.SelectMany(Of),
        .. home.Constructions.Values.OrderBy(item => item.Name.Value, StringComparer.Ordinal).Select(item =>
            string.Create(
                CultureInfo.InvariantCulture,
                $"{item.Name} {item.Use} {item.Spread} {item.Description} {item.Source} "
                    + $"{string.Join(' ', item.Layers.Select(layer => FormattableString.Invariant($"{layer.Material.Name}:{layer.ThicknessMetres:0.######}")))} "
                    + $"{string.Join(' ', item.Stated)}")),
        .. home.Networks.Select(network => network.ToString()),
        .. home.Devices.Select(device => device.ToString()),
        .. home.Outlets.Select(outlet => outlet.ToString()),
        .. home.AccessPoints.Select(point => point.ToString()),
        .. home.Circuits.Select(circuit => circuit.ToString()),
        .. home.States.Select(
            state =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{state.Name} off {string.Join('|', state.DevicesOff)} {string.Join('|', state.CircuitsOff)} {string.Join('|', state.SwitchesOff)} open "
                        + $"{string.Join('|', state.Open)} {state.MustHold}")),
        .. home.Readings.Select(reading => reading.ToString()),
    ];

    private static IEnumerable<string> Of(Storey storey) =>
    [
        FormattableString.Invariant($"{storey.Name} at {storey.ElevationMetres:0.######} up to {storey.CeilingMetres} floor {storey.Floor?.Construction} {storey.Floor?.ThicknessMetres}"),
        .. (storey.Floor?.Stairwells ?? []).Select(stairwell => Of(stairwell.Outline)),
        .. storey.Rooms.Select(room => $"{room.Name} {Of(room.Outline)}"),
        .. storey.Walls.Select(Of).Order(StringComparer.Ordinal),
        .. storey.Objects.Select(item => FormattableString.Invariant($"{item.Name} {item.Construction} {item.BaseMetres} {item.HeightMetres} {Of(item.Footprint)}")),
    ];

    private static string Of(Wall wall)
    {
        bool isForward = wall.Start.X != wall.End.X ? wall.Start.X < wall.End.X : wall.Start.Y < wall.End.Y;
        IEnumerable<string> openings = wall.Openings.Select(opening => (From: isForward ? opening.OffsetMetres : wall.LengthMetres - opening.OffsetMetres - opening.WidthMetres, opening))
            .OrderBy(item => item.From)
            .Select(
                item =>
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{item.opening.Name} {item.opening.Kind} {item.From:0.#####} {item.opening.WidthMetres} {item.opening.SillMetres} "
                            + $"{item.opening.HeightMetres} {item.opening.Construction} {item.opening.IsOpen}"));
        (PlanPoint first, PlanPoint last) = isForward ? (wall.Start, wall.End) : (wall.End, wall.Start);
        return $"{first} {last} {wall.Name} {wall.Construction} {string.Join('|', wall.Rooms.Select(room => room.Value).Order(StringComparer.Ordinal))} {string.Join('|', openings)}";
    }

    private static string Of(Polygon outline) => string.Join(' ', outline.Corners);
}
