using System.Collections.Immutable;
using MeshSim.Files.Diagnostics;

namespace MeshSim.Files.Importing;

/// <summary>A place in a drawing, m; x runs right, y runs up the page. The default is the drawing's origin.</summary>
/// <param name="XMetres">Metres to the right.</param>
/// <param name="YMetres">Metres up the page.</param>
internal readonly record struct DrawnPoint(double XMetres, double YMetres)
{
    /// <summary>Distance, m.</summary>
    public double DistanceMetresTo(DrawnPoint other) => double.Hypot(XMetres - other.XMetres, YMetres - other.YMetres);

    /// <summary>The place a share of the way towards another, 0 here, 1 there.</summary>
    public DrawnPoint Towards(DrawnPoint other, double share) =>
        new(XMetres + ((other.XMetres - XMetres) * share), YMetres + ((other.YMetres - YMetres) * share));

    /// <summary>The place moved.</summary>
    public DrawnPoint Moved(double xMetres, double yMetres) => new(XMetres + xMetres, YMetres + yMetres);

    /// <summary>Both coordinates, such as "(1.9, 3.1)".</summary>
    public override string ToString() => FormattableString.Invariant($"({XMetres:0.###}, {YMetres:0.###})");
}

/// <summary>A connected line of a drawing, curves already turned into corners.</summary>
/// <param name="Points">Its corners, at least one.</param>
/// <param name="IsClosed">Whether the last one joins the first.</param>
internal sealed record DrawnLine(ImmutableArray<DrawnPoint> Points, bool IsClosed)
{
    /// <summary>Its straight parts, those without length left out.</summary>
    public IEnumerable<(DrawnPoint Start, DrawnPoint End)> Parts
    {
        get
        {
            for (int i = 1; i < Points.Length; i++)
                if (Points[i] != Points[i - 1]) yield return (Points[i - 1], Points[i]);
            if (IsClosed && Points[^1] != Points[0]) yield return (Points[^1], Points[0]);
        }
    }

    /// <summary>Whether it goes around something: said, or its ends are the same place.</summary>
    public bool IsRing => IsClosed || (Points.Length > 3 && Points[0] == Points[^1]);

    /// <summary>The corners of a ring, none twice.</summary>
    public ImmutableArray<DrawnPoint> RingCorners => Points.Length > 1 && Points[0] == Points[^1] ? Points[..^1] : Points;
}

/// <summary>What a drawing calls a shape, as far as it says so.</summary>
internal sealed record ShapeNames
{
    /// <summary>The named groups that it lies in, outermost first.</summary>
    public ImmutableArray<string> Layers { get; init; } = [];

    /// <summary>Its classes.</summary>
    public ImmutableArray<string> Classes { get; init; } = [];

    /// <summary>Its id.</summary>
    public string? Id { get; init; }

    /// <summary>What a person called it.</summary>
    public string? Title { get; init; }
}

/// <summary>One shape of a drawing.</summary>
internal sealed record DrawnShape
{
    /// <summary>Where it stands in the file.</summary>
    public required SourcePlace Place { get; init; }

    /// <summary>What it is, for messages: rect "larder".</summary>
    public required string What { get; init; }

    /// <summary>What it is called.</summary>
    public required ShapeNames Names { get; init; }

    /// <summary>Its lines; a text has a single point.</summary>
    public required ImmutableArray<DrawnLine> Lines { get; init; }

    /// <summary>What it says, of a text; null of a shape.</summary>
    public string? Text { get; init; }

    /// <summary>All its points.</summary>
    public IEnumerable<DrawnPoint> Points => Lines.SelectMany(line => line.Points);

    /// <summary>The middle of the rectangle around it.</summary>
    public DrawnPoint Middle => new(
        (Points.Min(p => p.XMetres) + Points.Max(p => p.XMetres)) / 2,
        (Points.Min(p => p.YMetres) + Points.Max(p => p.YMetres)) / 2);

    /// <summary>Its own name: what a person called it, else its id.</summary>
    public string? OwnName => Names.Title ?? Names.Id;
}

/// <summary>Something of a drawing that is not in the home.</summary>
/// <param name="Place">Where it stands.</param>
/// <param name="What">What it is.</param>
/// <param name="Why">Why it was left out.</param>
internal sealed record LeftOut(SourcePlace Place, string What, string Why);

/// <summary>What a drawing holds, in metres.</summary>
/// <param name="Shapes">Its shapes, in its order.</param>
/// <param name="LeftOut">What its reader could not or must not take.</param>
/// <param name="Scale">How lengths were found, as a sentence without a full stop.</param>
internal sealed record Drawing(ImmutableArray<DrawnShape> Shapes, ImmutableArray<LeftOut> LeftOut, string Scale);
