using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using MeshSim.Devices;
using MeshSim.Fitting;
using MeshSim.Fitting.Findings;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation;
using MeshSim.Quantities;

namespace MeshSim.Tests.Fitting;

public sealed class FitterTests
{
    [Fact]
    public void The_readings_in_the_folder_of_quay_terrace_are_those_that_were_invented()
    {
        string file = Path.Combine(Terrace.Folder, "readings.csv");
        var text = new StringBuilder("from,to,rssi_dbm,note\n");
        foreach (Reading reading in Terrace.Read(Terrace.Truth, Terrace.Seed).Readings)
            text.Append(CultureInfo.InvariantCulture, $"{reading.From},{reading.To},{reading.Level?.Dbm},\n");
        if (Environment.GetEnvironmentVariable("MESHSIM_APPROVE") == "1") File.WriteAllText(file, text.ToString());

        text.ToString().Should().Be(File.Exists(file) ? File.ReadAllText(file) : "", "that is what {0} says", file);
    }

    [Fact]
    public void The_device_in_the_metal_box_is_named_first_and_the_rest_is_learnt()
    {
        FitResult result = Fit(Terrace.Read(Terrace.Truth, Terrace.Seed));

        HiddenDevice hidden = result.Findings.Should().ContainSingle().Which.Should().BeOfType<HiddenDevice>().Subject;
        hidden.Device.Should().Be(new DeviceId("dining-plug"));
        hidden.Loss.Value.Should().BeApproximately(16, 2 * hidden.StandardError.Value);
        result.After.Rmse.Value.Should().BeLessThan(result.Before.Rmse.Value);
        result.CrossValidated.Rmse.Value.Should().BeInRange(result.After.Rmse.Value, result.Before.Rmse.Value);
        result.Fit.Exponent.Should().BeApproximately(2.1, 2 * result.Fit.Parameters[0].StandardError);
        result.Parameters.Single(change => change.Parameter.Name == "brick-half").Learnt.Should().BeGreaterThan(0.8);
        result.Uncrossed.Select(name => name.Value).Should().Contain("party-wall-brick", "no two plugs hear each other through the neighbours' wall");
        result.Parameters.Should().NotContain(change => change.Parameter.Name == "party-wall-brick");
    }

    [Fact]
    public void A_way_round_that_is_cheaper_than_the_home_says_is_learnt()
    {
        const double reallyDb = 12;
        Network really = Terrace.Really with
        {
            Fit = Terrace.Really.Fit! with { Parameters = Terrace.Really.Fit!.Parameters.Insert(1, new(FittedKind.Detour, "", reallyDb, 0, 0)) },
        };
        Home home = Terrace.Home with { Readings = new InventedReadings().Of(Terrace.Home, really, Terrace.Seed) };

        ParameterChange round = Fit(home).Parameters.Single(change => change.Parameter.Kind == FittedKind.Detour);

        round.Catalogue.Should().Be(Terrace.Home.Parameters.Detour.Value);
        round.Fitted.Should().BeApproximately(reallyDb, 2 * round.Parameter.StandardError);
        round.Learnt.Should().BeGreaterThan(0.8);
    }

    [Fact]
    public void A_plan_that_is_right_is_not_contradicted()
    {
        foreach (int seed in new[] { 11, 222, 3333 })
            Fit(Terrace.Read(new(), seed)).Findings.Should().BeEmpty();
    }

    [Fact]
    public void A_device_that_is_elsewhere_is_told_from_one_in_a_box()
    {
        DeviceId plug = new("kettle-plug");
        Device moved = Terrace.Home.Devices.Single(device => device.Id == plug) with { Point = PlanPoint.FromMetres(2.2, 0.6) };

        FitResult result = Fit(Terrace.Read(new() { Really = new Dictionary<DeviceId, Device> { [plug] = moved }.ToImmutableDictionary() }, Terrace.Seed));

        MovedDevice found = result.Findings[0].Should().BeOfType<MovedDevice>().Subject;
        found.Device.Should().Be(plug);
        found.Likeliest.DistanceMetresTo(moved.Point).Should().BeLessThan(3, "shadowing of 4 dB does not tell a place better");
    }

    [Fact]
    public void A_wall_of_something_else_is_named()
    {
        InventedReadings truth = new() { Elements = new Dictionary<string, Decibels> { ["dining | kitchen"] = new(18) }.ToImmutableDictionary() };

        FitResult result = Fit(Terrace.Read(truth, Terrace.Seed));

        OtherElement found = result.Findings[0].Should().BeOfType<OtherElement>().Subject;
        found.Element.Should().Be("wall dining | kitchen");
        found.Loss.Value.Should().BeApproximately(18, 3 * found.StandardError.Value);
    }

    [Fact]
    public void A_network_without_readings_is_not_fitted() =>
        Fitter.Fit(Terrace.Home with { Readings = [] }, Terrace.Plugs, ModelName.Detour, TestContext.Current.CancellationToken).Should().BeNull();

    private static FitResult Fit(Home home) => Fitter.Fit(home, Terrace.Plugs, ModelName.Detour, TestContext.Current.CancellationToken)!;
}
