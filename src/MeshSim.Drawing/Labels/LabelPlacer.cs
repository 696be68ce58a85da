using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing.Labels;

/// <summary>Something straight that a label should rather not cover.</summary>
/// <param name="Start">One end of its middle line.</param>
/// <param name="End">The other.</param>
/// <param name="Cost">How bad it is to cover it.</param>
/// <param name="HalfWidth">Half of how broad it is drawn, pixels.</param>
internal readonly record struct Obstacle(Pixel Start, Pixel End, float Cost, float HalfWidth = 0)
{
    /// <summary>Whether a box covers some of it.</summary>
    public bool IsUnder(PixelBox box) => box.Grown(HalfWidth).IsMetBy(Start, End);
}

/// <summary>
/// Gives labels their places one after the other. A place is out of the question where it would leave the frame or cover a
/// symbol or an earlier label; among the others the cheapest wins, the first of equals.
/// </summary>
/// <param name="frame">The part of the sheet that labels must not leave.</param>
/// <param name="symbols">What no label may cover.</param>
/// <param name="obstacles">What a label should rather not cover.</param>
internal sealed class LabelPlacer(PixelBox frame, IReadOnlyList<PixelBox> symbols, IReadOnlyList<Obstacle> obstacles)
{
    /// <summary>Space kept between two labels and between a label and a symbol, pixels.</summary>
    public const float Space = 1;

    private const float LeaderOverBoxCost = 12;
    private const float LeaderOverLeaderCost = 8;

    /// <summary>A label in another room than its thing is found, but only by following its line.</summary>
    private const float LeaderOverObstacleCost = 3;

    private readonly List<PixelBox> labels = [];
    private readonly List<(Pixel Start, Pixel End)> leaders = [];

    /// <summary>The label in its place, or null when there is none.</summary>
    public PlacedLabel? Place(LabelRequest request)
    {
        LabelPlace? best = null;
        float least = float.PositiveInfinity;
        foreach (LabelPlace place in request.Places)
        {
            if (place.Cost >= least || !IsFree(place.Box)) continue;

            float cost = place.Cost + CostOf(place);
            if (cost < least) (best, least) = (place, cost);
        }

        if (best is not { } chosen) return null;

        var label = new PlacedLabel(request, chosen.Box, chosen.LeaderFrom);
        labels.Add(label.Box);
        if (label.LeaderFrom is { } start) leaders.Add((start, label.LeaderTo));
        return label;
    }

    private bool IsFree(PixelBox box)
    {
        PixelBox wide = box.Grown(Space);
        return frame.Holds(box) && !symbols.Any(wide.Overlaps) && !labels.Exists(wide.Overlaps);
    }

    private float CostOf(LabelPlace place)
    {
        float cost = 0;
        foreach (Obstacle obstacle in obstacles)
            if (obstacle.IsUnder(place.Box)) cost += obstacle.Cost;
        foreach ((Pixel start, Pixel end) in leaders)
            if (place.Box.IsMetBy(start, end)) cost += LeaderOverBoxCost;
        if (place.LeaderFrom is not { } from) return cost;

        Pixel to = place.Box.NearestTo(from);
        cost += LeaderOverBoxCost * symbols.Concat(labels).Count(box => box.IsMetBy(from, to) && !box.Grown(Space).Holds(PixelBox.About(from, 0, 0)));
        cost += LeaderOverObstacleCost * obstacles.Count(obstacle => DoCross(from, to, obstacle.Start, obstacle.End));
        return cost + (LeaderOverLeaderCost * leaders.Count(leader => DoCross(from, to, leader.Start, leader.End)));
    }

    private static bool DoCross(Pixel a, Pixel b, Pixel c, Pixel d) =>
        Turn(a, b, c) * Turn(a, b, d) < 0 && Turn(c, d, a) * Turn(c, d, b) < 0;

    private static float Turn(Pixel a, Pixel b, Pixel p) => ((b.X - a.X) * (p.Y - a.Y)) - ((b.Y - a.Y) * (p.X - a.X));
}
