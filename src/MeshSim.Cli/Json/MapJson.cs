using System.Collections.Immutable;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation;
using MeshSim.Studies;

namespace MeshSim.Cli.Json;

/// <summary>Where one storey is dark for one network, as JSON.</summary>
internal sealed record MapJson(
    string Home,
    ModelName Model,
    string? State,
    string Network,
    string Storey,
    double DesignMarginDb,
    double StepMetres,
    double HeightMetres,
    string? Picture,
    ImmutableArray<DarkRoomJson> Rooms)
{
    /// <summary>The record of a map.</summary>
    /// <param name="coverage">Whose map.</param>
    /// <param name="map">The map.</param>
    /// <param name="options">What it was drawn with.</param>
    /// <param name="picture">The name of its picture, or null when none was asked for.</param>
    public static MapJson Of(NetworkCoverage coverage, MarginMap map, StudyOptions options, string? picture) => new(
        coverage.Home.Name,
        coverage.Model,
        coverage.State?.Name,
        map.Network.Value,
        map.Storey.Value,
        map.DesignMargin.Value,
        Lattice.ToMetres(map.Margin.Grid.Step),
        options.ProbeHeightMetres,
        picture,
        [.. map.Rooms.Select(room => new DarkRoomJson(room.Room.Value, room.DarkShare))]);
}

/// <summary>How much of a room's floor lies below the design margin, 0 to 1.</summary>
internal sealed record DarkRoomJson(string Room, double DarkShare);
