using MeshSim.Devices;
using MeshSim.Fitting.Estimation;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Fitting.Findings;

/// <summary>Devices whose readings fit another place of their storey.</summary>
internal static class MovedDevices
{
    /// <summary>Places are tried so far apart, m: half a metre is what a plan is drawn to.</summary>
    private const double StepMetres = 0.5;

    /// <summary>A device nearer to its place than this is not worth moving, m.</summary>
    private const double LeastMetres = 1;

    /// <summary>Two coordinates.</summary>
    private const int Unknowns = 2;

    /// <summary>Every device with enough pairs, at the place in a room of its storey that explains its readings best.</summary>
    public static IEnumerable<Candidate> Candidates(Glance glance)
    {
        Device[] devices = [.. glance.Problem.Home.DevicesOf(glance.Problem.Network)];
        foreach (Device device in devices)
        {
            int[] pairs = [.. Enumerable.Range(0, glance.Problem.Pairs.Length).Where(pair => glance.Problem.Pairs[pair].Has(device.Id))];
            PlanPoint[] places = [.. Places(glance.Problem.Home.FloorPlan.Storey(device.Storey), device.Point)];
            if (pairs.Length < FindingSearch.FewestPairs || places.Length == 0) continue;
            double now = glance.LossOf(pairs, _ => 0);
            (double cost, PlanPoint place) = places.Select(candidate => (Cost: CostAt(glance, device, pairs, candidate), candidate)).MinBy(tried => tried.Cost);
            double price = Glance.Price(devices.Length * places.Length, Unknowns, pairs.Length);
            yield return new(now - cost - price, InFull);

            Surprise InFull(Glance before)
            {
                FitProblem problem = before.Problem.WithMoved(device with { Point = place });
                MapEstimate estimate = problem.Fit(before.Estimate.Deviation, before.Estimate.Parameters);
                return new(new MovedDevice(device.Id, device.Storey, place, pairs.Length, before.Before - estimate.Objective - price), problem, estimate);
            }
        }
    }

    private static IEnumerable<PlanPoint> Places(Storey storey, PlanPoint now)
    {
        int step = Lattice.FromMetres(StepMetres), least = Lattice.FromMetres(LeastMetres);
        foreach (Room room in storey.Rooms)
        {
            int left = room.Outline.Corners.Min(corner => corner.X), right = room.Outline.Corners.Max(corner => corner.X);
            int low = room.Outline.Corners.Min(corner => corner.Y), high = room.Outline.Corners.Max(corner => corner.Y);
            for (int y = low + (step / 2); y < high; y += step)
            {
                for (int x = left + (step / 2); x < right; x += step)
                {
                    var place = new PlanPoint(x, y);
                    long dx = x - (long)now.X, dy = y - (long)now.Y;
                    if (room.Outline.Contains(place) && (dx * dx) + (dy * dy) >= (long)least * least) yield return place;
                }
            }
        }
    }

    private static double CostAt(Glance glance, Device device, int[] pairs, PlanPoint place)
    {
        Home home = glance.Problem.Home;
        Position there = home.PositionOf(device with { Point = place });
        return glance.LossOf(pairs, Shift);

        double Shift(int pair)
        {
            ReadPair read = glance.Problem.Pairs[pair];
            Device other = read.First.Id == device.Id ? read.Second : read.First;
            return glance.Paths[pair].Total.Value - glance.Model.TotalBetween(there, home.PositionOf(other)).Value;
        }
    }
}
