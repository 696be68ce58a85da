using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Drawing;

/// <summary>Something that is to be said about a place of a home folder.</summary>
/// <param name="Text">What, with its file, line and column.</param>
/// <param name="IsError">Whether the home cannot be used until it is put right.</param>
/// <param name="Storey">The storey that it lies on; null where it is about nothing on the plan.</param>
/// <param name="Point">Where on the plan; null likewise.</param>
public sealed record PlanRemark(string Text, bool IsError, StoreyName? Storey, PlanPoint? Point);

/// <summary>An outline that was read but could not become a room.</summary>
/// <param name="Storey">Its storey.</param>
/// <param name="Name">Its name.</param>
/// <param name="Corners">Its corners as written.</param>
public sealed record PlanOutline(StoreyName Storey, string Name, ImmutableArray<PlanPoint> Corners);

/// <summary>A home as far as it could be read.</summary>
/// <param name="Home">What could be placed; networks may be missing.</param>
/// <param name="Remarks">What is to be said, problems first.</param>
/// <param name="Unbuilt">Outlines that became no rooms.</param>
public sealed record PlanDraft(Home Home, ImmutableArray<PlanRemark> Remarks, ImmutableArray<PlanOutline> Unbuilt);
