namespace MeshSim.Files.Tests.Fixtures;

/// <summary>The sample home with one text replaced, and what is then said about it.</summary>
internal static class ChangedSample
{
    /// <summary>Every problem and every notice, as printed, the folder left out.</summary>
    /// <param name="file">Which file is changed.</param>
    /// <param name="find">The first place of this text.</param>
    /// <param name="replacement">What stands there instead.</param>
    public static string[] Says(string file, string find, string replacement)
    {
        using TemporaryFolder folder = Folder(file, find, replacement);
        return folder.Says();
    }

    /// <summary>The folder with the changed sample, for the caller to dispose of.</summary>
    /// <param name="file">Which file is changed.</param>
    /// <param name="find">The first place of this text.</param>
    /// <param name="replacement">What stands there instead.</param>
    public static TemporaryFolder Folder(string file, string find, string replacement)
    {
        string Change(string text)
        {
            int start = text.IndexOf(find, StringComparison.Ordinal);
            start.Should().BeGreaterThanOrEqualTo(0, "the sample holds the text to replace");
            return text[..start] + replacement + text[(start + find.Length)..];
        }

        return new TemporaryFolder().WithSample(
            file == "home.yaml" ? Change : null,
            file == "devices.csv" ? Change : null,
            file == "outlets.csv" ? Change : null,
            file == "readings.csv" ? Change : null);
    }
}
