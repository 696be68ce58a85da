namespace MeshSim.Files.Importing.Svg;

/// <summary>Reads the attribute <c>transform</c> (SVG 1.1, section 7.6).</summary>
internal static class SvgTransforms
{
    /// <summary>The map that a list of functions means, the first one outermost; null when the text is no such list.</summary>
    public static Affine? Parse(string text)
    {
        SvgScanner scanner = new(text);
        Affine all = Affine.Identity;
        while (!scanner.IsAtEnd)
        {
            string name = scanner.Word();
            if (Arguments(scanner) is not { } numbers || Of(name, numbers) is not { } one) return null;
            all = all.Around(one);
            scanner.SkipComma();
        }

        return all.IsFinite ? all : null;
    }

    private static List<double>? Arguments(SvgScanner scanner)
    {
        if (!scanner.Take('(')) return null;
        List<double> numbers = [];
        while (!scanner.Take(')'))
        {
            if (numbers.Count > 0) scanner.SkipComma();
            if (scanner.Number() is not { } number) return null;
            numbers.Add(number);
        }

        return numbers;
    }

    private static Affine? Of(string name, List<double> n) => (name, n.Count) switch
    {
        ("matrix", 6) => new Affine(n[0], n[1], n[2], n[3], n[4], n[5]),
        ("translate", 1) => Affine.Move(n[0], 0),
        ("translate", 2) => Affine.Move(n[0], n[1]),
        ("scale", 1) => Affine.Scale(n[0], n[0]),
        ("scale", 2) => Affine.Scale(n[0], n[1]),
        ("rotate", 1) => Affine.Turn(n[0]),
        ("rotate", 3) => Affine.Move(n[1], n[2]).Around(Affine.Turn(n[0])).Around(Affine.Move(-n[1], -n[2])),
        ("skewX", 1) => new Affine(1, 0, Math.Tan(n[0] * Math.PI / 180), 1, 0, 0),
        ("skewY", 1) => new Affine(1, Math.Tan(n[0] * Math.PI / 180), 0, 1, 0, 0),
        _ => null,
    };
}
