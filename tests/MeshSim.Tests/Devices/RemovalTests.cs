using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Tests.Dropouts;

namespace MeshSim.Tests.Devices;

public sealed class RemovalTests
{
    private static readonly Device Sample = HouseOfRooms.Of(3).Devices[1] with { Name = "one", Circuit = "lights", SwitchedBy = null };

    [Theory]
    [InlineData("plug", "surface", RemovalStep.PullPlug)]
    [InlineData("smart plug", "behind-television", RemovalStep.PullPlug)]
    [InlineData("bulb", "lamp-shade", RemovalStep.TakeLampOut)]
    [InlineData("standing lamp", "surface", RemovalStep.TakeLampOut)]
    public void What_a_person_may_pull_or_unscrew_needs_one_step(string kind, string mounting, RemovalStep step) =>
        Steps(PowerSource.Mains, kind, mounting).Should().Equal([step]);

    [Theory]
    [InlineData("switch module", "behind-switch-metal-box")]
    [InlineData("plug", "ceiling-void")]
    [InlineData("bulb", "inside-luminaire")]
    [InlineData("plug module", "surface")]
    [InlineData("", "surface")]
    public void Whatever_else_runs_on_mains_is_made_dead_first(string kind, string mounting) =>
        Steps(PowerSource.Mains, kind, mounting).Should().Equal(
            RemovalStep.CallElectrician, RemovalStep.IsolateCircuit, RemovalStep.LockOff, RemovalStep.ProveDead, RemovalStep.Disconnect);

    [Fact]
    public void A_battery_device_among_wires_is_taken_out_only_when_they_are_dead()
    {
        Steps(PowerSource.Battery, "meter", "surface").Should().Equal(RemovalStep.TakeBatteryOut);
        RemovalStep[] hidden = [.. Removal.StepsFor(Device(PowerSource.Battery, "meter", "in-metal-cabinet") with { Circuit = null })];
        hidden.Should().Equal(RemovalStep.CallElectrician, RemovalStep.FindCircuit, RemovalStep.LockOff, RemovalStep.ProveDead, RemovalStep.TakeBatteryOut);
    }

    [Fact]
    public void A_manual_switch_is_never_taken_for_an_isolator() =>
        Removal.StepsFor(Device(PowerSource.Mains, "module", "surface") with { SwitchedBy = "hall switch" })
            .Should().ContainInOrder(RemovalStep.DoNotRelyOnSwitch, RemovalStep.IsolateCircuit);

    [Fact]
    public void Every_mains_device_with_wires_is_proved_dead_after_it_is_locked_off()
    {
        foreach (string kind in new[] { "module", "relay", "thermostat", "dimmer", "light" })
            Steps(PowerSource.Mains, kind, "behind-switch-plastic-box").Should().ContainInOrder(RemovalStep.LockOff, RemovalStep.ProveDead, RemovalStep.Disconnect);
    }

    [Fact]
    public void An_alarm_stays_in_service_and_the_old_state_can_be_restored()
    {
        Removal.StepsFor(Device(PowerSource.Battery, "smoke alarm", "surface") with { Before = "an alarm of its own, drawing F1" })
            .Should().Equal(RemovalStep.KeepAlarmInService, RemovalStep.TakeBatteryOut, RemovalStep.PutBack);
        Removal.StepsFor(Device(PowerSource.Usb, "stick", "usb-port")).Should().Equal(RemovalStep.UnplugFromHub);
    }

    private static Device Device(PowerSource power, string kind, string mounting) =>
        Sample with { Power = power, Kind = kind, Mounting = Sample.Mounting with { Name = mounting } };

    private static ImmutableArray<RemovalStep> Steps(PowerSource power, string kind, string mounting) => Removal.StepsFor(Device(power, kind, mounting));
}
