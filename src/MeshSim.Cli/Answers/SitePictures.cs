using MeshSim.Cli.Outputs;
using MeshSim.Devices;
using MeshSim.Drawing;
using MeshSim.FloorPlans;
using MeshSim.Placement;
using MeshSim.Studies;
using MeshSim.Studies.Sites;

namespace MeshSim.Cli.Answers;

/// <summary>Pictures of recommended sites and their zones.</summary>
internal static class SitePictures
{
    /// <summary>Adds a picture of each storey that has a repeater or a part of a zone.</summary>
    /// <param name="folder">Where to.</param>
    /// <param name="answer">The recommendation.</param>
    /// <param name="format">Which kind of file.</param>
    /// <param name="step">Told each step as it begins.</param>
    public static void AddRepeaters(StagedFolder folder, PlacedNetwork answer, PictureFormat format, Action<string> step)
    {
        NetworkCoverage coverage = answer.Coverage;
        PictureNames names = new(coverage.Home);
        SitePlan plan = SitePlan.Of(answer.Placement, answer.Review);
        foreach (Storey storey in coverage.Home.FloorPlan.Storeys.Where(storey => plan.Shows(storey.Name)))
        {
            step($"Picture of {coverage.Network.Name}, {storey.Name}");
            folder.Add(names.Repeaters(coverage.Network.Name, storey.Name, format), SitePicture.Draw(coverage, storey.Name, plan, PictureSize.Default, format));
        }
    }

    /// <summary>Adds a picture of each storey that has a site or a part of the zone; devices are those of the first network.</summary>
    /// <param name="folder">Where to.</param>
    /// <param name="home">The home.</param>
    /// <param name="hub">The recommendation.</param>
    /// <param name="review">How firm it stands.</param>
    /// <param name="options">Model and state.</param>
    /// <param name="format">Which kind of file.</param>
    /// <param name="step">Told each step as it begins.</param>
    public static void AddHub(StagedFolder folder, Home home, HubPlacement hub, HubReview? review, StudyOptions options, PictureFormat format, Action<string> step)
    {
        PictureNames names = new(home);
        Network network = home.Networks.First(network => network.Name == hub.Networks[0]);
        NetworkCoverage coverage = CoverageStudy.Run(home, network, options);
        SitePlan plan = SitePlan.Of(hub, review);
        foreach (Storey storey in home.FloorPlan.Storeys.Where(storey => plan.Shows(storey.Name)))
        {
            step($"Picture of the hub, {storey.Name}");
            folder.Add(names.Hub(storey.Name, format), SitePicture.Draw(coverage, storey.Name, plan, PictureSize.Default, format));
        }
    }
}
