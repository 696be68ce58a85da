using MeshSim.Quantities;

namespace MeshSim.Radio;

/// <summary>What two radios of one kind make of the loss between them.</summary>
/// <param name="Received">What the second receives of the first.</param>
/// <param name="Reverse">What the first receives of the second.</param>
/// <param name="Margin">How far the worse direction lies above the required level; negative when below.</param>
/// <param name="Delivery">Share of frames that arrive at the second, expected over shadowing and over time.</param>
/// <param name="ReverseDelivery">Share of frames that arrive at the first.</param>
public readonly record struct LinkLevels(PowerLevel Received, PowerLevel Reverse, Decibels Margin, double Delivery, double ReverseDelivery);

/// <summary>The link budget between radios of one profile: level = power + antenna gain − loss + antenna gain.</summary>
public sealed class LinkBudget
{
    private readonly RadioProfile profile;
    private readonly Receiver receiver;
    private readonly DeliveryRatio delivery;
    private readonly Reception undisturbed;

    /// <summary>The budget of a profile.</summary>
    /// <param name="profile">The kind of radio at both ends.</param>
    /// <param name="shadowing">Standard deviation of log-normal shadowing, within <see cref="DeliveryRatio.ShadowingDb"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure of the profile, or the standard deviation, is outside its range.</exception>
    public LinkBudget(RadioProfile profile, Decibels shadowing)
    {
        this.profile = profile;
        receiver = new Receiver(profile);
        delivery = new DeliveryRatio(receiver, shadowing);
        undisturbed = ReceptionOf(Decibels.Zero, []);
    }

    /// <summary>The level that an undisturbed receiver needs.</summary>
    public PowerLevel RequiredLevel => receiver.RequiredLevel;

    /// <summary>What a receiver of this kind needs among noise and interference.</summary>
    /// <param name="noiseRise">By how much its noise floor is raised.</param>
    /// <param name="interferers">Who sends nearby.</param>
    public Reception ReceptionOf(Decibels noiseRise, IEnumerable<Interferer> interferers) =>
        new(receiver, noiseRise, interferers, profile.Access.Attempts);

    /// <summary>What arrives of a transmission.</summary>
    /// <param name="transmitPower">At the sender's antenna connector.</param>
    /// <param name="loss">Between the antennas, mountings included.</param>
    public PowerLevel Received(PowerLevel transmitPower, Decibels loss) =>
        transmitPower + profile.AntennaGain - loss + profile.AntennaGain;

    /// <summary>The margin of the worse direction between undisturbed receivers.</summary>
    /// <param name="power">Transmit power of one end.</param>
    /// <param name="otherPower">Transmit power of the other.</param>
    /// <param name="loss">Between the antennas, mountings included; the same both ways.</param>
    public Decibels Margin(PowerLevel power, PowerLevel otherPower, Decibels loss) =>
        Margin(power, otherPower, loss, RequiredLevel, RequiredLevel);

    /// <summary>The margin of the worse direction: a frame counts only when its acknowledgement comes back.</summary>
    /// <param name="power">Transmit power of one end.</param>
    /// <param name="otherPower">Transmit power of the other.</param>
    /// <param name="loss">Between the antennas, mountings included; the same both ways.</param>
    /// <param name="required">What the first end needs, <see cref="Reception.PlanningLevel"/>.</param>
    /// <param name="otherRequired">What the other end needs.</param>
    public Decibels Margin(PowerLevel power, PowerLevel otherPower, Decibels loss, PowerLevel required, PowerLevel otherRequired) =>
        Decibels.Min(Received(power, loss) - otherRequired, Received(otherPower, loss) - required);

    /// <summary>Both directions of a link between undisturbed receivers.</summary>
    /// <param name="power">Transmit power of the first end.</param>
    /// <param name="otherPower">Transmit power of the second.</param>
    /// <param name="loss">Between the antennas, mountings included; the same both ways.</param>
    public LinkLevels Between(PowerLevel power, PowerLevel otherPower, Decibels loss) => Between(power, otherPower, loss, undisturbed, undisturbed);

    /// <summary>Both directions of a link.</summary>
    /// <param name="power">Transmit power of the first end.</param>
    /// <param name="otherPower">Transmit power of the second.</param>
    /// <param name="loss">Between the antennas, mountings included; the same both ways.</param>
    /// <param name="at">What the first end needs.</param>
    /// <param name="atOther">What the second end needs.</param>
    public LinkLevels Between(PowerLevel power, PowerLevel otherPower, Decibels loss, Reception at, Reception atOther)
    {
        PowerLevel received = Received(power, loss), reverse = Received(otherPower, loss);
        Decibels margin = Margin(power, otherPower, loss, at.PlanningLevel, atOther.PlanningLevel);
        return new(received, reverse, margin, Delivery(received, atOther), Delivery(reverse, at));
    }

    /// <summary>
    /// Share of frames that arrive, each in the conditions of its moment. The loss curve hangs on the distance to the required
    /// level alone, so that interference moves it.
    /// </summary>
    private double Delivery(PowerLevel received, Reception at) =>
        at.Conditions.Sum(condition => condition.Share * delivery.At(received - at.RiseIn(condition)));
}
