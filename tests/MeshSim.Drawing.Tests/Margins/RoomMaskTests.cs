using CsCheck;
using MeshSim.Drawing.Margins;
using MeshSim.Drawing.Sheets;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Drawing.Tests.Margins;

public sealed class RoomMaskTests
{
    [Fact]
    public void A_row_agrees_with_the_exact_answer_for_every_pixel() =>
        Gen.Select(Star, Gen.Int[0, 99]).Sample((star, row) =>
        {
            // One pixel is one metre, so the middle of a pixel is a lattice point and the exact predicate can be asked.
            var projection = new Projection(1, new(0, 100));
            bool[] inside = new bool[100];
            RoomMask.Mark([projection.ToPixels(star)], 0, row + 0.5f, inside);

            int wrong = 0;
            for (int column = 0; column < inside.Length; column++)
            {
                PlanPoint middle = projection.ToPlan(new(column + 0.5f, row + 0.5f));
                wrong += inside[column] != star.Contains(middle) && !IsNearOutline(star, middle) ? 1 : 0;
            }

            wrong.Should().Be(0);
        });

    [Fact]
    public void Without_rooms_everything_is_inside()
    {
        bool[] inside = new bool[5];

        RoomMask.Mark([], 0, 0.5f, inside);

        inside.Should().OnlyContain(value => value);
    }

    /// <summary>Random simple polygons: corners in order of angle about a middle.</summary>
    private static Gen<Polygon> Star =>
        Gen.Double[5, 48].Array[3, 12].Select(radii => new Polygon(
            [.. radii.Select((radius, i) => PlanPoint.FromMetres(50 + (radius * Math.Cos(i * Math.Tau / radii.Length)), 50 + (radius * Math.Sin(i * Math.Tau / radii.Length))))]));

    /// <summary>Single-precision crossings are exact to 1e-4 pixel at 100 pixels; nearer than a thousandth the answer is open.</summary>
    private static bool IsNearOutline(Polygon star, PlanPoint point) =>
        star.Edges.Any(edge => Math.Abs(Predicates.SignedArea(edge.Start, edge.End, point)) / (edge.Start.DistanceMetresTo(edge.End) * Lattice.StepsPerMetre) < 10);
}
