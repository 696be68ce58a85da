using MeshSim.Devices;

namespace MeshSim.Drawing.Symbols;

/// <summary>The graphic symbols, each for a family of devices.</summary>
internal enum SymbolShape
{
    /// <summary>A device of no known kind.</summary>
    Other,

    /// <summary>The box or stick that a network hangs on.</summary>
    Controller,

    /// <summary>A device that only passes frames on.</summary>
    Repeater,

    /// <summary>A plug or a socket-outlet.</summary>
    Outlet,

    /// <summary>A switch, dimmer, button or remote control.</summary>
    Switch,

    /// <summary>A lamp.</summary>
    Lamp,

    /// <summary>A motion or presence detector.</summary>
    Motion,

    /// <summary>A door or window contact.</summary>
    Contact,

    /// <summary>A detector of smoke, heat or gas, or a sounder.</summary>
    Alarm,

    /// <summary>A detector of water.</summary>
    Water,

    /// <summary>A room thermostat or a sensor of the climate.</summary>
    Climate,

    /// <summary>A radiator valve.</summary>
    Valve,

    /// <summary>A blind, shutter, gate or other drive.</summary>
    Drive,

    /// <summary>A meter.</summary>
    Meter,

    /// <summary>A module behind a switch or in a ceiling.</summary>
    Module,
}

/// <summary>Finds the symbol of a device from the person's word for it.</summary>
internal static class SymbolShapes
{
    // The first row with a word that the kind contains decides, so "light switch" is a switch and "valve thermostat" a valve.
    private static readonly (SymbolShape Shape, string[] Words)[] ByWord =
    [
        (SymbolShape.Water, ["leak", "water", "flood", "moisture"]),
        (SymbolShape.Alarm, ["smoke", "heat alarm", "gas", "monoxide", "siren", "alarm", "sounder", "bell"]),
        (SymbolShape.Repeater, ["repeater", "extender"]),
        (SymbolShape.Valve, ["valve", "radiator"]),
        (SymbolShape.Motion, ["motion", "presence", "occupancy", "pir"]),
        (SymbolShape.Meter, ["meter", "energy"]),
        (SymbolShape.Drive, ["blind", "shutter", "curtain", "cover", "gate", "garage", "motor", "lock"]),
        (SymbolShape.Module, ["module", "relay", "actuator", "micro", "in-wall", "behind"]),
        (SymbolShape.Contact, ["contact", "door", "window", "letterbox"]),
        (SymbolShape.Climate, ["thermo", "temperature", "humidity", "climate", "air quality", "weather"]),
        (SymbolShape.Switch, ["switch", "dimmer", "button", "remote", "knob", "scene"]),
        (SymbolShape.Outlet, ["plug", "outlet", "socket"]),
        (SymbolShape.Lamp, ["lamp", "bulb", "light", "led", "spot", "lantern"]),
        (SymbolShape.Controller, ["stick", "hub", "controller", "coordinator", "gateway", "bridge"]),
    ];

    /// <summary>The symbol of a device: a coordinator's own, else the one that its kind asks for.</summary>
    public static SymbolShape Of(Device device) =>
        device.Role == Role.Coordinator
            ? SymbolShape.Controller
            : ByWord.FirstOrDefault(row => row.Words.Any(word => device.Kind.Contains(word, StringComparison.OrdinalIgnoreCase))).Shape;

    /// <summary>What the symbol means, for the legend.</summary>
    public static string Meaning(SymbolShape shape) => shape switch
    {
        SymbolShape.Controller => "controller",
        SymbolShape.Repeater => "repeater",
        SymbolShape.Outlet => "plug or socket",
        SymbolShape.Switch => "switch or remote",
        SymbolShape.Lamp => "lamp",
        SymbolShape.Motion => "motion",
        SymbolShape.Contact => "door, window",
        SymbolShape.Alarm => "alarm",
        SymbolShape.Water => "water",
        SymbolShape.Climate => "climate",
        SymbolShape.Valve => "radiator valve",
        SymbolShape.Drive => "drive",
        SymbolShape.Meter => "meter",
        SymbolShape.Module => "module",
        _ => "other device",
    };
}
