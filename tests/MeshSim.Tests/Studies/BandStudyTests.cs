using CsCheck;
using MeshSim.Devices;
using MeshSim.Radio;
using MeshSim.Studies;
using MeshSim.Tests.Dropouts;

namespace MeshSim.Tests.Studies;

public sealed class BandStudyTests
{
    private const int Homes = 30;

    /// <summary>Sums of a dozen doubles of the size of a path loss.</summary>
    private const double RoundingDb = 1e-9;

    private static readonly StudyOptions Coarse = new() { GridStepMetres = 1 };

    [Fact]
    public void The_parts_of_each_difference_sum_to_the_difference_of_the_margins() => Gen.Int[0, 100_000].Sample(
        seed =>
        {
            Home home = HouseOfRooms.Of(seed);
            BandComparison bands = BandStudy.Compare(home, home.Networks[1], home.Networks[0], Coarse with { State = home.States.FirstOrDefault() });
            foreach (BandDevice device in bands.Devices)
            {
                (device.Difference is null).Should().Be(device.First.Budget is null || device.Second.Budget is null);
                device.Difference?.Total.Value.Should().BeApproximately((device.First.Budget!.Margin - device.Second.Budget!.Margin).Value, RoundingDb);
            }
        },
        iter: Homes);

    [Fact]
    public void A_network_compared_with_itself_differs_in_nothing()
    {
        Home home = HouseOfRooms.Of(4);

        BandComparison bands = BandStudy.Compare(home, home.Networks[0], home.Networks[0], Coarse);

        bands.Rooms.Should().OnlyContain(room => room.First == room.Second);
        bands.Devices.Should().OnlyContain(device => device.Difference == null || device.Difference.Total.Value == 0);
        bands.Maps.Should().OnlyContain(map => map.First.Values.SequenceEqual(map.Second.Values));
    }

    [Fact]
    public void A_device_of_the_network_stands_as_the_routes_say()
    {
        Home home = HouseOfRooms.Of(9);

        BandComparison bands = BandStudy.Compare(home, home.Networks[1], home.Networks[0], Coarse);

        foreach (BandDevice device in bands.Devices)
            device.Second.Hops.Should().Be(bands.Second.Devices.First(reach => reach.Device == device.Device.Id).Route?.Hops);
    }

    [Fact]
    public void By_default_the_first_mesh_below_a_gigahertz_is_compared_with_the_first_above()
    {
        Home home = HouseOfRooms.Of(4);
        Network star = home.Networks[1] with { Name = new("star"), Radio = home.Networks[1].Radio with { Topology = Topology.Star } };

        BandStudy.Default(home with { Networks = [star, .. home.Networks] }).Should().Be((home.Networks[1], home.Networks[0]));
        BandStudy.Default(home with { Networks = [star, home.Networks[0]] }).Should().Be((star, home.Networks[0]));
        BandStudy.Default(home with { Networks = [star, home.Networks[1]] }).Should().BeNull();
    }
}
