using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Quantities;

namespace MeshSim.Fitting.Findings;

/// <summary>Something that readings say and the plan does not, with the likeliest physical reason to look for.</summary>
/// <param name="Pairs">How many pairs of devices speak of it.</param>
/// <param name="Support">By how much better the readings are explained with it, natural logarithm, the price of the search taken off.</param>
public abstract record Finding(int Pairs, double Support);

/// <summary>A device loses the same on all its paths, both ways: it sits in a metal box, or something metal is at its antenna.</summary>
/// <param name="Device">The device.</param>
/// <param name="Loss">What it loses.</param>
/// <param name="StandardError">One standard deviation of that.</param>
/// <param name="Pairs">How many pairs speak of it.</param>
/// <param name="Support">How well it explains them.</param>
public sealed record HiddenDevice(DeviceId Device, Decibels Loss, Decibels StandardError, int Pairs, double Support) : Finding(Pairs, Support);

/// <summary>A device is heard as if it were elsewhere: its place on the plan is wrong.</summary>
/// <param name="Device">The device.</param>
/// <param name="Storey">The storey where it is on the plan.</param>
/// <param name="Likeliest">The place on that storey that explains its readings best.</param>
/// <param name="Pairs">How many pairs speak of it.</param>
/// <param name="Support">How well it explains them.</param>
public sealed record MovedDevice(DeviceId Device, StoreyName Storey, PlanPoint Likeliest, int Pairs, double Support) : Finding(Pairs, Support);

/// <summary>All paths through one element lose more, or less, than through others of its construction: it is built of something else.</summary>
/// <param name="Element">What it is, such as "wall hall | kitchen".</param>
/// <param name="Construction">What the plan says that it is built of.</param>
/// <param name="Loss">How much more it costs; negative when less.</param>
/// <param name="StandardError">One standard deviation of that.</param>
/// <param name="Pairs">How many pairs speak of it.</param>
/// <param name="Support">How well it explains them.</param>
public sealed record OtherElement(
    string Element, ConstructionName Construction, Decibels Loss, Decibels StandardError, int Pairs, double Support) : Finding(Pairs, Support);

/// <summary>One path alone that nothing explains: something metal in just that way, a door that stood open, a reading gone wrong.</summary>
/// <param name="First">One end.</param>
/// <param name="Second">The other.</param>
/// <param name="Excess">By how much more arrived than fits; negative when less.</param>
/// <param name="Deviations">The same in standard deviations.</param>
public sealed record OddPath(DeviceId First, DeviceId Second, Decibels Excess, double Deviations);
