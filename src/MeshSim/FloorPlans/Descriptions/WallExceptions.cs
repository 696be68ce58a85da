using System.Collections.Immutable;

namespace MeshSim.FloorPlans.Descriptions;

/// <summary>Gives wall pieces their constructions: what the description says of each, in its order, then the defaults.</summary>
internal sealed class WallExceptions(StoreyDescription description, StoreyOutlines outlines, WallDerivation derivation, Findings findings)
{
    /// <summary>Applies what the description says of single walls; a later statement overrides an earlier one.</summary>
    public void Apply()
    {
        foreach (WallDescription wall in description.Walls)
        {
            foreach (WallPiece piece in PiecesOf(wall))
            {
                piece.Construction = wall.Construction;
                piece.Name = wall.Name ?? piece.Name;
            }
        }

        WallDerivation.NameAfterRooms(derivation.Pieces, outlines.Rooms, description.NorthDegrees);
    }

    /// <summary>Gives every other piece the default of its kind.</summary>
    public void ApplyDefaults()
    {
        WallPiece[] open = [.. derivation.Pieces.Where(piece => piece.Construction is null)];
        foreach (WallPiece piece in open)
            piece.Construction = piece.Left is not null && piece.Right is not null ? description.Inner : description.Outer;

        string[] without = [.. open.Where(piece => piece.Construction is null && (piece.Left is null || piece.Right is null)).Select(piece => piece.Name!).Distinct()];
        if (without.Length > 0)
            findings.Wrong(description.Source, Aspect.Outer, $"nothing says what the outer walls of \"{description.Name}\" are built of, such as \"{without[0]}\"", $"a construction for outer walls");
        without = [.. open.Where(piece => piece.Construction is null && piece.Left is not null && piece.Right is not null).Select(piece => piece.Name!).Distinct()];
        if (without.Length > 0)
            findings.Wrong(description.Source, Aspect.Inner, $"nothing says what the inner walls of \"{description.Name}\" are built of, such as \"{without[0]}\"", $"a construction for inner walls");
    }

    private ImmutableArray<WallPiece> PiecesOf(WallDescription wall)
    {
        if (wall.Place is WallPlace.Line)
            return outlines.LineCorners.TryGetValue(wall, out var corners) ? [.. derivation.AddLine(corners)] : [];
        if (outlines.IsSpoiltFor(wall.Place)) return [];

        // Made anew for each statement: an earlier one may have named or added walls.
        WallMatch match = new WallSearch(derivation.Pieces, outlines.Rooms, description.NorthDegrees).Find(wall.Place);
        if (match.Pieces.IsEmpty) findings.Wrong(wall.Source, Aspect.Place, $"{match.Wrong}", $"{match.Right}");
        return match.Pieces;
    }
}
