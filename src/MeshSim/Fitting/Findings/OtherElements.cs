using MeshSim.Fitting.Estimation;
using MeshSim.FloorPlans;
using MeshSim.Quantities;

namespace MeshSim.Fitting.Findings;

/// <summary>Walls, doors, floors and objects through which all paths lose more, or less, than through others of their construction.</summary>
internal static class OtherElements
{
    /// <summary>Every element that enough pairs cross and that is not yet a surprise.</summary>
    public static IEnumerable<Candidate> Candidates(Glance glance)
    {
        var crossed = Crossings(glance).GroupBy(crossing => crossing.Element).OrderBy(group => group.Key, StringComparer.Ordinal).ToArray();
        foreach (var element in crossed)
        {
            Dictionary<int, double> slopes = element.GroupBy(crossing => crossing.Pair).ToDictionary(pair => pair.Key, pair => pair.Sum(crossing => crossing.Slope));
            ConstructionName construction = element.First().Construction;
            bool isKnown = glance.Observations.IndexOf(UnknownKind.ElementLoss, element.Key) is not null;
            if (slopes.Count < FindingSearch.FewestPairs || isKnown) continue;
            PathUnknown unknown = FitPriors.ElementLoss(element.Key);
            double price = Glance.Price(crossed.Length, 1, slopes.Count);
            yield return new(glance.Gain([.. slopes.Keys], pair => -slopes[pair], unknown.Prior) - price, InFull);

            Surprise InFull(Glance before)
            {
                (FitProblem problem, MapEstimate estimate, double gain) = before.Refit(unknown);
                int last = estimate.Parameters.Count - 1;
                Decibels loss = new(estimate.Parameters[last]), error = new(estimate.StandardError(last));
                return new(new OtherElement(element.Key, construction, loss, error, slopes.Count, gain - price), problem, estimate);
            }
        }
    }

    private static IEnumerable<(int Pair, string Element, ConstructionName Construction, double Slope)> Crossings(Glance glance) =>
        from pair in Enumerable.Range(0, glance.Paths.Length)
        from item in glance.Paths[pair].Items
        where item.Construction is not null && item.Sensitivity > 0
        select (pair, PathObservations.ElementName(item), item.Construction!.Value, item.Sensitivity);
}
