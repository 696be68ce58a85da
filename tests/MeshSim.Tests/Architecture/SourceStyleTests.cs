using System.Globalization;
using System.Text.RegularExpressions;

namespace MeshSim.Tests.Architecture;

/// <summary>What no compiler checks: small files, names of the trade, one place for each kind of trouble.</summary>
public sealed partial class SourceStyleTests
{
    private const int LongestFileLines = 400;
    private const int MedianFileLines = 120;
    private const int MainFlowLines = 60;
    private const int LongestLineCharacters = 190;
    private const int LongestMethodLines = 80;
    private const int UsualMethodLines = 40;
    private const double UsualShare = 0.95;

    // Fewer would mean that the counting has gone wrong, not that the project has shrunk.
    private const int FewestMethods = 1000;

    private static readonly string[] NamesThatSayNothing =
        ["Interfaces", "Helpers", "Helper", "Utils", "Utilities", "Common", "Constants", "Models", "Manager", "Base", "Misc"];

    [Fact]
    public void No_source_file_is_long_and_the_median_is_short()
    {
        List<(string Path, string[] Lines)> files = [.. SourceTree.Files("src"), .. SourceTree.Files("tests")];

        files.Where(file => file.Lines.Length > LongestFileLines).Select(file => $"{file.Path}: {file.Lines.Length}").Should().BeEmpty();
        files.Select(file => file.Lines.Length).Order().ElementAt(files.Count / 2).Should().BeLessThanOrEqualTo(MedianFileLines);
    }

    [Fact]
    public void Lines_fit_a_wide_screen() =>
        SourceTree.Files("src").Concat(SourceTree.Files("tests"))
            .SelectMany(file => file.Lines.Select((line, index) => (Place: FormattableString.Invariant($"{file.Path}:{index + 1}"), line.Length)))
            .Where(line => line.Length > LongestLineCharacters)
            .Should().BeEmpty();

    [Fact]
    public void Methods_are_short()
    {
        (string Place, int Lines)[] longestFirst =
        [
            .. from file in SourceTree.Files("src").Concat(SourceTree.Files("tests"))
               from member in MemberLengths.In(file.Lines)
               where member.Lines > 0
               orderby member.Lines descending
               select ($"{file.Path}: {member.Member}", member.Lines),
        ];

        longestFirst.Should().HaveCountGreaterThan(FewestMethods);
        longestFirst.TakeWhile(member => member.Lines > LongestMethodLines).Should().BeEmpty();
        longestFirst.Count(member => member.Lines <= UsualMethodLines)
            .Should().BeGreaterThanOrEqualTo((int)Math.Ceiling(UsualShare * longestFirst.Length), "the five longest are {0}", longestFirst.Take(5));
    }

    [Fact]
    public void A_test_lies_where_the_type_that_it_is_named_for_lies()
    {
        foreach ((string path, _) in SourceTree.Files("tests"))
        {
            // The tests of this folder are about the project, whatever else their names also mean.
            if (TestFile().Match(path) is not { Success: true } file || file.Groups["folder"].Value == "Architecture/") continue;

            (string project, string folder) = (file.Groups["project"].Value, file.Groups["folder"].Value.TrimEnd('/').Replace('/', '.'));
            if (!SourceTree.IsAssembly(project)) continue;
            string[] homes =
            [
                .. SourceTree.Assembly(project).GetTypes()
                    .Where(type => type.Name == file.Groups["type"].Value && !type.IsNested)
                    .Select(type => type.Namespace!),
            ];
            if (homes.Length > 0) homes.Should().Contain($"{project}.{folder}".TrimEnd('.'), "{0} is named for a type there", path);
        }
    }

    [Fact]
    public void A_folder_is_a_namespace_and_a_concept()
    {
        foreach ((string path, string[] lines) in SourceTree.Files("src"))
        {
            string? declared = lines.FirstOrDefault(line => line.StartsWith("namespace ", StringComparison.Ordinal));
            if (declared is null) continue;

            string folder = Path.GetDirectoryName(path)!.Replace('\\', '/')["src/".Length..].Replace('/', '.');
            declared.Should().Be($"namespace {folder};", "{0} lies in that folder", path);
            path.Split('/', '.').Should().NotIntersectWith(NamesThatSayNothing, "{0} should be named for a concept", path);
        }
    }

    [Fact]
    public void The_terminal_is_touched_in_one_file()
    {
        Offenders("src", line => ConsoleUse().IsMatch(line), except: ["src/MeshSim.Cli/Program.cs"]).Should().BeEmpty();
        SourceTree.Files("src/MeshSim.Cli").Single(file => file.Path == "src/MeshSim.Cli/Program.cs").Lines.Length.Should().BeLessThanOrEqualTo(20);
    }

    [Fact]
    public void Vectors_and_pointers_live_in_kernels() =>
        Offenders("src", line => VectorUse().IsMatch(line) && !line.TrimStart().StartsWith("//", StringComparison.Ordinal))
            .Where(place => !place.Contains("Kernel.cs", StringComparison.Ordinal))
            .Should().BeEmpty();

    [Fact]
    public void Nothing_is_left_to_do_and_nothing_depends_on_the_clock() =>
        Offenders("src", line => Unfinished().IsMatch(line)).Should().BeEmpty();

    [Fact]
    public void The_main_flow_fits_on_one_screen()
    {
        foreach ((string path, string[] lines) in SourceTree.Files("src/MeshSim/Studies").Where(file => file.Path.EndsWith("Study.cs", StringComparison.Ordinal)))
            lines.Count(IsCode).Should().BeLessThanOrEqualTo(MainFlowLines, "{0} calls the stages and does nothing itself", path);
    }

    private static bool IsCode(string line) => line.Trim() is { Length: > 0 } text && !text.StartsWith("//", StringComparison.Ordinal);

    private static IEnumerable<string> Offenders(string folder, Func<string, bool> isOffence, params string[] except) =>
        from file in SourceTree.Files(folder)
        where !except.Contains(file.Path)
        from line in file.Lines.Index()
        where isOffence(line.Item)
        select string.Create(CultureInfo.InvariantCulture, $"{file.Path}({line.Index + 1}): {line.Item.Trim()}");

    [GeneratedRegex(@"^tests/(?<project>[\w.]+)\.Tests/(?<folder>.*/)?(?<type>\w+)Tests(\.\w+)?\.cs$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex TestFile();

    [GeneratedRegex(@"(^|[^\w.])Console\.", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex ConsoleUse();

    [GeneratedRegex(@"\bunsafe\b|Vector(128|256|512)|System\.Runtime\.Intrinsics", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex VectorUse();

    [GeneratedRegex(
        @"\bTODO\b|\bFIXME\b|\bHACK\b|NotImplementedException|DateTime(Offset)?\.(Utc)?Now|new Random\(\)|Random\.Shared",
        RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Unfinished();
}
