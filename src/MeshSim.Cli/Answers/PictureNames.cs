using System.Collections.Immutable;
using MeshSim.Cli.Outputs;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.Studies;

namespace MeshSim.Cli.Answers;

/// <summary>How the files of some answers are called: after the network and the storey, joined by a sign that no slug has.</summary>
internal sealed class PictureNames
{
    private readonly Dictionary<NetworkName, string> networks;
    private readonly Dictionary<StoreyName, string> storeys;

    /// <summary>Names the files of some answers.</summary>
    public PictureNames(ImmutableArray<NetworkAnswer> answers)
    {
        networks = Named([.. answers.Select(answer => answer.Coverage.Network.Name)], name => name.Value);
        storeys = Named([.. answers.SelectMany(answer => answer.Maps).Select(map => map.Storey).Distinct()], name => name.Value);
    }

    /// <summary>The picture of a map.</summary>
    public string Picture(MarginMap map) => $"margin_{networks[map.Network]}_{storeys[map.Storey]}.png";

    /// <summary>The values of a network's maps.</summary>
    public string Values(NetworkName network) => $"margin_{networks[network]}.csv";

    private static Dictionary<T, string> Named<T>(List<T> names, Func<T, string> text)
        where T : notnull =>
        names.Zip(FileNames.DistinctSlugs(names.Select(text))).ToDictionary(pair => pair.First, pair => pair.Second);
}
