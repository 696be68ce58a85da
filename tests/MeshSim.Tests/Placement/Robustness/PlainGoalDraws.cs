using System.Collections.Immutable;
using MathNet.Numerics.Distributions;
using MeshSim.Mesh;
using MeshSim.Placement;
using MeshSim.Quantities;

namespace MeshSim.Tests.Placement.Robustness;

/// <summary>The experiment one draw at a time: every margin drawn, a new problem made, everything asked again. For unfitted networks.</summary>
internal sealed class PlainGoalDraws
{
    public PlainGoalDraws(SurveyedPlacement placement, double correlation, int draws, int seed)
    {
        var random = new Random(seed);
        RepeaterSurvey survey = placement.Survey;
        double sigmaDb = placement.Home.ParametersOf(placement.Network).Shadowing.Value;
        MarginUncertainties uncertainties = new(placement.Home, placement.Network);
        (Demand Demand, ReachGraph Graph)[] cases = [.. placement.Cases()];
        Dictionary<(RepeaterProblem, int, int), ImmutableArray<LossSlope>> slopes = [];
        foreach ((Situation situation, int index) in survey.Situations.Select((situation, index) => (situation, index)))
            foreach (int a in placement.Present)
                foreach (int b in placement.Present.Where(b => b > a))
                    slopes[(situation.Problem, a, b)] = uncertainties.SlopesOf(placement.Models[index].Between(placement.PlaceOf(a), placement.PlaceOf(b)), placement.MountingsOf(a, b));

        for (int draw = 0; draw < draws; draw++)
        {
            Dictionary<LossUnknown, double> unknowns = [];
            foreach (LossUnknown unknown in slopes.Values.SelectMany(all => all).Select(slope => slope.Unknown).Distinct()) unknowns[unknown] = Normal.Sample(random, 0, 1);
            double[] ofNode = [.. Enumerable.Range(0, survey.Problem.NodeCount).Select(_ => Normal.Sample(random, 0, sigmaDb * Math.Sqrt(correlation)))];
            Dictionary<(int, int), double> ofLink = slopes.Keys.Select(key => (key.Item2, key.Item3)).Distinct()
                .ToDictionary(pair => pair, _ => Normal.Sample(random, 0, sigmaDb * Math.Sqrt(1 - (2 * correlation))));
            for (int kind = 0; kind < 3; kind++)
            {
                Dictionary<RepeaterProblem, ReachGraph> graphs = survey.Situations.Select(situation => situation.Problem).Distinct()
                    .ToDictionary(problem => problem, problem => Drawn(problem, kind));
                bool goal = true;
                foreach ((Demand demand, _) in cases)
                {
                    ReachGraph graph = graphs[demand.Problem];
                    bool holds = (demand with { Problem = graph.Problem }).Reached(graph, graph.Chosen(placement.Chosen), isReached: false).IsEmpty;
                    if (demand is { Situation: 0, Lost: null } && holds) Everyday[kind]++;
                    goal &= holds;
                }

                if (goal) Goal[kind]++;
            }

            ReachGraph Drawn(RepeaterProblem old, int kind)
            {
                RepeaterProblem problem = new(old.Relays, old.Coordinator, old.OutletCount, old.HopLimit, old.DesignMargin, (a, b) =>
                    slopes.TryGetValue((old, a, b), out ImmutableArray<LossSlope> hangsOn)
                        ? old.Margin(a, b) + new Decibels(
                            (kind == 1 ? 0 : ofNode[a] + ofNode[b] + ofLink[(a, b)])
                            - (kind == 0 ? 0 : hangsOn.Sum(slope => slope.DeviationDb * unknowns[slope.Unknown])))
                        : new(double.NegativeInfinity));
                return problem.LinksAtLeast(kind == 1 ? old.DesignMargin : Decibels.Zero);
            }
        }
    }

    /// <summary>Draws in which every device is reached everyday: shadowing, losses, both.</summary>
    public int[] Everyday { get; } = new int[3];

    /// <summary>Draws in which all is had.</summary>
    public int[] Goal { get; } = new int[3];
}
