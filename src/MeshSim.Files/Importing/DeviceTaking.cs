using MeshSim.Devices;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Importing.Lines;
using MeshSim.Files.Importing.Mappings;
using MeshSim.Files.Tables;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Radio;
using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;

namespace MeshSim.Files.Importing;

/// <summary>Makes devices and outlets of marks in the drawing, and a coordinator where none is drawn.</summary>
/// <param name="networks">The networks, at least one.</param>
/// <param name="findings">Takes what is to be said.</param>
internal sealed class DeviceTaking(IReadOnlyList<Network> networks, ImportFindings findings)
{
    /// <summary>Height of a mark that states none, m above the floor: a switch or a worktop socket. Common practice, no source.</summary>
    public const double UsualHeightMetres = 1.1;

    /// <summary>The devices of one storey.</summary>
    public IEnumerable<Device> Devices(SortedShapes shapes, Storey storey)
    {
        foreach (TakenShape taken in shapes.Of(Meaning.Device))
        {
            Network? network = taken.Rule.Network is { } wanted ? networks.FirstOrDefault(known => known.Name.Value == wanted) : networks[0];
            if (network is null)
            {
                findings.Problems.Error(
                    taken.Rule.Place,
                    $"no network is called {KnownNames.Quote(taken.Rule.Network!)}",
                    KnownNames.Help(taken.Rule.Network!, [.. networks.Select(known => known.Name.Value)], "networks"));
                continue;
            }

            PowerSource power = taken.Rule.Power ?? PowerOf(taken.Shape.Names);
            string id = findings.NameFor("device", taken.Name, "device");
            (PlanPoint point, RoomName? room) = Settle(taken.Shape, storey);
            yield return new()
            {
                Id = new(id),
                Name = id,
                Network = network.Name,
                Kind = taken.Rule.Kind,
                Power = power,
                Role = RoleOf(id, power, network),
                Storey = storey.Name,
                Point = point,
                HeightMetres = HeightOf(taken.Rule, storey),
                Room = room,
                Mounting = MountingOf(taken.Rule),
                Circuit = taken.Rule.Circuit,
                SwitchedBy = taken.Rule.SwitchedBy,
            };
        }
    }

    /// <summary>The outlets of one storey.</summary>
    public IEnumerable<Outlet> Outlets(SortedShapes shapes, Storey storey)
    {
        foreach (TakenShape taken in shapes.Of(Meaning.Outlet))
        {
            (PlanPoint point, RoomName? room) = Settle(taken.Shape, storey);
            yield return new()
            {
                Id = new(findings.NameFor("outlet", taken.Name, "outlet")),
                Storey = storey.Name,
                Point = point,
                HeightMetres = HeightOf(taken.Rule, storey),
                Room = room,
                Circuit = taken.Rule.Circuit,
            };
        }
    }

    /// <summary>A coordinator in the middle of the largest room, for a network whose own is not drawn.</summary>
    public Device AssumedCoordinator(Network network, Storey storey, SourcePlace drawing)
    {
        (PlanPoint point, RoomName? room) = Middle(storey);
        findings.Problems.Notice(
            drawing,
            $"the coordinator {KnownNames.Quote(network.Coordinator.Value)} of network {KnownNames.Quote(network.Name.Value)} is not drawn",
            $"it is assumed at {point}{(room is { } name ? $" in {KnownNames.Quote(name.Value)}" : "")}; put it right in {HomeFileNames.Devices}");
        return new()
        {
            Id = network.Coordinator,
            Name = network.Coordinator.Value,
            Network = network.Name,
            Power = PowerSource.Usb,
            Role = Role.Coordinator,
            Storey = storey.Name,
            Point = point,
            HeightMetres = Math.Min(UsualHeightMetres, storey.CeilingMetres),
            Room = room,
            Mounting = Catalogues.Mountings.First(known => known.Name == DeviceTable.DefaultMounting),
            Note = "assumed by the import",
        };
    }

    private static PowerSource PowerOf(ShapeNames names)
    {
        foreach (string word in names.Classes)
            if (DeviceTable.PowerWords.TryGetValue(word.ToLowerInvariant(), out PowerSource power)) return power;
        return PowerSource.Mains;
    }

    private static Role RoleOf(string id, PowerSource power, Network network)
    {
        if (network.Coordinator.Value == id) return Role.Coordinator;
        return power == PowerSource.Battery || network.Radio.Topology == Topology.Star ? Role.EndDevice : Role.Router;
    }

    private static Mounting MountingOf(TakeRule rule) =>
        Catalogues.Mountings.First(known => known.Name == (rule.Mounting ?? DeviceTable.DefaultMounting));

    private double HeightOf(TakeRule rule, Storey storey)
    {
        if (rule.HeightMetres is null) findings.Remark($"devices and outlets without a stated height are taken to hang {UsualHeightMetres} m above the floor");
        if (rule.HeightMetres > storey.CeilingMetres)
        {
            findings.Problems.Error(
                rule.Place,
                FormattableString.Invariant($"the height {rule.HeightMetres} m lies above the ceiling of {KnownNames.Quote(storey.Name.Value)}"),
                FormattableString.Invariant($"at most {storey.CeilingMetres} m"));
        }

        return Math.Min(rule.HeightMetres ?? UsualHeightMetres, storey.CeilingMetres);
    }

    private (PlanPoint Point, RoomName? Room) Settle(DrawnShape shape, Storey storey)
    {
        PlanPoint point = PieceNoding.PointOf(shape.Middle);
        if (storey.Rooms.IsEmpty) return (point, null);
        if (storey.RoomAt(point) is not { } room)
        {
            findings.Problems.Notice(shape.Place, $"{shape.What} lies outside every room", "it is taken to hang outdoors");
            return (point, null);
        }

        if (room.Outline.Locate(PathPoint.At(point)) == FloorPlans.Geometry.Location.Inside || OffWall.Move(room.Outline, point) is not { } moved) return (point, room.Name);
        findings.Problems.Notice(shape.Place, $"{shape.What} lies on a wall of {KnownNames.Quote(room.Name.Value)}", $"it is moved into the room, to {moved}");
        return (moved, room.Name);
    }

    private static (PlanPoint Point, RoomName? Room) Middle(Storey storey)
    {
        if (storey.Rooms.OrderByDescending(room => Int128.Abs(room.Outline.TwiceSignedArea)).FirstOrDefault() is not { } largest)
        {
            PlanPoint[] ends = [.. storey.Walls.SelectMany(wall => new[] { wall.Start, wall.End })];
            return (new((ends.Min(p => p.X) + ends.Max(p => p.X)) / 2, (ends.Min(p => p.Y) + ends.Max(p => p.Y)) / 2), null);
        }

        Coordinate[] ring = [.. largest.Outline.Corners.Append(largest.Outline.Corners[0]).Select(corner => new Coordinate(corner.X, corner.Y))];
        Coordinate inside = InteriorPointArea.GetInteriorPoint(new NetTopologySuite.Geometries.Polygon(new LinearRing(ring)));
        return (new((int)inside.X, (int)inside.Y), largest.Name);
    }
}
