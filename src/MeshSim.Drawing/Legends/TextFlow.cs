using MeshSim.Drawing.Inks;

namespace MeshSim.Drawing.Legends;

/// <summary>Fits text into a width.</summary>
internal static class TextFlow
{
    /// <summary>The text broken between words into lines that fit; a word that does not fit alone is cut.</summary>
    /// <param name="text">One paragraph.</param>
    /// <param name="style">How it is set.</param>
    /// <param name="widthPixels">Width of the column.</param>
    /// <param name="ink">Measures.</param>
    public static IEnumerable<string> Lines(string text, TextStyle style, float widthPixels, Ink ink)
    {
        string line = "";
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string longer = line.Length == 0 ? word : line + " " + word;
            if (line.Length > 0 && ink.WidthOf(longer, style) > widthPixels)
            {
                yield return Cut(line, style, widthPixels, ink);
                longer = word;
            }

            line = longer;
        }

        if (line.Length > 0) yield return Cut(line, style, widthPixels, ink);
    }

    /// <summary>The text, or its longest beginning that fits together with an ellipsis.</summary>
    public static string Cut(string text, TextStyle style, float widthPixels, Ink ink)
    {
        if (ink.WidthOf(text, style) <= widthPixels) return text;
        int length = text.Length;
        while (length > 0 && ink.WidthOf(string.Concat(text.AsSpan(0, length), "…"), style) > widthPixels) length--;
        if (length > 0 && char.IsHighSurrogate(text[length - 1])) length--;
        return string.Concat(text.AsSpan(0, length), "…");
    }
}
