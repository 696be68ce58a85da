using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Yaml;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Descriptions;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Files.Homes;

/// <summary>What <c>home.yaml</c> says, as far as it can be understood without the tables.</summary>
internal sealed record HomeDocument
{
    /// <summary>Name of the home; "" with an error.</summary>
    public required string Name { get; init; }

    /// <summary>Its region; "" with an error.</summary>
    public required string Region { get; init; }

    /// <summary>How it is planned.</summary>
    public required PlanningParameters Parameters { get; init; }

    /// <summary>What changes of it cost.</summary>
    public required PlacementCosts Costs { get; init; }

    /// <summary>Every construction that it may name, and those that it defines.</summary>
    public required ImmutableDictionary<ConstructionName, Construction> Constructions { get; init; }

    /// <summary>Its storeys, lowest first.</summary>
    public required ImmutableArray<StoreyDocument> Storeys { get; init; }

    /// <summary>Whether every storey that is listed has a name and is among <see cref="Storeys"/>.</summary>
    public required bool AreStoreysComplete { get; init; }

    /// <summary>Where the elements of the storeys were described.</summary>
    public required DescribedPlaces Places { get; init; }

    /// <summary>Its networks.</summary>
    public required ImmutableArray<NetworkDocument> Networks { get; init; }

    /// <summary>Whether every network that is listed has a name and is among <see cref="Networks"/>.</summary>
    public required bool AreNetworksComplete { get; init; }

    /// <summary>Its access points.</summary>
    public required ImmutableArray<AccessPointDocument> AccessPoints { get; init; }

    /// <summary>Its circuits.</summary>
    public required ImmutableArray<CircuitDocument> Circuits { get; init; }

    /// <summary>Its states.</summary>
    public required ImmutableArray<StateDocument> States { get; init; }
}

/// <summary>One storey as described.</summary>
/// <param name="Description">What could be understood.</param>
/// <param name="Place">Where it begins.</param>
/// <param name="RoomNames">Every room that is listed, understood or not.</param>
/// <param name="OpeningNames">Every door and window that is listed, understood or not, with its place.</param>
/// <param name="IsComplete">Whether everything was understood.</param>
internal sealed record StoreyDocument(
    StoreyDescription Description,
    SourcePlace Place,
    ImmutableArray<PlacedName> RoomNames,
    ImmutableArray<PlacedName> OpeningNames,
    bool IsComplete);

/// <summary>One network as described.</summary>
/// <param name="Name">Its name and where it stands.</param>
/// <param name="Radio">Its radio; null with an error.</param>
/// <param name="Channel">Its channel.</param>
/// <param name="Coordinator">The device that it names as its coordinator; null with an error.</param>
/// <param name="HopLimit">Most links in a row; null takes the radio's.</param>
/// <param name="IsBesideUsb3">Whether USB 3 storage is beside its stick.</param>
/// <param name="LeadMetres">Length of the stick's extension lead, m.</param>
internal sealed record NetworkDocument(
    PlacedName Name, RadioProfile? Radio, int Channel, PlacedName? Coordinator, int? HopLimit, bool IsBesideUsb3, double LeadMetres)
{
    /// <summary>The network; only when neither radio nor coordinator is missing.</summary>
    public Network ToNetwork() => new()
    {
        Name = new(Name.Name),
        Radio = Radio!,
        Channel = Channel,
        Coordinator = new(Coordinator!.Value.Name),
        HopLimit = HopLimit ?? Radio!.HopLimit,
        IsBesideUsb3 = IsBesideUsb3,
        LeadMetres = LeadMetres,
    };
}

/// <summary>One access point as described.</summary>
internal sealed record AccessPointDocument
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Its storey and where that is written.</summary>
    public required PlacedName Storey { get; init; }

    /// <summary>Its place on the plan.</summary>
    public required PlanPoint Point { get; init; }

    /// <summary>Its height above the storey's floor, m.</summary>
    public required double HeightMetres { get; init; }

    /// <summary>Where its height is written.</summary>
    public required SourcePlace HeightPlace { get; init; }

    /// <summary>IEEE 802.11 channel.</summary>
    public required int Channel { get; init; }

    /// <summary>Channel width, MHz.</summary>
    public required int WidthMegahertz { get; init; }

    /// <summary>Radiated power.</summary>
    public required PowerLevel Power { get; init; }

    /// <summary>Share of the time that it transmits.</summary>
    public required double Busy { get; init; }
}

/// <summary>One state as described.</summary>
/// <param name="Name">Its name.</param>
/// <param name="DevicesOff">Devices without power.</param>
/// <param name="CircuitsOff">Circuits without power.</param>
/// <param name="SwitchesOff">Switches that are off.</param>
/// <param name="Open">Doors and windows that stand open.</param>
/// <param name="MustHold">Whether every device with power must stay reachable.</param>
internal sealed record StateDocument(
    string Name,
    ImmutableArray<PlacedName> DevicesOff,
    ImmutableArray<PlacedName> CircuitsOff,
    ImmutableArray<PlacedName> SwitchesOff,
    ImmutableArray<PlacedName> Open,
    bool MustHold);
