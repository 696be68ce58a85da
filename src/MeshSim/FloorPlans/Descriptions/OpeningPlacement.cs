using System.Collections.Immutable;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.FloorPlans.Descriptions;

/// <summary>Puts doors and windows into the wall pieces where they belong.</summary>
internal sealed class OpeningPlacement(double ceilingMetres, Findings findings)
{
    // Offsets, widths and wall lengths are sums of decimal figures; what differs by less than a lattice step is equal.
    private static readonly double StepMetres = Lattice.ToMetres(1);

    // Pieces of one side are measured along one line when their directions differ by less than this. Assumed: what snapping can
    // turn a metre of wall by.
    private const double ParallelDegrees = 3;

    private static readonly FormattableString AtLeastZero = $"0 m or more", AboveZero = $"more than 0 m";

    private static readonly FormattableString NameOneWall = $"name the wall by its two rooms or by its own name";

    /// <summary>Puts an opening into the one piece that holds all of it, or says why there is none.</summary>
    public void Place(OpeningDescription opening, ImmutableArray<WallPiece> pieces)
    {
        if (!HasProperSizes(opening)) return;
        if (StretchesOf(pieces) is not { } stretches)
        {
            findings.Wrong(opening.Source, Aspect.Place, $"the walls meant for \"{opening.Name}\" run in different directions", NameOneWall);
            return;
        }

        double end = opening.OffsetMetres + opening.WidthMetres;
        Stretch[] holding =
            [.. stretches.Where(piece => piece.StartMetres - StepMetres <= opening.OffsetMetres && end <= piece.EndMetres + StepMetres)];
        if (holding.Length == 1)
            Put(opening, holding[0]);
        else if (holding.Length > 1)
            findings.Wrong(
                opening.Source, Aspect.Place, $"\"{opening.Name}\" could sit in any of {holding.Length} walls that lie side by side", NameOneWall);
        else
            ReportNoRoom(opening, stretches);
    }

    private bool HasProperSizes(OpeningDescription opening)
    {
        int before = findings.Problems.Count;
        if (!(opening.OffsetMetres >= 0))
            findings.Wrong(opening.Source, Aspect.Offset, $"\"{opening.Name}\" begins {opening.OffsetMetres} m along its wall", AtLeastZero);
        if (!(opening.WidthMetres > 0))
            findings.Wrong(opening.Source, Aspect.Width, $"\"{opening.Name}\" is {opening.WidthMetres} m wide", AboveZero);
        if (!(opening.SillMetres >= 0))
            findings.Wrong(opening.Source, Aspect.Sill, $"the sill of \"{opening.Name}\" lies {opening.SillMetres} m above the floor", AtLeastZero);
        double headMetres = opening.SillMetres + opening.HeightMetres;
        if (!(opening.HeightMetres > 0))
            findings.Wrong(opening.Source, Aspect.Height, $"\"{opening.Name}\" is {opening.HeightMetres} m high", AboveZero);
        else if (headMetres > ceilingMetres + StepMetres && ceilingMetres > 0)
            findings.Wrong(
                opening.Source,
                Aspect.Height,
                $"the head of \"{opening.Name}\" lies {headMetres:0.####} m above the floor, higher than the ceiling",
                $"at most {ceilingMetres} m");
        return findings.Problems.Count == before;
    }

    private void Put(OpeningDescription described, Stretch stretch)
    {
        WallPiece piece = stretch.Piece;
        double lengthMetres = piece.LengthMetres, widthMetres = Math.Min(described.WidthMetres, lengthMetres);
        double offsetMetres = stretch.IsReversed
            ? stretch.EndMetres - described.OffsetMetres - widthMetres
            : described.OffsetMetres - stretch.StartMetres;
        offsetMetres = Math.Clamp(offsetMetres, 0, lengthMetres - widthMetres);
        Opening? inTheWay = piece.Openings.Find(other =>
            offsetMetres < other.OffsetMetres + other.WidthMetres - StepMetres && other.OffsetMetres < offsetMetres + widthMetres - StepMetres);
        if (inTheWay is not null)
        {
            double takenFrom = stretch.IsReversed
                ? stretch.EndMetres - inTheWay.OffsetMetres - inTheWay.WidthMetres
                : stretch.StartMetres + inTheWay.OffsetMetres;
            findings.Wrong(
                described.Source,
                Aspect.Offset,
                $"\"{described.Name}\" overlaps \"{inTheWay.Name}\"",
                $"\"{inTheWay.Name}\" takes {takenFrom:0.####} to {takenFrom + inTheWay.WidthMetres:0.####} m of the wall");
            return;
        }

        piece.Openings.Add(new Opening
        {
            Name = described.Name,
            Kind = described.Kind,
            OffsetMetres = offsetMetres,
            WidthMetres = widthMetres,
            SillMetres = described.SillMetres,
            HeightMetres = Math.Min(described.HeightMetres, ceilingMetres - described.SillMetres),
            Construction = described.Construction,
            IsOpen = described.IsOpen,
        });
        piece.Openings.Sort(static (a, b) => a.OffsetMetres.CompareTo(b.OffsetMetres));
    }

    private void ReportNoRoom(OpeningDescription opening, IReadOnlyList<Stretch> stretches)
    {
        bool isTooWide = stretches.All(piece => opening.WidthMetres > piece.EndMetres - piece.StartMetres + StepMetres);
        string pieces = string.Join(
            " and ",
            from piece in stretches
            orderby piece.StartMetres
            select FormattableString.Invariant($"{piece.StartMetres:0.####} to {piece.EndMetres:0.####} m"));
        findings.Wrong(
            opening.Source,
            isTooWide ? Aspect.Width : Aspect.Offset,
            $"\"{opening.Name}\", {opening.OffsetMetres} to {opening.OffsetMetres + opening.WidthMetres:0.####} m, does not lie within one piece of its wall",
            $"the wall \"{stretches[0].Piece.Name}\" runs {pieces} from its left end, or the lower end of an upright wall");
    }

    /// <summary>Measures all pieces along their common direction from the first end; null when they have none.</summary>
    private static List<Stretch>? StretchesOf(ImmutableArray<WallPiece> pieces)
    {
        WallPiece longest = pieces.MaxBy(piece => piece.LengthMetres)!;
        double ux = (longest.End.XMetres - longest.Start.XMetres) / longest.LengthMetres;
        double uy = (longest.End.YMetres - longest.Start.YMetres) / longest.LengthMetres;
        double mostSine = Math.Sin(ParallelDegrees * Math.PI / 180);
        var stretches = new List<Stretch>();
        foreach (WallPiece piece in pieces)
        {
            double dx = piece.End.XMetres - piece.Start.XMetres, dy = piece.End.YMetres - piece.Start.YMetres;
            if (Math.Abs((ux * dy) - (uy * dx)) > mostSine * piece.LengthMetres) return null;
            double centre = ((ux * (piece.Start.XMetres + piece.End.XMetres)) + (uy * (piece.Start.YMetres + piece.End.YMetres))) / 2;
            stretches.Add(new(piece, centre - (piece.LengthMetres / 2), centre + (piece.LengthMetres / 2), (ux * dx) + (uy * dy) < 0));
        }

        double origin = stretches.Min(stretch => stretch.StartMetres);
        return [.. stretches.Select(stretch => stretch with { StartMetres = stretch.StartMetres - origin, EndMetres = stretch.EndMetres - origin })];
    }

    /// <summary>Where a piece begins and ends along the whole wall.</summary>
    private readonly record struct Stretch(WallPiece Piece, double StartMetres, double EndMetres, bool IsReversed);
}
