namespace MeshSim.Cli.Tests.Commands;

/// <summary>A broken home folder ends every command the same way: each problem with its place, and nothing written.</summary>
public sealed class BrokenHomeTests
{
    private static readonly (string Name, string File, Func<string, string> Break, string Place)[] Defects =
    [
        ("an unknown key", "home.yaml", text => text.Replace("ceiling:", "cieling:", StringComparison.Ordinal), "home.yaml(6,5)"),
        ("a decimal comma", "devices.csv", text => text.Replace(",7.5,2,1,", ",\"7,5\",2,1,", StringComparison.Ordinal), "devices.csv(5,"),
        ("an unknown network", "devices.csv", text => text.Replace("water meter,meters", "water meter,metres", StringComparison.Ordinal), "devices.csv(7,"),
        ("an empty file", "home.yaml", _ => "", "home.yaml(1,1)"),
        ("a binary file", "home.yaml", _ => "\0\u0001\u0002\u0003", "home.yaml(1,"),
    ];

    private static readonly string[][] CommandLines =
    [
        ["check", "HOME"],
        ["links", "HOME", "--json"],
        ["routes", "HOME", "--out", "OUT"],
        ["repeaters", "HOME"],
        ["routers", "HOME", "--json"],
        ["rehearse", "HOME", "--out", "OUT"],
        ["explain", "HOME", "hall"],
        ["bands", "HOME", "--out", "OUT"],
        ["sheets", "HOME", "--out", "OUT"],
        ["compare", "HOME", "HOME", "--out", "OUT"],
        ["record", "HOME", "--out", "OUT"],
        ["map", "HOME", "--out", "OUT"],
        ["report", "HOME", "--out", "OUT"],
    ];

    public static TheoryData<int, int> Cases => [.. from defect in Enumerable.Range(0, Defects.Length)
                                                    from command in Enumerable.Range(0, CommandLines.Length)
                                                    select (defect, command)];

    [Theory]
    [MemberData(nameof(Cases))]
    public async Task Every_command_names_the_place_and_writes_nothing(int defect, int command)
    {
        (string name, string file, Func<string, string> breakIt, string place) = Defects[defect];
        using var temporary = new TemporaryFolder();
        string home = CopyOfTwoRooms(temporary);
        string path = Path.Combine(home, file);
        await File.WriteAllTextAsync(path, breakIt(await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken)), TestContext.Current.CancellationToken);
        IReadOnlyDictionary<string, string> before = temporary.Contents();

        Run run = await Run.Of([.. CommandLines[command].Select(word => word.Replace("HOME", home, StringComparison.Ordinal).Replace("OUT", temporary["out"], StringComparison.Ordinal))]);

        run.Code.Should().Be(2, name);
        run.Output.Should().BeEmpty();
        run.Error.Should().Contain(place, name).And.NotContain("   at ", "no stack trace helps a person");
        run.ErrorLines.Should().OnlyContain(line => line.Contains("): error: ", StringComparison.Ordinal), name);
        temporary.Contents().Should().BeEquivalentTo(before);
    }

    [Theory]
    [InlineData("/no/such/home")]
    [InlineData("")]
    public async Task A_folder_that_is_not_there_is_bad_input(string home)
    {
        Run run = await Run.Of("check", home);

        run.Code.Should().Be(2);
        run.Output.Should().BeEmpty();
        run.ErrorLines.Should().ContainSingle();
    }

    [Fact]
    public async Task A_home_without_devices_csv_is_bad_input()
    {
        using var temporary = new TemporaryFolder();
        string home = CopyOfTwoRooms(temporary);
        File.Delete(Path.Combine(home, "devices.csv"));

        Run run = await Run.Of("routes", home);

        run.Code.Should().Be(2);
        run.Error.Should().Contain("devices.csv(1,1)");
    }

    [Fact]
    public async Task All_problems_of_all_files_come_in_one_run()
    {
        using var temporary = new TemporaryFolder();
        string home = CopyOfTwoRooms(temporary);
        foreach ((_, string file, Func<string, string> breakIt, _) in Defects[..3])
        {
            string path = Path.Combine(home, file);
            await File.WriteAllTextAsync(path, breakIt(await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken)), TestContext.Current.CancellationToken);
        }

        Run run = await Run.Of("check", home);

        foreach ((_, _, _, string place) in Defects[..3]) run.Error.Should().Contain(place);
    }

    private static string CopyOfTwoRooms(TemporaryFolder temporary)
    {
        string home = temporary["home"];
        Directory.CreateDirectory(home);
        foreach (string file in Directory.EnumerateFiles(Run.TwoRooms)) File.Copy(file, Path.Combine(home, Path.GetFileName(file)));
        return home;
    }
}
