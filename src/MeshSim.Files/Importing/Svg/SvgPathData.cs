using System.Collections.Immutable;

namespace MeshSim.Files.Importing.Svg;

/// <summary>Reads the attribute <c>d</c> of a path (SVG 1.1, section 8.3): all commands, upper and lower case.</summary>
internal sealed class SvgPathData
{
    private readonly SvgScanner _scanner;
    private readonly List<Subpath> _subpaths = [];
    private readonly ImmutableArray<CurveStep>.Builder _steps = ImmutableArray.CreateBuilder<CurveStep>();
    private SvgPoint _start, _at;
    private bool _isRelative;

    // The control point that a smooth curve mirrors: of the curve before it, of whatever kind that was.
    private (char Kind, SvgPoint Control) _before;

    private SvgPathData(string text) => _scanner = new(text);

    /// <summary>The lines of a path, or where its text stops making sense.</summary>
    /// <param name="text">The text.</param>
    /// <param name="wrongAt">Characters before the first that makes no sense; null when all of it does.</param>
    public static ImmutableArray<Subpath> Parse(string text, out int? wrongAt)
    {
        SvgPathData path = new(text);
        wrongAt = path.Read() ? null : path._scanner.At;
        return [.. path._subpaths];
    }

    private bool Read()
    {
        bool isFirst = true;
        while (!_scanner.IsAtEnd)
        {
            char letter = _scanner.Next;
            char command = char.ToUpperInvariant(letter);
            if (!"MLHVCSQTAZ".Contains(command, StringComparison.Ordinal) || (isFirst && command != 'M')) return false;
            _scanner.Take(letter);
            _isRelative = letter != command;
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

    private bool HasMore() => _scanner.SkipComma() || char.IsAsciiDigit(_scanner.Next) || _scanner.Next is '+' or '-' or '.';

    private bool ReadOne(char command) => command switch
    {
        'M' => Point() is { } to && MoveTo(to),
        'L' => Point() is { } to && LineTo(to),
        'H' => _scanner.Number() is { } x && LineTo(new(_isRelative ? _at.X + x : x, _at.Y)),
        'V' => _scanner.Number() is { } y && LineTo(new(_at.X, _isRelative ? _at.Y + y : y)),
        'C' => Point() is { } first && NextPoint() is { } second && NextPoint() is { } end && CurveTo('C', first, second, end, second),
        'S' => Point() is { } second && NextPoint() is { } end && CurveTo('C', Mirrored('C'), second, end, second),
        'Q' => Point() is { } control && NextPoint() is { } end && QuadraticTo(control, end),
        'T' => Point() is { } end && QuadraticTo(Mirrored('Q'), end),
        _ => ArcTo(),
    };

    private SvgPoint? Point()
    {
        if (_scanner.Number() is not { } x) return null;
        _scanner.SkipComma();
        if (_scanner.Number() is not { } y) return null;
        return _isRelative ? _at + new SvgPoint(x, y) : new(x, y);
    }

    private SvgPoint? NextPoint()
    {
        _scanner.SkipComma();
        return Point();
    }

    private SvgPoint Mirrored(char kind) => _before.Kind == kind ? (2 * _at) - _before.Control : _at;

    private bool MoveTo(SvgPoint to)
    {
        Finish(isClosed: false);
        (_start, _at, _before) = (to, to, default);
        return true;
    }

    private bool LineTo(SvgPoint to)
    {
        _steps.Add(CurveStep.To(to));
        (_at, _before) = (to, default);
        return true;
    }

    private bool CurveTo(char kind, SvgPoint first, SvgPoint second, SvgPoint end, SvgPoint control)
    {
        _steps.Add(new(first, second, end, false));
        (_at, _before) = (end, (kind, control));
        return true;
    }

    // A quadratic curve is the cubic one whose control points lie two thirds of the way to its own.
    private bool QuadraticTo(SvgPoint control, SvgPoint end) =>
        CurveTo('Q', _at + (2.0 / 3 * (control - _at)), end + (2.0 / 3 * (control - end)), end, control);

    private bool ArcTo()
    {
        if (_scanner.Number() is not { } rx) return false;
        _scanner.SkipComma();
        if (_scanner.Number() is not { } ry) return false;
        _scanner.SkipComma();
        if (_scanner.Number() is not { } turn) return false;
        _scanner.SkipComma();
        if (_scanner.Flag() is not { } isLarge) return false;
        _scanner.SkipComma();
        if (_scanner.Flag() is not { } isPositive || NextPoint() is not { } end) return false;
        _steps.AddRange(SvgArc.Steps(_at, new(rx, ry), turn, isLarge, isPositive, end));
        (_at, _before) = (end, default);
        return true;
    }

    private void Close()
    {
        Finish(isClosed: true);
        (_at, _before) = (_start, default); // What follows without a move starts here again.
    }

    private void Finish(bool isClosed)
    {
        if (_steps.Count > 0) _subpaths.Add(new(_start, _steps.ToImmutable(), isClosed));
        _steps.Clear();
    }
}
