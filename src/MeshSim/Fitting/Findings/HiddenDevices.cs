using MeshSim.Devices;
using MeshSim.Fitting.Estimation;
using MeshSim.Quantities;

namespace MeshSim.Fitting.Findings;

/// <summary>Devices whose readings are all low by the same, in both directions.</summary>
internal static class HiddenDevices
{
    /// <summary>Every device with enough pairs that is not yet among the surprises.</summary>
    public static IEnumerable<Candidate> Candidates(Glance glance)
    {
        Device[] devices = [.. glance.Problem.Home.DevicesOf(glance.Problem.Network)];
        foreach (Device device in devices)
        {
            int[] pairs = [.. Enumerable.Range(0, glance.Problem.Pairs.Length).Where(pair => glance.Problem.Pairs[pair].Has(device.Id))];
            if (pairs.Length < FindingSearch.FewestPairs || glance.Observations.IndexOf(UnknownKind.DeviceLoss, device.Id.Value) is not null) continue;
            PathUnknown unknown = FitPriors.DeviceLoss(device.Id);
            double price = Glance.Price(devices.Length, 1, pairs.Length);
            yield return new(glance.Gain(pairs, _ => -1, unknown.Prior) - price, InFull);

            Surprise InFull(Glance before)
            {
                (FitProblem problem, MapEstimate estimate, double gain) = before.Refit(unknown);
                int last = estimate.Parameters.Count - 1;
                Decibels loss = new(estimate.Parameters[last]), error = new(estimate.StandardError(last));
                return new(new HiddenDevice(device.Id, loss, error, pairs.Length, gain - price), problem, estimate);
            }
        }
    }
}
