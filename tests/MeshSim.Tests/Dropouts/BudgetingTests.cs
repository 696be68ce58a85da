using MeshSim.Devices;
using MeshSim.Dropouts;
using MeshSim.Mesh;
using MeshSim.Propagation;
using MeshSim.Quantities;
using MeshSim.Radio;
using MeshSim.Tests.Mesh;

namespace MeshSim.Tests.Dropouts;

public sealed class BudgetingTests
{
    private static readonly Network Network = MeshSamples.Network(hopLimit: 4);

    private static readonly LinkBudget Levels = new(Network.Radio, new Decibels(5));

    private static readonly Reception Quiet = Levels.ReceptionOf(Decibels.Zero, []);

    private static readonly Reception Busy = Levels.ReceptionOf(Decibels.Zero, [new Interferer("wifi", new PowerLevel(-70), 1)]);

    private static readonly Reception Noisy = Levels.ReceptionOf(new Decibels(40), []);

    [Fact]
    public void The_worse_direction_is_shown()
    {
        Budget forward = Budgeting.Of(Network, LinkOf(-60, -50, Quiet, Quiet), MeshSamples.DesignMargin);
        Budget back = Budgeting.Of(Network, LinkOf(-50, -60, Quiet, Quiet), MeshSamples.DesignMargin);

        (forward.Sender, forward.Receiver).Should().Be((MeshSamples.Id(1), MeshSamples.Id(2)));
        (back.Sender, back.Receiver).Should().Be((MeshSamples.Id(2), MeshSamples.Id(1)));
    }

    [Fact]
    public void A_disturbed_receiver_makes_its_direction_the_worse_one()
    {
        Budget budget = Budgeting.Of(Network, LinkOf(-60, -60, Busy, Quiet), MeshSamples.DesignMargin);

        budget.Receiver.Should().Be(MeshSamples.Id(1));
        budget.Cause.Should().Be(RequirementCause.Interference);
        budget.Disturbance.Should().Be(Busy.PlanningLevel - Levels.RequiredLevel);
        budget.Disturbance.Value.Should().BePositive();
    }

    [Fact]
    public void Noise_of_the_hub_is_named() =>
        Budgeting.Of(Network, LinkOf(-60, -60, Quiet, Noisy), MeshSamples.DesignMargin).Cause.Should().Be(RequirementCause.HubNoise);

    [Fact]
    public void An_undisturbed_receiver_needs_its_sensitivity_or_what_noise_asks_for()
    {
        Budget budget = Budgeting.Of(Network, LinkOf(-60, -60, Quiet, Quiet), MeshSamples.DesignMargin);

        budget.Required.Should().Be(Levels.RequiredLevel);
        budget.Cause.Should().Be(Levels.RequiredLevel > Network.Radio.Sensitivity ? RequirementCause.Noise : RequirementCause.Sensitivity);
    }

    [Fact]
    public void The_dearest_loss_is_never_the_distance()
    {
        Budget budget = Budgeting.Of(Network, LinkOf(-60, -60, Quiet, Quiet), MeshSamples.DesignMargin);

        budget.Dearest!.Item.Name.Should().Be("wall");
        budget.Losses.Select(loss => loss.Share).Should().Equal(0.8, 0.2);
    }

    private static Link LinkOf(double receivedDbm, double reverseDbm, Reception atFrom, Reception atTo) => MeshSamples.Link(1, 2) with
    {
        PathLoss = new("sample", 3, [
            new LossItem { Kind = LossKind.Distance, Name = "distance", Loss = new(40) },
            new LossItem { Kind = LossKind.Wall, Name = "wall", Loss = new(10) }]),
        Received = new(receivedDbm),
        Reverse = new(reverseDbm),
        AtFrom = atFrom,
        AtTo = atTo,
    };
}
