using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;
using MeshSim.Radio;

namespace MeshSim.Files.Writing;

/// <summary>
/// What a home folder has no words for, because it names it and the catalogues or the order of storeys say the rest. Reading
/// back would silently give something else, so it is refused.
/// </summary>
internal static class FolderGuards
{
    /// <summary>Refuses a home that a folder cannot express.</summary>
    /// <exception cref="ArgumentException">The home differs from the catalogues in what it takes from them.</exception>
    public static void Check(Home home)
    {
        foreach (Construction construction in home.Constructions.Values) CheckConstruction(construction);
        foreach (RadioProfile radio in home.Networks.Select(network => network.Radio))
            Require(Catalogues.Radios.Contains(radio), $"the radio \"{radio.Name}\" is not as in the catalogue");
        foreach (Mounting mounting in home.Devices.Select(device => device.Mounting).Distinct())
        {
            bool isKnown = Catalogues.Mountings.Any(known => known.Name == mounting.Name && known.Losses.SequenceEqual(mounting.Losses));
            Require(isKnown, $"the mounting \"{mounting.Name}\" is not as in the catalogue");
        }

        double elevationMetres = 0;
        foreach (Storey storey in home.FloorPlan.Storeys)
        {
            elevationMetres += storey.Floor?.ThicknessMetres ?? 0;
            bool isStacked = Lattice.FromMetres(elevationMetres) == Lattice.FromMetres(storey.ElevationMetres);
            Require(isStacked, $"the storey \"{storey.Name}\" does not stand on the one below");
            elevationMetres += storey.CeilingMetres;
        }
    }

    private static void CheckConstruction(Construction construction)
    {
        Require(
            construction.Layers.All(layer => Catalogues.FindMaterial(layer.Material.Name) == layer.Material),
            $"a material of \"{construction.Name}\" is not as in the catalogue");
        if (!Catalogues.ConstructionsByName.TryGetValue(construction.Name, out Construction? known)) return;
        bool isSame = known.Layers.SequenceEqual(construction.Layers)
            && known.Stated.SequenceEqual(construction.Stated)
            && known.Spread == construction.Spread;
        Require(isSame, $"the construction \"{construction.Name}\" is not as in the catalogue");
    }

    private static void Require(bool isSo, string otherwise)
    {
        if (!isSo) throw new ArgumentException(otherwise + "; a home folder cannot say so");
    }
}
