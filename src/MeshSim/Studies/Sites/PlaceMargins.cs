using MeshSim.Devices;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Mesh;
using MeshSim.Placement;
using MeshSim.Propagation;
using MeshSim.Propagation.Fields;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Studies.Sites;

/// <summary>
/// The margins of the links between a thing at every point of a grid and each node of a recommendation. The thing stands in the open:
/// a repeater, which sends with the profile's power, or the hub with the coordinator's own power and noise.
/// </summary>
internal sealed class PlaceMargins
{
    private readonly SurveyedPlacement placement;
    private readonly LinkBudget budget;
    private readonly bool isHub;

    /// <summary>Makes ready.</summary>
    /// <param name="placement">The recommendation.</param>
    /// <param name="isHub">Whether the thing is the hub, else a repeater.</param>
    public PlaceMargins(SurveyedPlacement placement, bool isHub)
    {
        (this.placement, this.isHub) = (placement, isHub);
        budget = new(placement.Network.Radio, placement.Home.ParametersOf(placement.Network).Shadowing);
    }

    /// <summary>Per situation and node the margins over a grid; situations with the same doors share theirs, and nodes that are not there have none.</summary>
    public Field?[][] Over(FieldGrid grid)
    {
        Dictionary<RepeaterProblem, Field?[]> known = [];
        return [.. placement.Survey.Situations.Zip(placement.Models, (situation, model) => Of(situation.Problem, model))];

        Field?[] Of(RepeaterProblem problem, IPathLossModel model)
        {
            if (!known.TryGetValue(problem, out Field?[]? fields)) known[problem] = fields = Over(grid, model);
            return fields;
        }
    }

    private Field?[] Over(FieldGrid grid, IPathLossModel model)
    {
        Network network = placement.Network;
        Surroundings surroundings = new(placement.Home, network, model, budget);
        Decibels noiseRise = isHub ? network.HubNoise : Decibels.Zero;
        NeededLevels? needed = NeededLevels.At(surroundings, placement.Home, model, grid, noiseRise);
        PowerLevel alike = budget.ReceptionOf(noiseRise, []).PlanningLevel;
        PowerLevel own = network.Radio.TransmitPower;
        PowerLevel power = isHub ? Coordinator.TransmitPower ?? own : own;
        Decibels mounting = isHub ? network.LossOf(InTheOpen.In(placement.Home)) : Decibels.Zero;
        Func<Position, Field> lossFrom = NeededLevels.LossesOver(model, grid);
        var fields = new Field?[placement.Survey.Problem.NodeCount];
        foreach (int node in placement.Present)
        {
            Device? device = placement.Survey.DeviceAt(node);
            Decibels hidden = mounting + (device is null ? Decibels.Zero : network.LossOf(device.Mounting));
            PowerLevel nodePower = device?.TransmitPower ?? own;
            PowerLevel nodeNeeds = (device is null ? surroundings.At(placement.PlaceOf(node)) : surroundings.At(device)).PlanningLevel;
            Field losses = lossFrom(placement.PlaceOf(node));
            fields[node] = new(grid, [.. losses.Values.Select((loss, i) =>
                (float)budget.Margin(power, nodePower, hidden + new Decibels(loss), needed?.Levels[i] ?? alike, nodeNeeds).Value)]);
        }

        return fields;
    }

    private Device Coordinator => placement.Survey.Devices[placement.Survey.Problem.Coordinator];
}
