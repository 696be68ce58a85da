using System.Collections.Immutable;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;
using MeshSim.Propagation;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Devices;

/// <summary>One radio network of a home.</summary>
public sealed record Network
{
    /// <summary>Unique in the home.</summary>
    public required NetworkName Name { get; init; }

    /// <summary>Its kind of radio.</summary>
    public required RadioProfile Radio { get; init; }

    /// <summary>Its channel, one of the profile's.</summary>
    public required int Channel { get; init; }

    /// <summary>Its coordinator, one of the home's devices.</summary>
    public required DeviceId Coordinator { get; init; }

    /// <summary>Most links in a row; the profile's, unless the home says otherwise.</summary>
    public required int HopLimit { get; init; }

    /// <summary>Whether USB 3 storage is plugged in beside the coordinator's stick.</summary>
    public bool IsBesideUsb3 { get; init; }

    /// <summary>Length of the extension lead between the hub and the stick, m; 0 without one.</summary>
    public double LeadMetres { get; init; }

    /// <summary>What was learnt from readings of it; null leaves everything to the catalogues.</summary>
    public NetworkFit? Fit { get; init; }

    /// <summary>Its carrier.</summary>
    public Frequency Carrier => Radio.Carrier(Channel);

    /// <summary>What hiding a device costs at its carrier, as fitted where it was.</summary>
    public Decibels LossOf(Mounting mounting) =>
        Decibels.Max(Decibels.Zero, mounting.LossAt(Carrier) + (Fit?.CorrectionOf(mounting) ?? Decibels.Zero));

    /// <summary>By how much USB 3 storage raises the noise floor of its coordinator.</summary>
    public Decibels HubNoise =>
        IsBesideUsb3 && SharedHubNoise.DisturbedMegahertz.Contains(Carrier.Megahertz) ? SharedHubNoise.Rise(LeadMetres) : Decibels.Zero;
}

/// <summary>A Wi-Fi access point of the home: a source of interference at 2.4 GHz.</summary>
public sealed record AccessPoint
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Its storey.</summary>
    public required StoreyName Storey { get; init; }

    /// <summary>Its place on the plan.</summary>
    public required PlanPoint Point { get; init; }

    /// <summary>Its height above the storey's floor, m.</summary>
    public required double HeightMetres { get; init; }

    /// <summary>IEEE 802.11 channel, 1 to 14.</summary>
    public required int Channel { get; init; }

    /// <summary>Channel width, MHz.</summary>
    public required int WidthMegahertz { get; init; }

    /// <summary>Radiated power, EIRP.</summary>
    public required PowerLevel Power { get; init; }

    /// <summary>Share of the time that it transmits, 0 to 1.</summary>
    public required double Busy { get; init; }
}

/// <summary>A named situation of the house.</summary>
public sealed record State
{
    /// <summary>Unique in the home.</summary>
    public required string Name { get; init; }

    /// <summary>Devices without power.</summary>
    public ImmutableArray<DeviceId> DevicesOff { get; init; } = [];

    /// <summary>Mains circuits without power.</summary>
    public ImmutableArray<string> CircuitsOff { get; init; } = [];

    /// <summary>Manual switches that are off.</summary>
    public ImmutableArray<string> SwitchesOff { get; init; } = [];

    /// <summary>Doors and windows that stand open.</summary>
    public ImmutableArray<string> Open { get; init; } = [];

    /// <summary>Whether every device that still has power must stay reachable in this state.</summary>
    public bool MustHold { get; init; }

    /// <summary>Whether a device has no power in this state.</summary>
    public bool TurnsOff(Device device) =>
        DevicesOff.Contains(device.Id)
        || (device.Circuit is { } circuit && CircuitsOff.Contains(circuit))
        || (device.SwitchedBy is { } manual && SwitchesOff.Contains(manual));
}

/// <summary>One measured level between two devices.</summary>
/// <param name="From">Sender.</param>
/// <param name="To">Receiver.</param>
/// <param name="Level">What the receiver reported; null when it heard nothing.</param>
/// <param name="Note">Anything else worth keeping.</param>
public sealed record Reading(DeviceId From, DeviceId To, PowerLevel? Level, string Note);

/// <summary>Small-scale fading that planning allows for, within the few centimetres around a device.</summary>
public enum Fading
{
    /// <summary>None: a link is held against the mean level of its surroundings.</summary>
    None,

    /// <summary>Many waves of like strength.</summary>
    Rayleigh,

    /// <summary>One steady wave among weaker ones.</summary>
    Rician,
}

/// <summary>The parameters of planning, with defaults where the home says nothing.</summary>
public sealed record PlanningParameters
{
    /// <summary>Path-loss exponent: 2 with walls counted one by one, as COST 231 multi-wall does.</summary>
    public double Exponent { get; init; } = 2.0;

    /// <summary>What the way round walls costs in the model that has one.</summary>
    public Decibels Detour { get; init; } = new(Propagation.Detour.UsualDb);

