using System.Collections.Immutable;

namespace MeshSim.Devices;

/// <summary>One thing to do, or to bear in mind, when a device has to come out.</summary>
public enum RemovalStep
{
    /// <summary>Whatever it warns of must not depend on the network: see that another alarm is in service first.</summary>
    KeepAlarmInService,

    /// <summary>It is wired, or hidden among wires: work for a licensed electrician under the rules of the place.</summary>
    CallElectrician,

    /// <summary>Its manual switch leaves live parts behind.</summary>
    DoNotRelyOnSwitch,

    /// <summary>Switch its circuit off where it is isolated.</summary>
    IsolateCircuit,

    /// <summary>No circuit is named: find out which ones feed it or run there, and switch those off.</summary>
    FindCircuit,

    /// <summary>Lock off what was switched off.</summary>
    LockOff,

    /// <summary>Prove dead at the point of work.</summary>
    ProveDead,

    /// <summary>Disconnect and insulate.</summary>
    Disconnect,

    /// <summary>Pull it out of its outlet.</summary>
    PullPlug,

    /// <summary>Take the lamp out, off and cold.</summary>
    TakeLampOut,

    /// <summary>Stop the hub, then pull it out of its port.</summary>
    UnplugFromHub,

    /// <summary>Take its battery out.</summary>
    TakeBatteryOut,

    /// <summary>Put back what was there before.</summary>
    PutBack,
}

/// <summary>
/// How a device is taken out in a hurry, from what it runs on, how it is hidden and the person's word for it. In doubt it counts as
/// wired: that costs an electrician's visit, and the other mistake a life.
/// </summary>
public static class Removal
{
    // Mountings with mains wires about, or that may have them.
    private static readonly ImmutableArray<string> AmongWires =
        ["behind-switch-plastic-box", "behind-switch-metal-box", "ceiling-void", "under-floor", "inside-luminaire", "in-metal-cabinet"];

    private static readonly ImmutableArray<string> PlugWords = ["plug"], LampWords = ["bulb", "lamp"];

    /// <summary>What to do, in order.</summary>
    public static ImmutableArray<RemovalStep> StepsFor(Device device)
    {
        ArgumentNullException.ThrowIfNull(device);
        var steps = ImmutableArray.CreateBuilder<RemovalStep>();
        if (Alarms.Includes(device)) steps.Add(RemovalStep.KeepAlarmInService);
        bool isAmongWires = AmongWires.Contains(device.Mounting.Name);
        switch (device.Power)
        {
            case PowerSource.Mains when !isAmongWires && Says(device, PlugWords):
                steps.Add(RemovalStep.PullPlug);
                break;
            case PowerSource.Mains when !isAmongWires && Says(device, LampWords):
                steps.Add(RemovalStep.TakeLampOut);
                break;
            case PowerSource.Mains:
                steps.AddRange(MakingDead(device));
                steps.Add(RemovalStep.Disconnect);
                break;
            default:
                if (isAmongWires) steps.AddRange(MakingDead(device));
                steps.Add(device.Power == PowerSource.Battery ? RemovalStep.TakeBatteryOut : RemovalStep.UnplugFromHub);
                break;
        }

        if (device.Before.Length > 0) steps.Add(RemovalStep.PutBack);
        return steps.ToImmutable();
    }

    private static IEnumerable<RemovalStep> MakingDead(Device device)
    {
        yield return RemovalStep.CallElectrician;
        if (device.SwitchedBy is not null) yield return RemovalStep.DoNotRelyOnSwitch;
        yield return device.Circuit is null ? RemovalStep.FindCircuit : RemovalStep.IsolateCircuit;
        yield return RemovalStep.LockOff;
        yield return RemovalStep.ProveDead;
    }

    private static bool Says(Device device, ImmutableArray<string> words) =>
        device.Kind.Split([' ', '-', '_'], StringSplitOptions.RemoveEmptyEntries) is [.., var last] && words.Contains(last, StringComparer.OrdinalIgnoreCase);
}
