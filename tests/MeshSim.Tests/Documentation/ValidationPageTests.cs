using System.Globalization;
using MeshSim.Tests.Architecture;

namespace MeshSim.Tests.Documentation;

/// <summary>docs/validation.md is what the comparisons give. To write it anew, run the tests with MESHSIM_APPROVE=1.</summary>
public sealed class ValidationPageTests
{
    private static readonly string Stored = Path.Combine(SourceTree.Root, "docs", "validation.md");

    [Fact]
    public void The_page_is_what_the_comparisons_give()
    {
        string page = ValidationPage.Write();
        if (Environment.GetEnvironmentVariable("MESHSIM_APPROVE") == "1") File.WriteAllText(Stored, page);
        page.Should().Be(File.Exists(Stored) ? File.ReadAllText(Stored) : "", "that is what docs/validation.md says");
    }

    [Fact]
    public void Every_value_of_the_page_is_within_its_tolerance()
    {
        foreach (PageTable table in ReproducedTables.All) table.Table.ShouldBeMet();
    }

    [Fact]
    public void Every_file_of_check_values_is_explained_and_compared()
    {
        string[] files =
        [
            .. Directory.EnumerateFiles(DataNotes.Folder, "*.csv", SearchOption.AllDirectories)
                .Select(file => Path.GetRelativePath(DataNotes.Folder, file).Replace('\\', '/')),
        ];
        DataNotes.Read().Keys.Should().BeEquivalentTo(files);

        // What other tables are computed from: the layers of the slabs, the observations of the regressions.
        string[] given = ["Materials/slab-definitions.csv", "Fitting/norris.csv", "Fitting/pontius.csv", "Fitting/longley.csv"];
        ReproducedTables.All.Select(table => table.Table.File).Concat(given).Distinct().Should().BeEquivalentTo(files);
    }

    [Fact]
    public void A_table_belongs_to_the_test_class_that_the_page_names()
    {
        Type[] classes = typeof(ValidationPageTests).Assembly.GetTypes();
        foreach (PageTable table in ReproducedTables.All) classes.Should().Contain(type => type.Name == table.TestClass);
        foreach ((string testClass, string test) in CheckedProperties.Groups.Concat(CheckedProperties.Libraries).SelectMany(group => group.Tests))
            classes.Single(type => type.Name == testClass).GetMethod(test).Should().BeDecoratedWith<FactAttribute>("{0}.{1} is a test", testClass, test);
    }

    [Fact]
    public void The_page_is_the_same_where_decimals_have_a_comma()
    {
        string page = ValidationPage.Write();
        CultureInfo before = CultureInfo.CurrentCulture;
        var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        comma.NumberFormat.NumberDecimalSeparator = ",";
        comma.NumberFormat.NegativeSign = "−";
        CultureInfo.CurrentCulture = comma;
        try
        {
            ValidationPage.Write().Should().Be(page);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
