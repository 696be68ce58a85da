using System.Globalization;
using MeshSim.Devices;
using MeshSim.Files;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Radio;

namespace MeshSim.Benchmarks;

/// <summary>A generated building with devices and outlets in it.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Size">The building.</param>
/// <param name="Devices">Number of devices of all networks, their coordinators included.</param>
/// <param name="Outlets">Number of outlets.</param>
/// <param name="Networks">1 or 2: 2.4 GHz mesh first, then the sub-GHz mesh.</param>
/// <param name="RoutersInTen">Of ten devices, how many pass frames on.</param>
/// <param name="PowerDbm">Transmit power of everybody.</param>
public sealed record PlacementSize(string Name, BuildingSize Size, int Devices, int Outlets, int Networks, int RoutersInTen, double PowerDbm)
{
    /// <summary>Three storeys, two networks.</summary>
    public static readonly PlacementSize House = new("house", BuildingSize.S, 60, 90, 2, 2, -14);

    /// <summary>One floor of an apartment block.</summary>
    public static readonly PlacementSize Block = new("block", BuildingSize.M, 400, 600, 1, 2, -8);

    /// <summary>The same floor with few routers and weak senders: many repeaters are needed.</summary>
    public static readonly PlacementSize Sparse = new("sparse", BuildingSize.M, 400, 600, 1, 1, -16);

    /// <summary>The same floor with senders so weak that most devices need a repeater beside them: the hardest there is.</summary>
    public static readonly PlacementSize Faint = new("faint", BuildingSize.M, 400, 600, 1, 1, -22);
}

/// <summary>
/// Makes the homes of the placement table: devices and outlets at seeded places of a <see cref="GeneratedBuilding"/>, one state that
/// must hold in which a circuit with an eighth of the devices and outlets and a tenth of the remaining routers are off.
/// </summary>
public static class PlacementBuilding
{
    private const int HopLimit = 8, CircuitInverse = 8, SwitchInverse = 10;
    private const string Circuit = "ring";

    /// <summary>How far a point on a wall is moved each way, 0.1 mm: 5 cm, so that a wall 10 cm on is not met in its place.</summary>
    private const int AsideSteps = 500;

    private static readonly string[] Radios = ["ieee802154-2450", "g9959-eu-40k"];

    /// <summary>Makes the home.</summary>
    /// <param name="size">What is in it.</param>
    /// <param name="seed">Which of them.</param>
    /// <param name="step">Inner walls lie on multiples of this, 0.1 mm; 1000 for a home that is written into a folder, in which nothing lies on a wall.</param>
    public static Home Of(PlacementSize size, int seed, int step = 1)
    {
        GeneratedBuilding building = new(size.Size, isAngled: false, seed, step);
        var random = new Random(seed);
        Device[] devices = [.. Enumerable.Range(0, size.Devices).Select(MakeDevice)];
        return new()
        {
            Name = size.Name,
            Region = "EU",
            FloorPlan = building.Plan,
            Constructions = building.Constructions,
            Networks = [.. Enumerable.Range(0, size.Networks).Select(MakeNetwork)],
            Devices = [.. devices],
            Outlets = [.. Enumerable.Range(0, size.Outlets).Select(MakeOutlet)],
            States =
            [
                new()
                {
                    Name = "night",
                    CircuitsOff = [Circuit],
                    DevicesOff = [.. devices.Where(device => device.Role == Role.Router && random.Next(SwitchInverse) == 0).Select(device => device.Id)],
                    MustHold = true,
                },
            ],
        };

        Network MakeNetwork(int index)
        {
            RadioProfile radio = Catalogues.Radios.First(radio => radio.Name == Radios[index]);
            return new()
            {
                Name = new(Radios[index]),
                Radio = radio,
                Channel = radio.FirstChannel,
                Coordinator = Id(index),
                HopLimit = index == 0 ? HopLimit : radio.HopLimit,
            };
        }

        Device MakeDevice(int index)
        {
            bool isCoordinator = index < size.Networks, isRouter = random.Next(10) < size.RoutersInTen;
            (StoreyName storey, PlanPoint point) = Somewhere();
            return new()
            {
                Id = Id(index),
                Name = "generated",
                Network = new(Radios[index % size.Networks]),
                Power = isCoordinator ? PowerSource.Usb : isRouter ? PowerSource.Mains : PowerSource.Battery,
                Role = isCoordinator ? Role.Coordinator : isRouter ? Role.Router : Role.EndDevice,
                Storey = storey,
                Point = point,
                HeightMetres = GeneratedBuilding.HeightsMetres[random.Next(GeneratedBuilding.HeightsMetres.Length)],
                Mounting = Catalogues.Mountings.First(mounting => mounting.Name == "surface"),
                Circuit = !isCoordinator && random.Next(CircuitInverse) == 0 ? Circuit : null,
                TransmitPower = new(size.PowerDbm),
            };
        }

        Outlet MakeOutlet(int index)
        {
            (StoreyName storey, PlanPoint point) = Somewhere();
            return new()
            {
                Id = new("outlet" + index.ToString("000", CultureInfo.InvariantCulture)),
                Storey = storey,
                Point = point,
                HeightMetres = 0.3,
                Circuit = random.Next(CircuitInverse) == 0 ? Circuit : null,
            };
        }

        (StoreyName Storey, PlanPoint Point) Somewhere()
        {
            Storey storey = building.Plan.Storeys[random.Next(size.Size.Storeys)];
            PlanPoint point = PlanPoint.FromMetres(random.NextDouble() * size.Size.WidthMetres, random.NextDouble() * size.Size.DepthMetres);
            return (storey.Name, step == 1 ? point : AsideOfWalls(storey, point, PlanPoint.FromMetres(size.Size.WidthMetres / 2, size.Size.DepthMetres / 2)));
        }
    }

    /// <summary>
    /// The point, or the next one towards the middle where it lies on a wall: a home folder refuses a point of which nobody can say in
    /// which room it is.
    /// </summary>
    private static PlanPoint AsideOfWalls(Storey storey, PlanPoint point, PlanPoint middle)
    {
        PlanPoint aside = point;
        for (int steps = AsideSteps; storey.DistanceMetresToNearestWall(aside) < Lattice.ToMetres(1); steps += AsideSteps)
            aside = new(point.X + (point.X < middle.X ? steps : -steps), point.Y + (point.Y < middle.Y ? steps : -steps));
        return aside;
    }

    private static DeviceId Id(int index) => new("device" + index.ToString("000", CultureInfo.InvariantCulture));
}
