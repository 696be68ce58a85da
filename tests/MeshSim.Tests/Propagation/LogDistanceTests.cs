using System.Collections.Immutable;
using CsCheck;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;
using MeshSim.Propagation;
using MeshSim.Propagation.Recommendations;
using static MeshSim.Tests.Propagation.ModelHouse;

namespace MeshSim.Tests.Propagation;

/// <summary>The default model on a small house, by hand and by what must hold everywhere.</summary>
public class LogDistanceTests
{
    // The same items summed in another order.
    private const double Rounding = 1e-9;

    private static readonly IPathLossModel House = Model(ModelName.LogDistance, Build());

    [Fact]
    public void Through_one_wall_it_is_free_space_and_that_wall()
    {
        PathLoss loss = House.Between(At(2, 5, 1), At(6, 5, 1));
        loss.Model.Should().Be("log-distance");
        loss.DistanceMetres.Should().Be(4);
        loss.Items.Select(item => (item.Kind, item.Name)).Should().Equal((LossKind.Distance, "distance"), (LossKind.Wall, "inner wall"));
        loss.Items[0].Loss.Value.Should().BeApproximately(FreeSpace.LossDb(4, Carrier.Megahertz), Rounding);
        loss.Items[1].Loss.Value.Should().BeApproximately(LossDb("brick-half"), Rounding);
        loss.Items[1].AngleDegrees.Should().BeApproximately(0, Rounding);
        loss.Items[1].Construction.Should().Be(new ConstructionName("brick-half"));
    }

    [Fact]
    public void A_wall_met_at_an_angle_costs_what_it_costs_at_that_angle()
    {
        LossItem wall = House.Between(At(3, 3, 1), At(5, 5, 1)).Items.Single(item => item.Kind == LossKind.Wall);
        wall.AngleDegrees.Should().BeApproximately(45, Rounding);
        wall.Loss.Value.Should().BeApproximately(LossDb("brick-half", Math.Sqrt(0.5)), Rounding);
    }

    [Fact]
    public void A_closed_door_counts_in_place_of_its_wall_and_an_open_one_costs_nothing()
    {
        (Position from, Position to) = (At(3, 1.4, 1), At(5, 1.4, 1));
        LossItem door = House.Between(from, to).Items[1];
        (door.Kind, door.Name).Should().Be((LossKind.Door, "door 0"));
        door.Loss.Value.Should().BeApproximately(LossDb("door-timber"), Rounding);
        Model(ModelName.LogDistance, Build(doorsOpen: true)).Between(from, to).Items.Should().ContainSingle();
    }

    [Fact]
    public void An_object_on_the_way_costs_its_loss_once()
    {
        LossItem item = House.Between(At(5, 4.3, 1), At(7.5, 4.3, 1)).Items[1];
        (item.Kind, item.Name, item.AngleDegrees).Should().Be((LossKind.Object, "cabinet", null));
        item.Loss.Value.Should().BeApproximately(LossDb("metal-cabinet"), Rounding);
    }

    [Fact]
    public void Two_floors_cost_the_floor_term_in_equal_shares()
    {
        PathLoss loss = House.Between(At(6, 3, 1), At(6, 3, 6.4));
        LossItem[] floors = [.. loss.Items.Where(item => item.Kind == LossKind.Floor)];
        double termDb = Cost231.FloorTermDb(2, LossDb("joists-chipboard-plasterboard"));
        floors.Select(floor => floor.Name).Should().Equal("floor of storey 1", "floor of storey 2");
        floors.Should().OnlyContain(floor => Math.Abs(floor.Loss.Value - (termDb / 2)) < Rounding);
        loss.Total.Value.Should().BeApproximately(FreeSpace.LossDb(5.4, Carrier.Megahertz) + termDb, Rounding);
    }

    [Fact]
    public void A_stairwell_is_free() =>
        House.Between(At(1, 2, 1), At(1, 2, 3.7)).Items.Should().ContainSingle().Which.Kind.Should().Be(LossKind.Distance);

    [Fact]
    public void Nearer_than_the_shortest_distance_counts_as_that()
    {
        double shortestDb = FreeSpace.LossDb(FreeSpace.DistanceMetres.Min, Carrier.Megahertz);
        House.TotalBetween(At(6, 3, 1), At(6, 3, 1)).Value.Should().BeApproximately(shortestDb, Rounding);
        House.TotalBetween(At(6, 3, 1), At(6.05, 3, 1)).Value.Should().BeApproximately(shortestDb, Rounding);
    }

