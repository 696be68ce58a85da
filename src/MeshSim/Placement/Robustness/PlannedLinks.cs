using System.Collections.Immutable;
using MeshSim.Mesh;
using MeshSim.Propagation;

namespace MeshSim.Placement.Robustness;

/// <summary>A link of a recommendation that is followed, in every set of doors.</summary>
/// <param name="From">One end, as its place among the nodes present.</param>
/// <param name="To">The other.</param>
/// <param name="Doors">Per set of doors its margin and what that hangs on.</param>
internal sealed record PlannedLink(int From, int To, ImmutableArray<LinkInDoors> Doors);

/// <summary>A link with one set of doors.</summary>
/// <param name="MarginDb">Its margin as computed, dB.</param>
/// <param name="Slopes">What its loss hangs on: places in the list of unknowns and decibels for one standard deviation.</param>
internal sealed record LinkInDoors(double MarginDb, ImmutableArray<(int Unknown, double DeviationDb)> Slopes);

/// <summary>All links of a recommendation that is followed that could ever matter, with what they hang on.</summary>
internal sealed class PlannedLinks
{
    /// <summary>Beyond this many deviations a link stays what it is: the share on the far side is 1e-9.</summary>
    private const int Certain = 6;

    /// <summary>Traces the links.</summary>
    /// <param name="placement">The recommendation.</param>
    public PlannedLinks(SurveyedPlacement placement)
    {
        Nodes = placement.Present;
        Doors = [.. placement.Survey.Situations.Select(situation => situation.Problem).Distinct()];
        IPathLossModel[] models = [.. Doors.Select(problem => placement.Models[IndexOf(placement, problem)])];
        MarginUncertainties uncertainties = new(placement.Home, placement.Network);
        double shadowingDb = placement.Home.ParametersOf(placement.Network).Shadowing.Value;
        List<LossUnknown> unknowns = [];
        List<PlannedLink> links = [];
        for (int from = 0; from < Nodes.Length; from++)
        {
            for (int to = from + 1; to < Nodes.Length; to++)
            {
                if (!Doors[0].CanRelay(Nodes[from]) && !Doors[0].CanRelay(Nodes[to])) continue;
                PlannedLink link = new(from, to, [.. Doors.Zip(models, (problem, model) => InDoors(placement, (Nodes[from], Nodes[to]), problem, model, uncertainties, unknowns))]);
                if (link.Doors.Any(CanMatter)) links.Add(link);
            }
        }

        Links = [.. links];
        Unknowns = [.. unknowns];

        bool CanMatter(LinkInDoors link) => link.MarginDb + (Certain * (shadowingDb + link.Slopes.Sum(slope => Math.Abs(slope.DeviationDb)))) >= 0;
    }

    /// <summary>The nodes present, as nodes of the survey.</summary>
    public ImmutableArray<int> Nodes { get; }

    /// <summary>The sets of doors, each with the margins of its links.</summary>
    public ImmutableArray<RepeaterProblem> Doors { get; }

    /// <summary>What losses hang on.</summary>
    public ImmutableArray<LossUnknown> Unknowns { get; }

    /// <summary>The links.</summary>
    public ImmutableArray<PlannedLink> Links { get; }

    private static int IndexOf(SurveyedPlacement placement, RepeaterProblem problem)
    {
        for (int index = 0; index < placement.Survey.Situations.Length; index++)
            if (placement.Survey.Situations[index].Problem == problem) return index;
        throw new ArgumentException("is of no situation", nameof(problem));
    }

    private static LinkInDoors InDoors(
        SurveyedPlacement placement, (int From, int To) ends, RepeaterProblem problem, IPathLossModel model, MarginUncertainties uncertainties, List<LossUnknown> unknowns)
    {
        PathLoss path = model.Between(placement.PlaceOf(ends.From), placement.PlaceOf(ends.To));
        ImmutableArray<LossSlope> slopes = uncertainties.SlopesOf(path, placement.MountingsOf(ends.From, ends.To));
        return new(problem.Margin(ends.From, ends.To).Value, [.. slopes.Select(slope => (PlaceOf(slope.Unknown), slope.DeviationDb))]);

        int PlaceOf(LossUnknown unknown)
        {
            int place = unknowns.IndexOf(unknown);
            if (place >= 0) return place;
            unknowns.Add(unknown);
            return unknowns.Count - 1;
        }
    }
}
