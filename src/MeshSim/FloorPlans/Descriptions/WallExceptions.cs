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
            piece.Construction = piece.IsInner ? description.Inner : description.Outer;

        ReportFirst(Array.Find(open, piece => piece.Construction is null && !piece.IsInner), Aspect.Outer, "outer");
        ReportFirst(Array.Find(open, piece => piece.Construction is null && piece.IsInner), Aspect.Inner, "inner");
    }

    private void ReportFirst(WallPiece? without, Aspect aspect, string kind)
    {
        if (without is null) return;
        findings.Wrong(
            description.Source,
            aspect,
            $"nothing says what the {kind} walls of \"{description.Name}\" are built of, such as \"{without.Name}\"",
            $"a construction for {kind} walls");
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
