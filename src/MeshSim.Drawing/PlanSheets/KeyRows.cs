using System.Collections.Immutable;
using MeshSim.Drawing.Legends;

namespace MeshSim.Drawing.PlanSheets;

/// <summary>The heads of the columns of a table of devices.</summary>
internal sealed record KeyHeadRow() : ColumnRow(KeyTable.LineHeight + 6);

/// <summary>A network with the stroke of its routes.</summary>
/// <param name="Text">Its name, carrier, coordinator.</param>
/// <param name="Dash">Length of dashes, pixels; 0 for a line drawn through.</param>
internal sealed record KeyNetworkRow(string Text, float Dash) : ColumnRow(28);

/// <summary>A device.</summary>
/// <param name="Number">Its number on every sheet.</param>
/// <param name="Cells">Lines of text in each column.</param>
internal sealed record KeyDeviceRow(int Number, ImmutableArray<ImmutableArray<string>> Cells) : ColumnRow((KeyTable.LineHeight * Cells.Max(cell => cell.Length)) + 3);

/// <summary>A circuit.</summary>
/// <param name="Letter">Its letter on every sheet.</param>
/// <param name="Lines">Its name and where it is isolated.</param>
internal sealed record KeyCircuitRow(string Letter, ImmutableArray<string> Lines) : ColumnRow((KeyTable.LineHeight * Lines.Length) + 3);

/// <summary>A socket-outlet that no device is plugged into.</summary>
internal sealed record KeyOutletRow() : ColumnRow(26);
