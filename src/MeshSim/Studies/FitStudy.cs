using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Fitting;

namespace MeshSim.Studies;

/// <summary>What the radios of a home reported, held against its plan.</summary>
public static class FitStudy
{
    /// <summary>Fits each of some networks that has readings, with the default model.</summary>
    /// <param name="home">The home.</param>
    /// <param name="networks">Some of its networks.</param>
    /// <param name="cancellation">Ends the work early.</param>
    /// <exception cref="OperationCanceledException">The work was ended early.</exception>
    public static ImmutableArray<FitResult> Run(Home home, IEnumerable<Network> networks, CancellationToken cancellation) =>
        [.. networks.Select(network => Fitter.Fit(home, network, new StudyOptions().Model, cancellation)).OfType<FitResult>()];

    /// <summary>The home as it is computed with what was learnt; networks without a result keep what they have.</summary>
    public static Home Applied(Home home, IEnumerable<FitResult> results)
    {
        Dictionary<NetworkName, NetworkFit> fits = results.ToDictionary(result => result.Network.Name, result => result.Fit);
        return home with { Networks = [.. home.Networks.Select(network => fits.TryGetValue(network.Name, out NetworkFit? fit) ? network with { Fit = fit } : network)] };
    }
}
