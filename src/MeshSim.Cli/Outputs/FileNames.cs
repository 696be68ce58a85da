using System.Text;

namespace MeshSim.Cli.Outputs;

/// <summary>Names of files made from the names that people give to networks and storeys.</summary>
internal static class FileNames
{
    /// <summary>Lower-case ASCII letters and digits, words joined by hyphens; "x" when nothing else is left.</summary>
    public static string Slug(string name)
    {
        var slug = new StringBuilder();
        foreach (char c in name.ToLowerInvariant())
        {
            if (char.IsAsciiLetterOrDigit(c)) slug.Append(c);
            else if (slug.Length > 0 && slug[^1] != '-') slug.Append('-');
        }

        string text = slug.ToString().TrimEnd('-');
        return text.Length == 0 ? "x" : text;
    }

    /// <summary>A slug for each name, in order; where two would be the same, the later one gets a number.</summary>
    public static IReadOnlyList<string> DistinctSlugs(IEnumerable<string> names)
    {
        var taken = new HashSet<string>(StringComparer.Ordinal);
        var slugs = new List<string>();
        foreach (string slug in names.Select(Slug))
        {
            string distinct = slug;
            for (int n = 2; !taken.Add(distinct); n++) distinct = FormattableString.Invariant($"{slug}-{n}");
            slugs.Add(distinct);
        }

        return slugs;
    }
}