    /// <summary>Standard deviation of log-normal shadowing. 5 dB is ITU-R P.1238-13's office figure out of sight (5.01 dB).</summary>
    public Decibels Shadowing { get; init; } = new(5);

    /// <summary>Share of cases in which a planned link must hold, within <see cref="FadingMargin.Availability"/>.</summary>
    public double Availability { get; init; } = 0.9;

    /// <summary>Small-scale fading that the design margin allows for on top of shadowing.</summary>
    public Fading Fading { get; init; }

    /// <summary>Steady over scattered power with <see cref="Fading.Rician"/>: 6 dB, assumed for a link within a room.</summary>
    public Decibels SteadyToScattered { get; init; } = new(6);

    /// <summary>Direction of north on the plan, degrees clockwise from up the page.</summary>
    public double NorthDegrees { get; init; }

    /// <summary>The margin that a link must have to be planned with: shadowing, and fading on it where that is chosen.</summary>
    public Decibels DesignMargin => Fading switch
    {
        Fading.None => FadingMargin.LogNormal(Shadowing, Availability),
        Fading.Rayleigh => FadingMargin.Suzuki(Shadowing, Availability),
        Fading.Rician => FadingMargin.ShadowedRician(SteadyToScattered, Shadowing, Availability),
        _ => throw new InvalidOperationException($"no such fading: {Fading}"),
    };
}

/// <summary>Everything about one building.</summary>
public sealed record Home
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Region whose band limits apply, such as "EU".</summary>
    public required string Region { get; init; }

    /// <summary>The building.</summary>
    public required FloorPlan FloorPlan { get; init; }

    /// <summary>The constructions that its floor plan names, and all others that it may use.</summary>
    public required ImmutableDictionary<ConstructionName, Construction> Constructions { get; init; }

    /// <summary>Its networks, in the order written.</summary>
    public ImmutableArray<Network> Networks { get; init; } = [];

    /// <summary>Its devices, in the order written.</summary>
    public ImmutableArray<Device> Devices { get; init; } = [];

    /// <summary>Where a repeater could go, in the order written; assumed along the walls when none is listed.</summary>
    public ImmutableArray<Outlet> Outlets { get; init; } = [];

    /// <summary>Its Wi-Fi access points.</summary>
    public ImmutableArray<AccessPoint> AccessPoints { get; init; } = [];

    /// <summary>Its mains circuits of which the isolation point is known, in the order written.</summary>
    public ImmutableArray<Circuit> Circuits { get; init; } = [];

    /// <summary>Its named states.</summary>
    public ImmutableArray<State> States { get; init; } = [];

    /// <summary>What was measured.</summary>
    public ImmutableArray<Reading> Readings { get; init; } = [];

    /// <summary>The band limits of its region.</summary>
    public ImmutableArray<BandLimit> BandLimits { get; init; } = [];

    /// <summary>How it is planned.</summary>
    public PlanningParameters Parameters { get; init; } = new();

    /// <summary>What changes of it cost.</summary>
    public PlacementCosts Costs { get; init; } = new();

    /// <summary>How one network is planned: as the home says, or with exponent, way round and shadowing as they were fitted to its readings.</summary>
    public PlanningParameters ParametersOf(Network network) => network.Fit is { } fit
        ? Parameters with { Exponent = fit.Exponent, Detour = fit.Detour ?? Parameters.Detour, Shadowing = fit.Shadowing }
        : Parameters;

    /// <summary>The path-loss model of one network, with what was fitted, in a state of the house.</summary>
    /// <param name="network">The network.</param>
    /// <param name="name">Which model.</param>
    /// <param name="state">Which doors stand open; null for none.</param>
    /// <exception cref="ArgumentException">The state opens a door that the home does not have.</exception>
    public IPathLossModel ModelOf(Network network, ModelName name, State? state) => PathLossModels.Create(
        name,
        FloorPlan.WithOpen(state?.Open ?? []),
        Constructions,
        network.Carrier,
        ParametersOf(network).Exponent,
        ParametersOf(network).Detour.Value,
        network.Fit?.Corrections);

    /// <summary>The devices of one network, in the order written.</summary>
    public IEnumerable<Device> DevicesOf(Network network) => Devices.Where(device => device.Network == network.Name);

    /// <summary>Where a device is in the building.</summary>
    public Position PositionOf(Device device) => FloorPlan.PositionOf(device.Storey, device.Point, device.HeightMetres);

    /// <summary>Where an access point is in the building.</summary>
    public Position PositionOf(AccessPoint point) => FloorPlan.PositionOf(point.Storey, point.Point, point.HeightMetres);

    /// <summary>Where an outlet is in the building.</summary>
    public Position PositionOf(Outlet outlet) => FloorPlan.PositionOf(outlet.Storey, outlet.Point, outlet.HeightMetres);
}
