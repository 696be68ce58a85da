using CsCheck;
using MeshSim.Devices;
using MeshSim.Dropouts;
using MeshSim.Quantities;
using MeshSim.Studies;
using MeshSim.Tests.Dropouts;

namespace MeshSim.Tests.Studies;

public sealed class ExplainStudyTests
{
    private const int Homes = 40;

    /// <summary>Sums of at most a dozen doubles of the size of a path loss.</summary>
    private const double RoundingDb = 1e-9;

    private static readonly StudyOptions Coarse = new() { GridStepMetres = 1 };

    [Fact]
    public void Random_homes_in_random_states_are_always_answered() => Gen.Int[0, 100_000].Sample(
        seed =>
        {
            Home home = HouseOfRooms.Of(seed);
            foreach (State? state in home.States.Cast<State?>().Append(null))
            {
                StudyOptions options = Coarse with { State = state };
                foreach (Device device in home.Devices) Judge(ExplainStudy.Device(home, device, options));
                foreach (Network network in home.Networks) Judge(ExplainStudy.Room(home, network, HouseOfRooms.Right, options));
            }
        },
        iter: Homes);

    [Fact]
    public void What_a_fix_promises_is_what_the_changed_home_gives() => Gen.Int[0, 100_000].Sample(
        seed =>
        {
            Home home = HouseOfRooms.Of(seed);
            foreach (Device device in home.Devices)
            {
                foreach (DeviceFix fix in ExplainStudy.Device(home, device, Coarse).Fixes)
                {
                    Home changed = fix.Fix.On(home);
                    DeviceStanding then = ExplainStudy.Device(changed, changed.Devices.First(other => other.Id == device.Id), Coarse).Now;
                    (then.IsReached, then.Margin, then.Ways).Should().Be((fix.After.IsReached, fix.After.Margin, fix.After.Ways), fix.Fix.Words);
                }
            }
        },
        iter: Homes / 2);

    [Fact]
    public void A_network_with_one_device_is_answered()
    {
        Home home = HouseOfRooms.Of(3);
        home = home with { Devices = [home.Devices[0]], States = [] };

        DeviceExplanation coordinator = ExplainStudy.Device(home, home.Devices[0], Coarse);
        RoomExplanation room = ExplainStudy.Room(home, home.Networks[0], HouseOfRooms.Left, Coarse);

        coordinator.Budget.Should().BeNull();
        coordinator.Fixes.Should().BeEmpty();
        room.Budget.Should().NotBeNull("somebody carries a device around");
    }

    [Fact]
    public void A_network_without_a_coordinator_is_answered_with_what_is_missing()
    {
        Home home = HouseOfRooms.Of(3);
        home = home with { Devices = [home.Devices[1]], States = [] };

        DeviceExplanation alone = ExplainStudy.Device(home, home.Devices[0], Coarse);
        RoomExplanation room = ExplainStudy.Room(home, home.Networks[0], HouseOfRooms.Left, Coarse);

        alone.CanBeReached.Should().BeFalse();
        alone.Now.Margin.Value.Should().Be(double.NegativeInfinity);
        room.Now.DarkShare.Should().Be(1);
        room.Budget.Should().BeNull();
    }

    [Fact]
    public void A_network_without_end_devices_is_answered()
    {
        Home home = HouseOfRooms.Of(5);
        home = home with { Devices = [.. home.Devices.Where(device => device.Role != Role.EndDevice)] };

        foreach (Device device in home.Devices) Judge(ExplainStudy.Device(home, device, Coarse));
    }

    [Fact]
    public void With_everything_off_nothing_is_proposed()
    {
        Home home = HouseOfRooms.Of(7);
        StudyOptions dark = Coarse with { State = new State { Name = "dark", DevicesOff = [.. home.Devices.Select(device => device.Id)] } };

        foreach (Device device in home.Devices)
        {
            DeviceExplanation answer = ExplainStudy.Device(home, device, dark);
            answer.Now.IsOn.Should().BeFalse();
            answer.Fixes.Should().BeEmpty();
        }

        ExplainStudy.Room(home, home.Networks[0], HouseOfRooms.Left, dark).Now.DarkShare.Should().Be(1);
    }

    [Fact]
    public void Nothing_is_proposed_about_alarms()
    {
        Home home = HouseOfRooms.Of(11);
        Device alarm = home.Devices[^1] with { Kind = "smoke alarm" };
        home = home with { Devices = home.Devices.SetItem(home.Devices.Length - 1, alarm) };

        DeviceExplanation answer = ExplainStudy.Device(home, alarm, Coarse);

        answer.IsAlarm.Should().BeTrue();
        answer.Fixes.Should().BeEmpty();
        answer.Tried.Should().Be(0);
    }

    [Fact]
    public void A_device_of_no_network_and_a_room_of_no_storey_are_misuse()
    {
        Home home = HouseOfRooms.Of(3);

        FluentActions.Invoking(() => ExplainStudy.Device(home, home.Devices[0] with { Network = new("none") }, Coarse)).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => ExplainStudy.Room(home, home.Networks[0], new("none"), Coarse)).Should().Throw<ArgumentException>();
    }

    private static void Judge(DeviceExplanation answer)
    {
        if (answer.Budget is { } budget) Judge(budget);
        bool isServed = answer.Fixes.Any(fix => fix.After.IsReached);
        foreach (DeviceFix fix in answer.Fixes)
        {
            fix.After.IsReached.Should().Be(isServed, "fixes that do not serve the device are left out when one does");
            if (answer.Now.IsReached) fix.After.Outages.Drops.Length.Should().BeLessThan(answer.Now.Outages.Drops.Length);
            else (fix.After.IsReached || fix.After.Margin > answer.Now.Margin).Should().BeTrue("it would not help");
        }
    }

    private static void Judge(RoomExplanation answer)
    {
        if (answer.Budget is { } budget) Judge(budget);
        answer.Now.DarkShare.Should().BeInRange(0, 1);
        answer.Fixes.Select(fix => fix.After.DarkShare).Should().BeInAscendingOrder().And.NotContain(share => share >= answer.Now.DarkShare);
    }

    /// <summary>Every number of the budget follows from the others, and its margin is the link's.</summary>
    private static void Judge(Budget budget)
    {
        PowerLevel arrives = budget.TransmitPower + budget.AntennaGain + budget.AntennaGain - new Decibels(budget.Losses.Sum(loss => loss.Item.Loss.Value));
        arrives.Dbm.Should().BeApproximately(budget.Received.Dbm, RoundingDb);
        budget.Losses.Sum(loss => loss.Share).Should().BeApproximately(1, RoundingDb);
        budget.Margin.Value.Should().BeApproximately(budget.Link.Margin.Value, RoundingDb);
        budget.Disturbance.Value.Should().BeGreaterThanOrEqualTo(0);
    }
}
