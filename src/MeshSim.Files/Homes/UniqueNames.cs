using MeshSim.Files.Diagnostics;
using MeshSim.Files.Yaml;

namespace MeshSim.Files.Homes;

/// <summary>Reports names that are given twice.</summary>
internal static class UniqueNames
{
    /// <summary>Reports every name that an earlier one already has.</summary>
    /// <param name="names">In the order written.</param>
    /// <param name="what">What one of them names, without article: "room".</param>
    /// <param name="problems">Takes the errors.</param>
    public static void Check(IEnumerable<PlacedName> names, string what, DiagnosticList problems)
    {
        Dictionary<string, SourcePlace> seen = [];
        foreach (PlacedName name in names)
        {
            if (seen.TryAdd(name.Name, name.Place)) continue;
            string help = FormattableString.Invariant($"the first one is in line {seen[name.Name].Line}; give this one another name");
            problems.Error(name.Place, $"two {what}s are called {KnownNames.Quote(name.Name)}", help);
        }
    }
}
