using System.Collections.Immutable;
using MeshSim.Mesh.Outages;
using MeshSim.Studies;

namespace MeshSim.Cli.Json;

/// <summary>Why a room is dark, as JSON.</summary>
internal sealed record RoomExplanationJson(
    NetworkCoverage Coverage,
    string Room,
    string Storey,
    RoomStandingJson Now,
    BudgetJson? Budget,
    ImmutableArray<DarkenedJson> DarkerWhen,
    ImmutableArray<DarkElsewhereJson> Elsewhere,
    int Tried,
    ImmutableArray<RoomFixJson> Fixes)
    : NetworkHeadJson(Coverage)
{
    /// <summary>The record of an answer.</summary>
    public static RoomExplanationJson Of(RoomExplanation answer) => new(
        answer.Coverage,
        answer.Room.Name.Value,
        answer.Storey.Value,
        RoomStandingJson.Of(answer.Now),
        answer.Budget is { } budget ? BudgetJson.Of(budget) : null,
        [.. answer.Darkened.Select(entry => new DarkenedJson(entry.Outage.Kind, entry.Outage.Name, entry.DarkShare))],
        [.. answer.Elsewhere.Select(other => new DarkElsewhereJson(other.Network.Name.Value, other.Network.Carrier.Megahertz, other.DarkShare))],
        answer.Tried,
        [.. answer.Fixes.Select(fix => new RoomFixJson(FixJson.Of(fix.Fix), fix.LeftWithOneWay, RoomStandingJson.Of(fix.After)))]);
}

/// <summary>How a room stands.</summary>
internal sealed record RoomStandingJson(double DarkShare, double WorstMarginDb, double WorstXMetres, double WorstYMetres)
{
    /// <summary>The record of a standing.</summary>
    public static RoomStandingJson Of(RoomStanding standing) =>
        new(standing.DarkShare, standing.Worst.Value, standing.WorstPlace.XMetres, standing.WorstPlace.YMetres);
}

/// <summary>An outage that makes more of a room dark.</summary>
internal sealed record DarkenedJson(OutageKind Kind, string Name, double DarkShare);

/// <summary>How dark a room is in another network.</summary>
internal sealed record DarkElsewhereJson(string Network, double CarrierMegahertz, double DarkShare);

/// <summary>What a fix makes of a room.</summary>
internal sealed record RoomFixJson(FixJson Fix, int LeavesWithOneWay, RoomStandingJson After);
