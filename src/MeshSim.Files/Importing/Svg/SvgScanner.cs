using MeshSim.Quantities;

namespace MeshSim.Files.Importing.Svg;

/// <summary>Reads numbers, flags and words off the text of an attribute, as the grammars of SVG separate them.</summary>
/// <param name="text">The text.</param>
internal sealed class SvgScanner(string text)
{
    /// <summary>Characters read so far.</summary>
    public int At { get; private set; }

    /// <summary>Whether nothing but white space is left.</summary>
    public bool IsAtEnd
    {
        get
        {
            SkipSpace();
            return At == text.Length;
        }
    }

    /// <summary>The next character, or NUL at the end.</summary>
    public char Next => At < text.Length ? text[At] : '\0';

    /// <summary>Goes past white space.</summary>
    public void SkipSpace()
    {
        while (At < text.Length && text[At] is ' ' or '\t' or '\r' or '\n' or '\f') At++;
    }

    /// <summary>Goes past white space with at most one comma in it; whether there was a comma.</summary>
    public bool SkipComma()
    {
        SkipSpace();
        if (Next != ',') return false;
        At++;
        SkipSpace();
        return true;
    }

    /// <summary>Takes a character if it is next.</summary>
    public bool Take(char wanted)
    {
        SkipSpace();
        if (At >= text.Length || text[At] != wanted) return false;
        At++;
        return true;
    }

    /// <summary>Takes a word of ASCII letters; "" when none is next.</summary>
    public string Word()
    {
        SkipSpace();
        int start = At;
        while (At < text.Length && char.IsAsciiLetter(text[At])) At++;
        return text[start..At];
    }

    /// <summary>Takes a number; null when none is next or it is too large. A number ends where it can: "1-2.5.5" are three.</summary>
    public double? Number()
    {
        SkipSpace();
        int start = At, end = At;
        if (end < text.Length && text[end] is '+' or '-') end++;
        int digits = Digits(ref end);
        if (end < text.Length && text[end] == '.')
        {
            end++;
            digits += Digits(ref end);
        }

        if (digits == 0) return null;
        int exponent = end + 1;
        if (end < text.Length && text[end] is 'e' or 'E')
        {
            if (exponent < text.Length && text[exponent] is '+' or '-') exponent++;
            if (Digits(ref exponent) > 0) end = exponent;
        }

        if (NumberText.Parse(text.AsSpan(start, end - start)) is not { } number) return null;
        At = end;
        return number;
    }

    /// <summary>Takes a flag of an arc, which needs nothing to end it; null when none is next.</summary>
    public bool? Flag()
    {
        SkipSpace();
        if (Next is not ('0' or '1')) return null;
        return text[At++] == '1';
    }

    private int Digits(ref int at)
    {
        int start = at;
        while (at < text.Length && char.IsAsciiDigit(text[at])) at++;
        return at - start;
    }
}
