using System.Collections.Immutable;
using MeshSim.OpenData.Tests.Accuracy.Fits;
using MeshSim.OpenData.Tests.Accuracy.Sets;

namespace MeshSim.OpenData.Tests.Accuracy;

/// <summary>The buildings of the page, each read and assessed once for all tests.</summary>
internal static class AccuracySets
{
    private static readonly Lazy<ImmutableArray<Assessment>> Read = new(() =>
    [
        .. new[]
        {
            FurnishedFlat.Read(), OfficeFloor.Read(), OpenHalls.ReadLarge(), OpenHalls.ReadSmall(), OpenRooms.ReadOffice(), OpenRooms.ReadLaboratory(), OpenRooms.ReadLibrary(),
        }.Select(building => new Assessment(building)),
    ]);

    /// <summary>The furnished flat.</summary>
    public static Assessment Flat => All[0];

    /// <summary>The office floor.</summary>
    public static Assessment Office => All[1];

    /// <summary>All, those with walls first; the running test is skipped when the data are not there.</summary>
    public static ImmutableArray<Assessment> All
    {
        get
        {
            foreach (string dataSet in (string[])["flat-ble-2400", "sodindoorloc-wifi-2400", "iotlab-802154-2400", "tetam-ble-2400", "uji-ble-2400"]) DataFolders.Of(dataSet);
            return Read.Value;
        }
    }
}
