using System.Collections.Immutable;

namespace MeshSim.FloorPlans.Descriptions;

/// <summary>Makes a storey of a person's description: walls follow from room edges, exceptions and openings are put in place.</summary>
public static class StoreyBuilder
{
    /// <summary>Builds a storey. What is wrong with the description is data in the answer, all of it at once.</summary>
    public static StoreyBuilt Build(StoreyDescription description)
    {
        ArgumentNullException.ThrowIfNull(description);

        var findings = new Findings();
        CheckHeights(description, findings);
        StoreyOutlines outlines = StoreyOutlines.Of(description, findings);
        ImmutableArray<Wall> walls = WallsOf(description, outlines, findings);
        var storey = new Storey
        {
            Name = description.Name,
            ElevationMetres = description.ElevationMetres,
            CeilingMetres = description.CeilingMetres,
            Floor = FloorChecks.Floor(description, outlines, findings),
            Rooms = [.. outlines.Rooms],
            Walls = walls,
            Objects = ObjectChecks.Objects(description, findings),
        };
        return new(storey, [.. findings.Problems], [.. findings.Notices]);
    }

    private static void CheckHeights(StoreyDescription description, Findings findings)
    {
        if (description.CeilingMetres > 0) return;
        findings.Wrong(
            description.Source,
            Aspect.Height,
            $"the ceiling of \"{description.Name}\" lies {description.CeilingMetres} m above its floor",
            $"more than 0 m, such as 2.4");
    }

    private static ImmutableArray<Wall> WallsOf(StoreyDescription description, StoreyOutlines outlines, Findings findings)
    {
        var derivation = new WallDerivation();
        for (int i = 0; i < outlines.Rooms.Count; i++)
            derivation.AddRoom(outlines.Rooms[i], outlines.RoomCorners[i]);
        WallDerivation.NameAfterRooms(derivation.Pieces, outlines.Rooms, description.NorthDegrees);

        var exceptions = new WallExceptions(description, outlines, derivation, findings);
        exceptions.Apply();
        exceptions.ApplyDefaults();

        List<WallPiece> pieces = WallDerivation.JoinStraight(derivation.Pieces);
        FacingRooms.Note(description, pieces, outlines.Rooms, findings);
        PlaceOpenings(description, outlines, pieces, findings);
        return
        [
            .. pieces.Where(piece => piece.Construction is not null).Select(piece => new Wall
            {
                Name = piece.Name!,
                Start = piece.Start,
                End = piece.End,
                Construction = piece.Construction!.Value,
                Openings = [.. piece.Openings],
                Rooms = piece.RoomsIn(outlines.Rooms),
            }),
        ];
    }

    private static void PlaceOpenings(StoreyDescription description, StoreyOutlines outlines, List<WallPiece> pieces, Findings findings)
    {
        var search = new WallSearch(pieces, outlines.Rooms, description.NorthDegrees);
        var placement = new OpeningPlacement(description.CeilingMetres, findings);
        foreach (OpeningDescription opening in description.Openings)
        {
            if (outlines.IsSpoiltFor(opening.Place)) continue;
            WallMatch match = search.Find(opening.Place);
            if (match.Pieces.IsEmpty) findings.Wrong(opening.Source, Aspect.Place, $"{match.Wrong}", $"{match.Right}");
            else placement.Place(opening, match.Pieces);
        }
    }
}
