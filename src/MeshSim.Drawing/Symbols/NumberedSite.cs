using MeshSim.Devices;

namespace MeshSim.Drawing.Symbols;

/// <summary>An outlet with the number that it has in a list.</summary>
/// <param name="Number">The number, from 1.</param>
/// <param name="Outlet">The outlet.</param>
public sealed record NumberedSite(int Number, Outlet Outlet);
