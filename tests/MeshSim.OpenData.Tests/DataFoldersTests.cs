namespace MeshSim.OpenData.Tests;

public sealed class DataFoldersTests
{
    [Theory]
    [InlineData("flat-ble-2400")]
    [InlineData("sodindoorloc-wifi-2400")]
    [InlineData("siegen-lora-868-walls")]
    [InlineData("iotlab-802154-2400")]
    [InlineData("tetam-ble-2400")]
    [InlineData("prr-vs-rssi-802154")]
    [InlineData("optimisation")]
    public void A_data_set_says_where_it_comes_from(string dataSet) =>
        File.ReadAllText(Path.Combine(DataFolders.Of(dataSet), "PROVENANCE.md")).Should().MatchRegex("(?i)licen[cs]e", "a licence must be stated");
}
