using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Tests.Mesh;

public sealed class SurroundingsTests
{
    /// <summary>A handful of sums of levels below 100 dB.</summary>
    private const double RoundingDb = 1e-12;

    private static readonly Network Net = MeshSamples.Network(hopLimit: 5) with { Channel = 20 };

    [Fact]
    public void A_device_takes_in_power_less_path_mounting_and_what_falls_outside_its_channel()
    {
        var box = new Mounting { Name = "box", Description = "", Losses = [(new(2440), new(7))], Source = "assumed" };
        Home home = InterferenceHomes.Row(2, InterferenceHomes.AccessPoint(channel: 6, xMetres: 4));
        home = home with { Devices = home.Devices.SetItem(1, home.Devices[1] with { Mounting = box }) };

        Reception reception = Of(home, Net).At(home.Devices[1]);

        // 3 m at 10 dB a metre, and the published share at 13 MHz.
        Interferer only = reception.Interferers.Should().ContainSingle().Subject;
        only.Name.Should().Be("shelf");
        only.Level.Dbm.Should().BeApproximately(20 - 30 - 7 - 31.5139501544, 1e-9, "ten decimals are printed");
        only.Busy.Should().Be(0.3);
    }

    [Fact]
    public void Sub_ghz_hears_no_access_point()
    {
        Network subGhz = Net with { Radio = Net.Radio with { FirstCarrier = new(868.4), ChannelStepMegahertz = 0 } };
        Home home = InterferenceHomes.Row(2, InterferenceHomes.AccessPoint(channel: 6, xMetres: 4));
        Surroundings surroundings = Of(home, subGhz);
        surroundings.Heard.Should().BeEmpty();
        surroundings.At(home.Devices[1]).Conditions.Should().ContainSingle();
    }

    [Fact]
    public void Usb3_storage_raises_the_floor_of_the_coordinator_alone()
    {
        Home home = InterferenceHomes.Row(2);
        Surroundings surroundings = Of(home, Net with { IsBesideUsb3 = true });
        surroundings.At(home.Devices[0]).NoiseRise.Value.Should().BeApproximately(20, RoundingDb);
        surroundings.At(home.Devices[1]).NoiseRise.Should().Be(Decibels.Zero);
    }

    [Fact]
    public void A_lead_wins_back_margin_and_no_storage_wins_back_all()
    {
        Home home = InterferenceHomes.Row(2);
        Decibels quiet = Margin(Net), close = Margin(Net with { IsBesideUsb3 = true }), lead = Margin(Net with { IsBesideUsb3 = true, LeadMetres = 1.5 });
        close.Should().BeLessThan(lead);
        lead.Should().BeLessThan(quiet);
        (lead - close).Value.Should().BeApproximately((SharedHubNoise.Rise(0) - SharedHubNoise.Rise(1.5)).Value, RoundingDb, "noise decides in both");

        Decibels Margin(Network network) => LinkTable.Compute(home, network, new InterferenceHomes.TenDecibelsPerMetre(), state: null).Single().Margin;
    }

    [Fact]
    public void Retries_absorb_an_access_point_in_the_margin_and_delivery_counts_it()
    {
        Home home = InterferenceHomes.Row(2, InterferenceHomes.AccessPoint(channel: 6, xMetres: 4));
        Network patient = Net with { Channel = 17, Radio = Net.Radio with { Access = new() { Retries = 3 } } };
        Link alone = Single(home with { AccessPoints = [] }, patient), beside = Single(home, patient), impatient = Single(home, Net with { Channel = 17 });

        beside.Margin.Should().Be(alone.Margin);
        beside.Delivery.Should().BeLessThan(alone.Delivery);
        impatient.Margin.Should().BeLessThan(alone.Margin, "one attempt absorbs nothing");
        impatient.Delivery.Should().Be(beside.Delivery);
    }

    [Theory]
    [InlineData(0.3, 0.15, false)]
    [InlineData(0.3, 0.3, true)]
    [InlineData(0.5, 0, true)]
    public void Access_points_count_when_together_they_are_on_too_much(double busy, double otherBusy, bool counts)
    {
        Home home = InterferenceHomes.Row(
            3, InterferenceHomes.AccessPoint(6, 4, busy), InterferenceHomes.AccessPoint(11, 5, otherBusy, name: "other"));
        Surroundings surroundings = Of(home, Net with { Channel = 17, Radio = Net.Radio with { Access = new() { Retries = 3 } } });

        surroundings.Counts.Should().Be(counts);
        home.Devices.Any(device => surroundings.At(device) is var at && at.PlanningLevel > at.QuietLevel).Should().Be(counts);
    }

    private static Link Single(Home home, Network network) =>
        LinkTable.Compute(home, network, new InterferenceHomes.TenDecibelsPerMetre(), state: null).Single();

    private static Surroundings Of(Home home, Network network) =>
        new(home, network, new InterferenceHomes.TenDecibelsPerMetre(), new LinkBudget(network.Radio, new(5)));
}
