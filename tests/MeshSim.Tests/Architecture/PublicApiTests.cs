namespace MeshSim.Tests.Architecture;

/// <summary>
/// What others can call is a text that a person approved. To approve a change, run the tests with MESHSIM_APPROVE=1 and look at
/// the difference before committing it.
/// </summary>
public sealed class PublicApiTests
{
    [Theory]
    [InlineData("MeshSim")]
    [InlineData("MeshSim.Files")]
    [InlineData("MeshSim.Drawing")]
    public void The_public_members_are_the_approved_ones(string assembly)
    {
        string text = PublicApi.Of(SourceTree.Assembly(assembly));
        string file = Path.Combine(SourceTree.Root, "tests", "MeshSim.Tests", "Architecture", "Approved", assembly + ".txt");
        if (Environment.GetEnvironmentVariable("MESHSIM_APPROVE") == "1") File.WriteAllText(file, text);

        text.Should().Be(File.Exists(file) ? File.ReadAllText(file) : "", "that is what others may call in {0}", assembly);
    }
}
