using MeshSim.Cli.Wording;
using MeshSim.Placement.Robustness;

namespace MeshSim.Cli.Tests.Wording;

public sealed class HubReviewWordsTests
{
    private static readonly PessimisticPlacement Same = new()
    {
        Repeaters = [],
        KeptOn = [],
        CostChange = 0,
        Fails = [],
        LostAsRecommended = [],
        IsSame = true,
        IsProven = true,
    };

    [Fact]
    public void Networks_of_which_the_same_is_said_are_named_together() =>
        Told(Same, Same).Should().ContainSingle().Which.Should().StartWith("plugs and lights: If exponent");

    [Fact]
    public void That_sites_are_not_compared_anew_is_said_where_something_changes()
    {
        const string Open = "All of that with the hub at the best site; whether another site would then be better is not worked out.";
        Told(Same, Same with { LostAsRecommended = [new("lamp")] }).Should().HaveCount(3).And.EndWith(Open);
        Told(Same, Same with { IsSame = false, Repeaters = Samples.Home.Outlets }).Should().HaveCount(3).And.EndWith(Open);
    }

    private static IEnumerable<string> Told(PessimisticPlacement plugs, PessimisticPlacement lights) => HubReviewWords.Pessimistic(new()
    {
        Zone = new() { Spare = [], Parts = [] },
        Networks = [new(Samples.Network.Name, null, null, plugs), new(new("lights"), null, null, lights)],
    });
}
