using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Studies;

namespace MeshSim.Cli.Wording;

/// <summary>How a device is taken out in a hurry, in sentences.</summary>
internal static class RemovalWords
{
    /// <summary>One sentence or two a step, numbered by their order.</summary>
    public static ImmutableArray<string> Of(DeviceRecord record) =>
        [.. record.Removal.Select((step, index) => FormattableString.Invariant($"{index + 1}. {Sentence(step, record)}"))];

    private static string Sentence(RemovalStep step, DeviceRecord record) => step switch
    {
        RemovalStep.KeepAlarmInService => "Do not leave people without this alarm: see that another one, which needs no part of this mesh, is in service first.",
        RemovalStep.CallElectrician => "Wired, or hidden among wires: work for a licensed electrician, under the wiring rules of the place.",
        RemovalStep.DoNotRelyOnSwitch => $"Do not rely on \"{record.Device.SwitchedBy}\": a switch leaves live parts behind.",
        RemovalStep.IsolateCircuit => $"Isolate circuit \"{record.Device.Circuit}\" {At(record)}.",
        RemovalStep.FindCircuit => "No circuit is on record: find every circuit that feeds it or runs there, and isolate them.",
        RemovalStep.LockOff => "Lock it off, and put up a notice.",
        RemovalStep.ProveDead => "Prove dead where the work is, with a tester proved before and after.",
        RemovalStep.Disconnect => "Disconnect it and make the ends safe.",
        RemovalStep.PullPlug => "Pull it out of its outlet.",
        RemovalStep.TakeLampOut => TakeLampOut(record),
        RemovalStep.UnplugFromHub => "Shut the hub down, then pull it out of its port.",
        RemovalStep.TakeBatteryOut => "Take its battery out.",
        RemovalStep.PutBack => "Put back what was there before (below).",
        _ => throw new InvalidOperationException($"no such step: {step}"),
    };

    private static string TakeLampOut(DeviceRecord record)
    {
        string isolate = record.Device.Circuit is { } circuit ? $"isolate circuit \"{circuit}\" {At(record)}" : "isolate its circuit";
        return $"Pull the plug of a lamp that has one; of a fixed one {isolate}, lock it off and prove dead. Let it cool, then take it out of its holder.";
    }

    private static string At(DeviceRecord record) => record.IsolatedAt is { } at ? $"at: {at}" : "(where is not on record)";
}
