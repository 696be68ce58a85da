using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Homes;
using MeshSim.Files.Sources;

namespace MeshSim.Files.Tables;

/// <summary>Reads <c>outlets.csv</c>.</summary>
internal static class OutletTable
{
    /// <summary>Columns that must be there.</summary>
    public static readonly ImmutableArray<string> Required = ["id", "storey", "x", "y", "height"];

    /// <summary>Columns that may be there.</summary>
    public static readonly ImmutableArray<string> Optional = ["room", "circuit"];

    /// <summary>Most outlets of a home: each is tried against every device.</summary>
    public const int MostOutlets = 1000;

    /// <summary>The outlets that could be read, in the order written; null with an error when it is no table of outlets.</summary>
    /// <param name="file">The file.</param>
    /// <param name="names">What its columns are called.</param>
    /// <param name="home">What <c>home.yaml</c> says; null when nothing could be made of it.</param>
    /// <param name="storeys">Its storeys as built, or null.</param>
    /// <param name="circuits">Takes every circuit, whether the rest of its row could be read or not.</param>
    /// <param name="problems">Takes the errors and notices.</param>
    public static ImmutableArray<Outlet>? Read(
        SourceFile file,
        ColumnNames names,
        HomeDocument? home,
        IReadOnlyList<BuiltStorey>? storeys,
        ISet<string> circuits,
        DiagnosticList problems)
    {
        if (CsvTable.Read(file, Required, Optional, problems, names.For(file)) is not { } table) return null;
        if (RowLimit.IsExceeded(table, MostOutlets, "outlets", problems)) return null;

        RoomFinder rooms = new(storeys, home is { AreStoreysComplete: true }, problems);
        UniqueNames ids = new("outlet", problems);
        ImmutableArray<Outlet>.Builder outlets = ImmutableArray.CreateBuilder<Outlet>();
        foreach (RowReader row in table.Rows.Select(row => new RowReader(row, problems)))
        {
            string? id = row.RequiredText("id"), circuit = row.Text("circuit");
            if (id is not null) ids.Add(new(id, row.PlaceOf("id")));
            if (circuit is not null) circuits.Add(circuit);
            if (rooms.Find(row) is not { } place || id is null) continue;
            outlets.Add(new()
            {
                Id = new(id),
                Storey = place.Storey,
                Point = place.Point,
                HeightMetres = place.HeightMetres,
                Room = place.Room,
                Circuit = circuit,
            });
        }

        return outlets.ToImmutable();
    }
}
