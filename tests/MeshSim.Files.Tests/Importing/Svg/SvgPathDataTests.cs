using System.Collections.Immutable;
using System.Globalization;
using CsCheck;
using MeshSim.Files.Importing.Svg;
using SkiaSharp;

namespace MeshSim.Files.Tests.Importing.Svg;

/// <summary>Against the path reader of an independent drawing library: both lines must lie on each other.</summary>
public sealed class SvgPathDataTests
{
    private const double FlattenTolerance = 0.02;

    // Seven digits of coordinates of a few hundred, and the steps in which that library measures its curves.
    private const double OtherTolerance = 0.08;

    private const double SampleStep = 0.5;

    private static readonly Gen<string> Number = Gen.Double[-60, 60].Select(number => number.ToString("0.###", CultureInfo.InvariantCulture));
    private static readonly Gen<string> Pair = Gen.Select(Number, Number, (x, y) => $"{x},{y}");
    // Radii of like size: where they must grow to reach both ends that library takes the root of a difference of single-precision
    // figures, and is wrong by some 0.0003 of the larger radius.
    private static readonly Gen<string> Arc = Gen.Select(Gen.Double[15, 45], Gen.Double[15, 45], Gen.Double[-180, 180], Gen.Bool, Gen.Bool, Pair, (rx, ry, turn, large, positive, end) =>
        FormattableString.Invariant($"{rx:0.###} {ry:0.###} {turn:0.##} {(large ? 1 : 0)} {(positive ? 1 : 0)} {end}"));

    private static readonly Gen<string> Command = Gen.OneOf(
        Gen.Select(AnyOf("L", "l", "T", "t", "M", "m"), Pair, (letter, pair) => letter + pair),
        Gen.Select(AnyOf("H", "h", "V", "v"), Number, (letter, number) => letter + number),
        Gen.Select(AnyOf("C", "c"), Pair, Pair, Pair, (letter, a, b, c) => $"{letter}{a} {b} {c}"),
        Gen.Select(AnyOf("S", "s", "Q", "q"), Pair, Pair, (letter, a, b) => $"{letter} {a} {b}"),
        Gen.Select(AnyOf("L", "l"), Pair, Pair, (letter, a, b) => $"{letter}{a} {b}"),
        Gen.Select(AnyOf("A", "a"), Arc, (letter, arc) => letter + arc),
        AnyOf("Z", "z"));

    private static Gen<string> AnyOf(params string[] letters) => Gen.Int[0, letters.Length - 1].Select(i => letters[i]);

    [Fact]
    public void Every_path_lies_on_that_of_the_independent_reader() =>
        Gen.Select(Pair, Command.Array[1, 8]).Sample((start, commands) =>
        {
            string text = $"M{start} {string.Join(' ', commands)}";
            ImmutableArray<Subpath> lines = SvgPathData.Parse(text, out int? wrongAt);
            wrongAt.Should().BeNull();

            SvgPoint[][] mine = [.. lines.Select(Corners).Where(corners => LengthOf(corners) > SampleStep)];
            using SKPath path = SKPath.ParseSvgPathData(text);
            SvgPoint[][] theirs = [.. Contours(path).Where(samples => LengthOf(samples) > SampleStep)];

            // Between two samples theirs is known to half a step: the tip of a fold lies no farther from the nearer one.
            Farthest(theirs, from: mine).Should().BeLessThan(FlattenTolerance + OtherTolerance, "{0}", text);
            Farthest(mine, from: theirs).Should().BeLessThan(FlattenTolerance + OtherTolerance + (SampleStep / 2), "{0}", text);
            double length = Lengths(path).Where(one => one > SampleStep).Sum();
            mine.Sum(LengthOf).Should().BeApproximately(length, 1 + (0.01 * length), "{0}", text);
        }, iter: 400);

    [Theory]
    [InlineData("M1-2.5.5-1", 1)]
    [InlineData("M 0 0 L 1,1,2,2 3 3", 1)]
    [InlineData("M0 0a1 1 0 0110 10", 1)]
    [InlineData("M0 0L1 1zL5 5", 2)]
    [InlineData("m 1 1 2 0 0 2 z m 5 5 1 0", 2)]
    [InlineData("M0 0 L1e1 1E-1", 1)]
    public void Numbers_run_into_each_other_as_the_grammar_lets_them(string text, int lines)
    {
        SvgPathData.Parse(text, out int? wrongAt).Length.Should().Be(lines);
        wrongAt.Should().BeNull();
    }

    [Theory]
    [InlineData("L 1 1", 0)]
    [InlineData("M 1", 3)]
    [InlineData("M 0 0 L 1 1 x", 12)]
    [InlineData("M 0 0 A 1 1 0 2 0 5 5", 14)]
    [InlineData("M 0 0 L 1 1,", 12)]
    public void Where_it_stops_making_sense_is_said(string text, int at)
    {
        SvgPathData.Parse(text, out int? wrongAt);
        wrongAt.Should().Be(at);
    }

    [Fact]
    public void Nothing_at_all_is_no_line()
    {
        SvgPathData.Parse("", out int? wrongAt).Should().BeEmpty();
        wrongAt.Should().BeNull();
    }

    private static SvgPoint[] Corners(Subpath line)
    {
        ImmutableArray<SvgPoint> corners = line.Flattened(FlattenTolerance);
        return line.IsClosed ? [.. corners, line.Start] : [.. corners];
    }

    private static IEnumerable<SvgPoint[]> Contours(SKPath path)
    {
        using SKPathMeasure measure = new(path, forceClosed: false, resScale: 20);
        do
        {
            int count = Math.Max(1, (int)Math.Ceiling(measure.Length / SampleStep));
            yield return [.. Enumerable.Range(0, count + 1).Select(i => At(measure, measure.Length * i / count))];
        }
        while (measure.NextContour());
    }

    private static IEnumerable<double> Lengths(SKPath path)
    {
        using SKPathMeasure measure = new(path, forceClosed: false, resScale: 20);
        do yield return measure.Length;
        while (measure.NextContour());
    }

    private static SvgPoint At(SKPathMeasure measure, float distance)
    {
        measure.GetPosition(distance, out SKPoint point);
        return new(point.X, point.Y);
    }

    private static double Farthest(SvgPoint[][] lines, SvgPoint[][] from) =>
        lines.SelectMany(line => line).Select(point => Distance(point, from)).DefaultIfEmpty(0).Max();

    private static double LengthOf(SvgPoint[] corners) => corners.Skip(1).Zip(corners, (b, a) => (b - a).Length).Sum();

    private static double Distance(SvgPoint point, SvgPoint[][] lines) =>
        lines.SelectMany(line => line.Skip(1).Zip(line, (b, a) => Distance(point, a, b))).DefaultIfEmpty(double.PositiveInfinity).Min();

    private static double Distance(SvgPoint point, SvgPoint a, SvgPoint b)
    {
        SvgPoint along = b - a, off = point - a;
        double square = (along.X * along.X) + (along.Y * along.Y);
        double share = square > 0 ? Math.Clamp(((off.X * along.X) + (off.Y * along.Y)) / square, 0, 1) : 0;
        return (off - (share * along)).Length;
    }
}
