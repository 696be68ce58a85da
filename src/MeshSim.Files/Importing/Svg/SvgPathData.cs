using System.Collections.Immutable;

namespace MeshSim.Files.Importing.Svg;

/// <summary>Reads the attribute <c>d</c> of a path (SVG 1.1, section 8.3): all commands, upper and lower case.</summary>
internal sealed class SvgPathData
{
    private readonly SvgScanner scanner;
    private readonly List<Subpath> subpaths = [];
    private readonly ImmutableArray<CurveStep>.Builder steps = ImmutableArray.CreateBuilder<CurveStep>();
    private SvgPoint start, at;
    private bool isRelative;

    // The control point that a smooth curve mirrors: of the curve before it, of whatever kind that was.
    private (char Kind, SvgPoint Control) before;

    private SvgPathData(string text) => scanner = new(text);

    /// <summary>The lines of a path, or where its text stops making sense.</summary>
    /// <param name="text">The text.</param>
    /// <param name="wrongAt">Characters before the first that makes no sense; null when all of it does.</param>
    public static ImmutableArray<Subpath> Parse(string text, out int? wrongAt)
    {
        SvgPathData path = new(text);
        wrongAt = path.Read() ? null : path.scanner.At;
        return [.. path.subpaths];
    }

    private bool Read()
    {
        bool isFirst = true;
        while (!scanner.IsAtEnd)
        {
            char letter = scanner.Next;
            char command = char.ToUpperInvariant(letter);
            if (!"MLHVCSQTAZ".Contains(command, StringComparison.Ordinal) || (isFirst && command != 'M')) return false;
            scanner.Take(letter);
            isRelative = letter != command;
            isFirst = false;
            if (command == 'Z') Close();
            else if (!ReadSeries(command)) return false;
        }

        Finish(isClosed: false);
        return true;
    }

    /// <summary>One command with all its sets of numbers.</summary>
    private bool ReadSeries(char command)
    {
        bool isMove = command == 'M';
        do
        {
            if (!ReadOne(isMove ? 'M' : command == 'M' ? 'L' : command)) return false;
            isMove = false; // Further pairs after a move are lines.
        }
        while (HasMore());
        return true;
    }

    private bool HasMore() => scanner.SkipComma() || char.IsAsciiDigit(scanner.Next) || scanner.Next is '+' or '-' or '.';

    private bool ReadOne(char command) => command switch
    {
        'M' => Point() is { } to && MoveTo(to),
        'L' => Point() is { } to && LineTo(to),
        'H' => scanner.Number() is { } x && LineTo(new(isRelative ? at.X + x : x, at.Y)),
        'V' => scanner.Number() is { } y && LineTo(new(at.X, isRelative ? at.Y + y : y)),
        'C' => Point() is { } first && NextPoint() is { } second && NextPoint() is { } end && CurveTo('C', first, second, end, second),
        'S' => Point() is { } second && NextPoint() is { } end && CurveTo('C', Mirrored('C'), second, end, second),
        'Q' => Point() is { } control && NextPoint() is { } end && QuadraticTo(control, end),
        'T' => Point() is { } end && QuadraticTo(Mirrored('Q'), end),
        _ => ArcTo(),
    };

    private SvgPoint? Point()
    {
        if (scanner.Number() is not { } x) return null;
        scanner.SkipComma();
        if (scanner.Number() is not { } y) return null;
        return isRelative ? at + new SvgPoint(x, y) : new(x, y);
    }

    private SvgPoint? NextPoint()
    {
        scanner.SkipComma();
        return Point();
    }

    private SvgPoint Mirrored(char kind) => before.Kind == kind ? (2 * at) - before.Control : at;

    private bool MoveTo(SvgPoint to)
    {
        Finish(isClosed: false);
        (start, at, before) = (to, to, default);
        return true;
    }

    private bool LineTo(SvgPoint to)
    {
        steps.Add(CurveStep.To(to));
        (at, before) = (to, default);
        return true;
    }

    private bool CurveTo(char kind, SvgPoint first, SvgPoint second, SvgPoint end, SvgPoint control)
    {
        steps.Add(new(first, second, end, false));
        (at, before) = (end, (kind, control));
        return true;
    }

    // A quadratic curve is the cubic one whose control points lie two thirds of the way to its own.
    private bool QuadraticTo(SvgPoint control, SvgPoint end) =>
        CurveTo('Q', at + (2.0 / 3 * (control - at)), end + (2.0 / 3 * (control - end)), end, control);

    private bool ArcTo()
    {
        if (scanner.Number() is not { } rx) return false;
        scanner.SkipComma();
        if (scanner.Number() is not { } ry) return false;
        scanner.SkipComma();
        if (scanner.Number() is not { } turn) return false;
        scanner.SkipComma();
        if (scanner.Flag() is not { } isLarge) return false;
        scanner.SkipComma();
        if (scanner.Flag() is not { } isPositive || NextPoint() is not { } end) return false;
        steps.AddRange(SvgArc.Steps(at, new(rx, ry), turn, isLarge, isPositive, end));
        (at, before) = (end, default);
        return true;
    }

    private void Close()
    {
        Finish(isClosed: true);
        (at, before) = (start, default); // What follows without a move starts here again.
    }

    private void Finish(bool isClosed)
    {
        if (steps.Count > 0) subpaths.Add(new(start, steps.ToImmutable(), isClosed));
        steps.Clear();
    }
}
