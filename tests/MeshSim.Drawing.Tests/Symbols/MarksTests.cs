using MeshSim.Devices;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Symbols;
using MeshSim.Drawing.Tests.Scenes;
using MeshSim.Studies;

namespace MeshSim.Drawing.Tests.Symbols;

public sealed class MarksTests
{
    private static readonly SheetLayout Layout = SheetLayout.Of(PlanBounds.Of(TwoStoreyFlat.Home, TwoStoreyFlat.Home.FloorPlan.Storey(TwoStoreyFlat.Ground)), PictureSize.Default, 500);

    [Fact]
    public void Each_device_of_the_storey_is_drawn_once_in_the_order_of_the_home()
    {
        Marks marks = Marks.On(TwoStoreyFlat.Upper, SyntheticCoverage.Coverage, null, Layout);

        marks.Devices.Select(mark => mark.Device.Id.Value).Should()
            .Equal("bed-lamp", "bed-blind", "bed-window", "landing-module", "study-thermo", "study-remote");
        marks.Repeaters.Should().BeEmpty();
    }

    [Fact]
    public void Repeaters_keep_the_numbers_of_the_recommendation_and_their_places()
    {
        RepeaterMark mark = Marks.On(TwoStoreyFlat.Ground, SyntheticCoverage.Coverage, SyntheticCoverage.Repeaters, Layout).Repeaters.Should().ContainSingle().Subject;

        mark.Number.Should().Be(2);
        mark.IsMoved.Should().BeFalse();
    }

    [Fact]
    public void A_device_without_power_is_drawn_as_off_and_one_without_route_as_unreached()
    {
        NetworkCoverage coverage = SyntheticCoverage.Coverage with
        {
            State = new() { Name = "bedtime", DevicesOff = [new("tv-plug")] },
            Devices = [.. SyntheticCoverage.Coverage.Devices.Where(reach => reach.Device != new DeviceId("tv-plug"))],
        };

        Dictionary<string, Standing> standings = Marks.On(TwoStoreyFlat.Ground, coverage, null, Layout).Devices
            .ToDictionary(mark => mark.Device.Id.Value, mark => mark.Standing);

        standings["tv-plug"].Should().Be(Standing.Off);
        standings["sink-leak"].Should().Be(Standing.Unreached);
        standings["stick"].Should().Be(Standing.Reached);
        standings["meter"].Should().Be(Standing.Reached);
    }
}
