using MeshSim.Devices;
using MeshSim.Files;
using MeshSim.Propagation;

namespace MeshSim.Cli.Commands;

/// <summary>A home whose fitted values are used, or set aside where they mean nothing; said in one line either way.</summary>
internal static class FittedHome
{
    /// <summary>The home as a model sees it.</summary>
    /// <param name="home">As read.</param>
    /// <param name="model">The model asked for.</param>
    /// <param name="terminal">Told on its error stream.</param>
    public static Home For(Home home, ModelName model, Terminal terminal)
    {
        Network[] fitted = [.. home.Networks.Where(network => network.Fit is not null)];
        if (fitted.Length == 0) return home;

        bool isUsed = Array.TrueForAll(fitted, network => network.Fit!.Model == model);
        string names = string.Join(", ", fitted.Select(network => network.Name));
        terminal.Error.Write(isUsed
            ? $"{HomeFileNames.Fit}: fitted values are used for {names}; delete the file to go back to the catalogue\n"
            : $"{HomeFileNames.Fit}: the fitted values for {names} belong to another model and are not used by {ModelNames.Of(model)}\n");
        return isUsed ? home : Without(home);
    }

    /// <summary>The home as the catalogue knows it.</summary>
    public static Home Without(Home home) => home with { Networks = [.. home.Networks.Select(network => network with { Fit = null })] };
}
