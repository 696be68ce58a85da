using System.Text;

namespace MeshSim.Files.Diagnostics;

/// <summary>What to say about a name that is not among the known ones.</summary>
public static class KnownNames
{
    private const int LongestShownText = 60;
    private const int MostListed = 12;
    private const int ShortestBeginning = 3;

    /// <summary>A text from a file, in quotes, fit for one line of output: shortened, control characters replaced.</summary>
    public static string Quote(string text)
    {
        StringBuilder shown = new("\"");
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (shown.Length > LongestShownText) return shown.Append("...\"").ToString();
            shown.Append(Rune.IsControl(rune) ? "?" : rune.ToString());
        }

        return shown.Append('"').ToString();
    }

    /// <summary>The nearest known name as a question, or the names to choose from.</summary>
    /// <param name="name">What was written.</param>
    /// <param name="known">What could have been meant, in the order to list them.</param>
    /// <param name="what">What the names stand for, in the plural: "rooms".</param>
    public static string Help(string name, IReadOnlyCollection<string> known, string what)
    {
        if (known.Count == 0) return $"there are no {what}";
        if (Nearest(name, known) is { } nearest) return $"did you mean {Quote(nearest)}?";
        if (known.Count <= MostListed) return $"known {what}: {string.Join(", ", known.Distinct().Select(Quote))}";
        return FormattableString.Invariant($"none of the {known.Count} {what} has a similar name");
    }

    /// <summary>
    /// The known name with the fewest edits from the name written, or else the first that it is the beginning of; null when
    /// none is near. Ties go to the first.
    /// </summary>
    public static string? Nearest(string name, IReadOnlyCollection<string> known)
    {
        string written = name.ToUpperInvariant();
        string? nearest = null;
        int limit = Math.Max(1, name.Length / 3);
        bool isShort = name.Length < ShortestBeginning;
        foreach (string candidate in known)
        {
            // A letter more or less is half of a short name: "UK" does not mean "US", but "UE" means "EU".
            if (isShort && !written.Order().SequenceEqual(candidate.ToUpperInvariant().Order())) continue;

            int distance = EditDistance(written, candidate.ToUpperInvariant(), limit);
            if (distance > limit) continue;
            nearest = candidate;
            limit = distance - 1;
            if (limit < 0) break;
        }

        if (nearest is not null || isShort) return nearest;
        return known.FirstOrDefault(candidate => candidate.StartsWith(name, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>
    /// Edits from one text to the other, a swap of neighbours counting as one (optimal string alignment).
    /// Once it is certain to exceed the limit the answer is limit + 1.
    /// </summary>
    public static int EditDistance(string a, string b, int limit)
    {
        if (Math.Abs(a.Length - b.Length) > limit) return limit + 1;

        int[] beforeLast = new int[b.Length + 1], last = [.. Enumerable.Range(0, b.Length + 1)], row = new int[b.Length + 1];
        for (int i = 1; i <= a.Length; i++)
        {
            row[0] = i;
            for (int j = 1; j <= b.Length; j++)
            {
                row[j] = Math.Min(Math.Min(last[j], row[j - 1]) + 1, last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1));
                bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
                if (swapped) row[j] = Math.Min(row[j], beforeLast[j - 2] + 1);
            }

            if (row.Min() > limit && last.Min() > limit) return limit + 1;
            (beforeLast, last, row) = (last, row, beforeLast);
        }

        return Math.Min(last[b.Length], limit + 1);
    }
}
