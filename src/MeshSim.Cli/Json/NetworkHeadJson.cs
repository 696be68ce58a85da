using System.Text.Json.Serialization;
using MeshSim.Propagation;
using MeshSim.Studies;

namespace MeshSim.Cli.Json;

/// <summary>What an answer about one network begins with, as JSON; what else it says follows.</summary>
/// <param name="Coverage">The network, with model and state.</param>
internal abstract record NetworkHeadJson([property: JsonIgnore] NetworkCoverage Coverage)
{
    /// <summary>The home's name.</summary>
    [JsonPropertyOrder(-7)]
    public string Home => Coverage.Home.Name;

    /// <summary>The path-loss model.</summary>
    [JsonPropertyOrder(-6)]
    public ModelName Model => Coverage.Model;

    /// <summary>The state of the house; null when everything is on.</summary>
    [JsonPropertyOrder(-5)]
    public string? State => Coverage.State?.Name;

    /// <summary>The network.</summary>
    [JsonPropertyOrder(-4)]
    public string Network => Coverage.Network.Name.Value;

    /// <summary>The margin that a link must have to count, dB.</summary>
    [JsonPropertyOrder(-1)]
    public double DesignMarginDb => Coverage.DesignMargin.Value;
}

/// <summary>The same where the answer is about ways to the coordinator.</summary>
/// <param name="Coverage">The network, with model and state.</param>
internal abstract record WaysHeadJson(NetworkCoverage Coverage) : NetworkHeadJson(Coverage)
{
    /// <summary>The coordinator.</summary>
    [JsonPropertyOrder(-3)]
    public string Coordinator => Coverage.Network.Coordinator.Value;

    /// <summary>Most links in a row.</summary>
    [JsonPropertyOrder(-2)]
    public int HopLimit => Coverage.Network.HopLimit;
}
