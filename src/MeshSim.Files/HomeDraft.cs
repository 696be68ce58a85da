using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files.Diagnostics;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Files;

/// <summary>A diagnostic and where on the plan it belongs.</summary>
/// <param name="Diagnostic">What is to be said.</param>
/// <param name="Storey">The storey; null where it is about nothing on the plan, or about what could not be placed.</param>
/// <param name="Point">The point; null likewise.</param>
public sealed record PlacedDiagnostic(Diagnostic Diagnostic, StoreyName? Storey, PlanPoint? Point);

/// <summary>A room whose outline was read but could not be built.</summary>
/// <param name="Storey">Its storey.</param>
/// <param name="Name">Its name.</param>
/// <param name="Corners">Its corners as written.</param>
public sealed record UnbuiltRoom(StoreyName Storey, RoomName Name, ImmutableArray<PlanPoint> Corners);

/// <summary>As much of a home folder as could be placed on a plan, whatever is wrong with it: to be looked at, not to be computed with.</summary>
public sealed record HomeDraft
{
    /// <summary>Storeys, devices and listed outlets that could be read. Networks, states and all else are missing.</summary>
    public required Home Home { get; init; }

    /// <summary>Rooms that could not be built.</summary>
    public required ImmutableArray<UnbuiltRoom> Unbuilt { get; init; }

    /// <summary>Every problem, then every notice, with its place on the plan.</summary>
    public required ImmutableArray<PlacedDiagnostic> Diagnostics { get; init; }
}
