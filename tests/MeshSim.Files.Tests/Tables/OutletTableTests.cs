using MeshSim.Files.Tests.Fixtures;

namespace MeshSim.Files.Tests.Tables;

/// <summary>What is said about outlets.csv.</summary>
public sealed class OutletTableTests
{
    [Theory]
    [InlineData("kitchen-1", "hall-1", "outlets.csv(3,1): error: two outlets are called \"hall-1\"; the first one is in line 2; give this one another name")]
    [InlineData(
        "id,storey",
        "ident,storey",
        "outlets.csv(1,1): error: unknown column \"ident\"; known columns: \"id\", \"storey\", \"x\", \"y\", \"height\", \"room\", \"circuit\" (else say in "
            + "columns.yaml what it is)",
        "outlets.csv(1,1): error: the column \"id\" is missing; add it to the first line; needed are id, storey, x, y, height")]
    [InlineData("ground,0.1,3", "attic,0.1,3", "outlets.csv(2,8): error: no storey is called \"attic\"; known storeys: \"ground\", \"first\"")]
    public void A_bad_field_is_reported_at_its_first_character(string find, string replacement, params string[] said) =>
        ChangedSample.Says("outlets.csv", find, replacement).Should().Equal(said);
}
