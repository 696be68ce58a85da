using System.Runtime.CompilerServices;

namespace MeshSim.Cli.Tests;

/// <summary>
/// Compares a text with the one that a person approved, kept in <c>Approved/</c>. To approve a new one, run the tests with
/// MESHSIM_APPROVE=1 and look at the difference before committing it.
/// </summary>
internal static class Approval
{
    public static void Verify(string text, string name, [CallerFilePath] string caller = "")
    {
        string folder = Path.GetDirectoryName(caller)!;
        while (!Directory.Exists(Path.Combine(folder, "Approved"))) folder = Path.GetDirectoryName(folder)!;
        string file = Path.Combine(folder, "Approved", name);
        if (Environment.GetEnvironmentVariable("MESHSIM_APPROVE") == "1") File.WriteAllText(file, text);
        text.Should().Be(File.Exists(file) ? File.ReadAllText(file) : "", "that is what {0} says", name);
    }
}
