using CsCheck;
using MeshSim.Files.Importing.Lines;

namespace MeshSim.Files.Tests.Importing.Lines;

public sealed class FacePairingTests
{
    [Fact]
    public void Two_parallel_lines_are_one_wall_of_their_distance()
    {
        PairedFaces paired = FacePairing.Pair(LineSketch.Walls(((0, 0), (5, 0)), ((5, 0.3), (0, 0.3))));

        WallStretch wall = paired.Centres.Should().ContainSingle().Subject;
        (wall.Start, wall.End).Should().Be((new(0, 0.15), new(5, 0.15)));
        wall.ThicknessMetres.Should().BeApproximately(0.3, 1e-12);
        paired.Single.Should().BeEmpty();
    }

    [Fact]
    public void The_nearest_face_is_the_other_one()
    {
        // A partition 0.1 m thick stands 0.4 m from a wall 0.2 m thick.
        PairedFaces paired = FacePairing.Pair(LineSketch.Walls(((0, 0), (4, 0)), ((0, 0.1), (4, 0.1)), ((0, 0.5), (4, 0.5)), ((0, 0.7), (4, 0.7))));

        paired.Centres.Select(wall => Math.Round(wall.ThicknessMetres!.Value, 6)).Should().Equal(0.1, 0.2);
    }

    [Fact]
    public void A_face_without_a_second_one_is_told_and_so_is_what_is_left_of_a_longer_one()
    {
        PairedFaces paired = FacePairing.Pair(LineSketch.Walls(((0, 0), (9, 0)), ((0, 0.2), (4, 0.2)), ((0, 3), (0, 8))));

        paired.Centres.Should().ContainSingle().Which.LengthMetres.Should().BeApproximately(4, 1e-9);
        paired.Single.Select(part => Math.Round(part.LengthMetres, 6)).Should().Equal(5, 5);
    }

    [Fact]
    public void The_ends_of_a_wall_drawn_as_a_box_are_no_walls()
    {
        PairedFaces paired = FacePairing.Pair(LineSketch.Walls(((0, 0), (3, 0)), ((3, 0), (3, 0.25)), ((3, 0.25), (0, 0.25)), ((0, 0.25), (0, 0))));

        paired.Centres.Should().ContainSingle();
        paired.Single.Should().BeEmpty();
        paired.Caps.Should().Be(2);
    }

    [Fact]
    public void Rooms_drawn_by_the_faces_of_their_walls_come_back_by_their_centre_lines() =>
        Gen.Select(Gen.Int[20, 60], Gen.Int[20, 60], Gen.Int[20, 60], Gen.Int[1, 4], Gen.Int[1, 4]).Sample((first, second, depth, outer, inner) =>
        {
            // Two rooms side by side, decimetres; outer walls 2·outer, the wall between them 2·inner decimetres thick.
            double o = outer / 20.0 + 0.05, i = inner / 20.0 + 0.02, a = first / 10.0, b = a + (second / 10.0), d = depth / 10.0;
            List<WallStretch> faces =
            [
                .. LineSketch.Ring((-o, -o), (b + o, -o), (b + o, d + o), (-o, d + o)),
                .. LineSketch.Ring((o, o), (a - i, o), (a - i, d - o), (o, d - o)),
                .. LineSketch.Ring((a + i, o), (b - o, o), (b - o, d - o), (a + i, d - o)),
            ];

            PairedFaces paired = FacePairing.Pair(faces);
            List<WallStretch> walls = EndSnapping.Snap(CornerMeeting.Meet(GapBridging.Bridge(paired.Centres, [], 0.02), 0.02), 0.02).Walls;
            EnclosedRooms rooms = RoomFinding.Find(PieceNoding.Cut(walls, out _));

            paired.Single.Should().BeEmpty();
            rooms.FreeEnds.Should().BeEmpty();
            rooms.Rooms.Select(LineSketch.BoxOf).Should().BeEquivalentTo(new[] { LineSketch.Box(0, 0, a, d), LineSketch.Box(a, 0, b, d) });
        });
}
