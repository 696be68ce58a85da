using MeshSim.Devices;
using MeshSim.Files;
using MeshSim.Mesh;
using MeshSim.Mesh.Reliability;
using MeshSim.Placement;
using MeshSim.Placement.Robustness;
using MeshSim.Radio;
using MeshSim.Tests.Architecture;
using MeshSim.Tests.Placement.Zones;

namespace MeshSim.Tests.Placement.Robustness;

public sealed class GoalDrawsTests
{
    /// <summary>A share that is drawn lies further from the truth than this many of its deviations less than once in 15,000 times.</summary>
    private const double Deviations = 4;

    private const int Draws = 40_000;

    private static readonly Home Terrace = HomeFolder.Read(Path.Combine(SourceTree.Root, "floorplans", "quay-terrace")).Home!;

    [Fact]
    public void One_repeater_in_a_row_keeps_its_promise_as_often_as_its_three_links_say()
    {
        // Nothing is unknown but the exponent, and nothing is correlated: every probability follows from three margins.
        Home home = PlacedHomes.Row(hopLimit: 3, deviceMetres: [200], outletMetres: [90]);
        (_, SurveyedPlacement surveyed) = PlacedHomes.Of(home, PlacementGoals.OneWayEveryday);
        GoalChances chances = GoalDraws.Estimate(surveyed, new() { Draws = Draws, Seed = 3, Correlation = 0 });

        RepeaterProblem problem = surveyed.Survey.Problem;
        double sigmaDb = home.Parameters.Shadowing.Value, designDb = problem.DesignMargin.Value;
        (double Db, double Slope) up = Link(0, 2, 90), down = Link(1, 2, 110), direct = Link(0, 1, 200);
        double shadowing = Connected(0);
        double losses = 1 - NormalDistribution.Tail(Math.Min((up.Db - designDb) / up.Slope, (down.Db - designDb) / down.Slope));
        double both = Integrated(z => Connected(z));

        Near(chances.Goal.Shadowing, shadowing);
        Near(chances.Goal.Losses, losses);
        Near(chances.Goal.Both, both);
        chances.Everyday.Should().Be(chances.Goal, "nothing else was asked");
        chances.Devices.Single().Connected.Should().Be(chances.Everyday.Both.Held);

        (double, double) Link(int a, int b, double metres) => (problem.Margin(a, b).Value, MarginUncertainties.ExponentDeviation * 10 * Math.Log10(metres));

        double Exists((double Db, double Slope) link, double z) => 1 - NormalDistribution.Tail((link.Db - (z * link.Slope)) / sigmaDb);

        double Connected(double z) => 1 - ((1 - Exists(direct, z)) * (1 - (Exists(up, z) * Exists(down, z))));
    }

    [Fact]
    public void On_quay_terrace_a_plain_experiment_agrees()
    {
        const int plainDraws = 4000;
        (_, SurveyedPlacement surveyed) = PlacedHomes.Of(Terrace, PlacementGoals.Default);
        GoalChances chances = GoalDraws.Estimate(surveyed, new() { Draws = Draws });
        PlainGoalDraws plain = new(surveyed, LinkShadowing.DefaultCorrelation, plainDraws, seed: 7);

        Alike(chances.Everyday.Shadowing, plain.Everyday[0]);
        Alike(chances.Everyday.Losses, plain.Everyday[1]);
        Alike(chances.Everyday.Both, plain.Everyday[2]);
        Alike(chances.Goal.Shadowing, plain.Goal[0]);
        Alike(chances.Goal.Losses, plain.Goal[1]);
        Alike(chances.Goal.Both, plain.Goal[2]);
        new[] { chances.Goal.Shadowing, chances.Goal.Losses, chances.Goal.Both }.Should().OnlyContain(share => share.Held > 0 && share.Held < Draws, "chance must have a say");

        void Alike(DrawnShare share, int held)
        {
            double p = share.Probability, deviation = Math.Sqrt(p * (1 - p) * ((1.0 / plainDraws) + (1.0 / Draws)));
            ((double)held / plainDraws).Should().BeApproximately(p, Deviations * deviation);
        }
    }

    [Fact]
    public void The_same_seed_gives_the_same_counts_and_another_one_others()
    {
        (_, SurveyedPlacement surveyed) = PlacedHomes.Of(Terrace, PlacementGoals.OneWayEveryday);
        GoalChances once = GoalDraws.Estimate(surveyed, new() { Draws = 1000 }), again = GoalDraws.Estimate(surveyed, new() { Draws = 1000 });
        again.Goal.Should().Be(once.Goal);
        again.Devices.Should().Equal(once.Devices);
        GoalDraws.Estimate(surveyed, new() { Draws = 1000, Seed = 2 }).Goal.Should().NotBe(once.Goal);
    }

    [Fact]
    public void Draws_outside_their_range_are_refused()
    {
        (_, SurveyedPlacement surveyed) = PlacedHomes.Of(PlacedHomes.Row(3, [200], [100]), PlacementGoals.OneWayEveryday);
        Action none = () => GoalDraws.Estimate(surveyed, new() { Draws = 0 });
        none.Should().Throw<ArgumentOutOfRangeException>();
    }

    private static void Near(DrawnShare share, double probability) =>
        share.Probability.Should().BeApproximately(probability, Deviations * Math.Sqrt(probability * (1 - probability) / share.Draws));

    /// <summary>The mean over a normal number, by the trapezoidal rule: for so smooth a function exact to more digits than are drawn.</summary>
    private static double Integrated(Func<double, double> of)
    {
        const double step = 0.01, far = 8;
        double sum = 0;
        for (double z = -far; z <= far; z += step) sum += of(z) * Math.Exp(-z * z / 2);
        return sum * step / Math.Sqrt(2 * Math.PI);
    }
}