    [Fact]
    public void The_exponent_is_ten_times_itself_per_decade()
    {
        IPathLossModel steep = Model(ModelName.LogDistance, new([new Storey { Name = new("open"), ElevationMetres = 0, CeilingMetres = 3 }]), exponent: 3.5);
        (steep.TotalBetween(At(0, 0, 1), At(20, 0, 1)) - steep.TotalBetween(At(0, 0, 1), At(2, 0, 1))).Value.Should().BeApproximately(35, Rounding);
    }

    [Fact]
    public void The_total_is_the_sum_of_the_items() => Gen.Select(Places, Places).Sample((a, b) =>
    {
        PathLoss loss = House.Between(a, b);
        House.TotalBetween(a, b).Value.Should().BeApproximately(loss.Total.Value, Rounding);
        loss.Total.Value.Should().BeApproximately(loss.Items.Sum(item => item.Loss.Value), Rounding);
    });

    [Fact]
    public void Both_directions_cost_the_same() => Gen.Select(Places, Places).Sample((a, b) =>
    {
        House.TotalBetween(b, a).Should().Be(House.TotalBetween(a, b));
        House.Between(b, a).Items.Select(item => item.Name).Skip(1)
            .Should().BeEquivalentTo(House.Between(a, b).Items.Select(item => item.Name).Skip(1));
    });

    [Fact]
    public void Another_wall_never_helps() => Gen.Select(Places, Places, Places, Places).Sample((a, b, start, end) =>
    {
        if (start.Plan == end.Plan) return;
        Wall wall = Wall(start.Plan.XMetres, start.Plan.YMetres, end.Plan.XMetres, end.Plan.YMetres, "stud-partition");
        IPathLossModel walled = Model(ModelName.LogDistance, WithWall(Build(), wall));
        walled.TotalBetween(a, b).Value.Should().BeGreaterThanOrEqualTo(House.TotalBetween(a, b).Value - Rounding);
    }, iter: 1000);

    [Fact]
    public void Opening_the_doors_never_hurts()
    {
        IPathLossModel open = Model(ModelName.LogDistance, Build(doorsOpen: true));
        Gen.Select(Places, Places).Sample((a, b) =>
            open.TotalBetween(a, b).Value.Should().BeLessThanOrEqualTo(House.TotalBetween(a, b).Value + Rounding));
    }

    [Fact]
    public void A_house_moved_turned_or_mirrored_costs_the_same()
    {
        Func<PlanPoint, PlanPoint>[] maps = [p => new(p.X + 12_345, p.Y - 6_789), p => new(-p.Y, p.X), p => new(-p.X, p.Y), p => new(p.Y, p.X)];
        foreach (Func<PlanPoint, PlanPoint> map in maps)
        {
            IPathLossModel mapped = Model(ModelName.LogDistance, Map(Build(), map));
            Gen.Select(Places, Places).Sample((a, b) =>
                mapped.TotalBetween(a with { Plan = map(a.Plan) }, b with { Plan = map(b.Plan) }).Value
                    .Should().BeApproximately(House.TotalBetween(a, b).Value, Rounding), iter: 500);
        }
    }

    [Fact]
    public void A_total_allocates_nothing()
    {
        (Position a, Position b) = (At(1, 5, 1), At(7, 0.5, 6.5));
        double sum = House.TotalBetween(a, b).Value;
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1000; i++) sum += House.TotalBetween(a, b).Value;
        (GC.GetAllocatedBytesForCurrentThread() - before).Should().Be(0);
        sum.Should().BePositive();
    }

    [Fact]
    public void A_material_outside_its_measured_frequencies_is_marked()
    {
        IPathLossModel low = PathLossModels.Create(ModelName.LogDistance, Build(), Constructions, new(433.92), 2);
        PathLoss loss = low.Between(At(2, 5, 1), At(6, 5, 1));
        loss.Items.Select(item => item.IsExtrapolated).Should().Equal(false, true);
        House.Between(At(2, 5, 1), At(6, 5, 1)).Items.Should().OnlyContain(item => !item.IsExtrapolated);
    }

    [Fact]
    public void A_missing_construction_or_an_impossible_exponent_is_refused()
    {
        ImmutableDictionary<ConstructionName, Construction> lacking = Constructions.Remove(new("door-timber"));
        ((Action)(() => PathLossModels.Create(ModelName.LogDistance, Build(), lacking, Carrier, 2)))
            .Should().Throw<ArgumentException>().WithMessage("*door-timber*");
        ((Action)(() => Model(ModelName.LogDistance, Build(), LogDistance.Exponent.Max + 0.1))).Should().Throw<ArgumentOutOfRangeException>();
        ((Action)(() => Model(ModelName.LogDistance, Build(), LogDistance.Exponent.Min - 0.1))).Should().Throw<ArgumentOutOfRangeException>();
    }
}
