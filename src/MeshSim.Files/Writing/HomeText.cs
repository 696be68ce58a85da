using System.Globalization;
using System.Text;
using MeshSim.Devices;
using MeshSim.Files.Datasets;
using MeshSim.Files.Homes;
using MeshSim.FloorPlans;
using MeshSim.Materials;
using MeshSim.Propagation;

namespace MeshSim.Files.Writing;

/// <summary>The text of <c>home.yaml</c> for a home.</summary>
internal static class HomeText
{
    /// <summary>The text, with line feeds as line ends.</summary>
    public static string Of(Home home)
    {
        StringBuilder text = new();
        PlanningParameters parameters = home.Parameters;
        Line(text, $"home: {YamlWords.Text(home.Name)}");
        Line(text, $"region: {YamlWords.Text(home.Region)}");
        Line(text, $"north: {YamlWords.Number(parameters.NorthDegrees)}");
        Line(text, "model: " + ModelMap(parameters));
        if (home.Costs != new PlacementCosts()) Line(text, "costs: " + CostMap(home.Costs));
        AppendList(text, "constructions", OwnConstructions(home).Select(ConstructionMap));
        Line(text, "storeys:");
        foreach (Storey storey in home.FloorPlan.Storeys) StoreyText.Append(text, storey);
        AppendList(text, "networks", home.Networks.Select(NetworkMap));
        AppendList(text, "wifi", home.AccessPoints.Select(AccessPointMap));
        AppendList(text, "circuits", home.Circuits.Select(CircuitMap));
        AppendList(text, "states", home.States.Select(StateMap));
        return text.ToString();
    }

    private static string CostMap(PlacementCosts costs) => YamlWords.Map(
    [
        (CostReader.Repeater, Whole(costs.Repeater)),
        (CostReader.HubMove, Whole(costs.HubMove)),
        (CostReader.SwitchGivenUp, Whole(costs.SwitchGivenUp)),
    ]);

    private static string ModelMap(PlanningParameters parameters)
    {
        List<(string Key, string Value)> entries =
        [
            ("exponent", YamlWords.Number(parameters.Exponent)),
            ("shadowing", YamlWords.Number(parameters.Shadowing.Value)),
            ("availability", YamlWords.Number(parameters.Availability)),
        ];
        if (parameters.Detour.Value != Detour.UsualDb) entries.Insert(1, ("detour", YamlWords.Number(parameters.Detour.Value)));
        if (parameters.Fading != Fading.None) entries.Add(("fading", HomeFileReader.Fadings.First(word => word.Value == parameters.Fading).Key));
        if (parameters.Fading == Fading.Rician) entries.Add(("k", YamlWords.Number(parameters.SteadyToScattered.Value)));
        return YamlWords.Map(entries);
    }

    /// <summary>The constructions that the catalogue does not have, by name.</summary>
    public static IEnumerable<Construction> OwnConstructions(Home home) =>
        home.Constructions.Values
            .Where(construction => !Catalogues.ConstructionsByName.ContainsKey(construction.Name))
            .OrderBy(construction => construction.Name.Value, StringComparer.Ordinal);

    private static string ConstructionMap(Construction construction)
    {
        (string Key, string Value) loss = construction.Stated.IsEmpty
            ? ("layers", YamlWords.Text(string.Join(", ", construction.Layers.Select(Layer))))
            : ("stated", YamlWords.Map(construction.Stated.Select(Stated)));
        return YamlWords.Map(
        [
            ("construction", YamlWords.Text(construction.Name.Value)),
            ("use", ConstructionRows.Uses.First(use => use.Value == construction.Use).Key),
            loss,
            ("spread", YamlWords.Number(construction.Spread.Value)),
            ("description", YamlWords.Text(construction.Description)),
            ("source", YamlWords.Text(construction.Source)),
        ]);
    }

    private static string Layer(Layer layer) => $"{layer.Material.Name}:{YamlWords.Number(layer.ThicknessMetres * 1000)}";

    private static (string Key, string Value) Stated(StatedLoss stated) =>
        (YamlWords.Number(stated.Frequency.Megahertz), YamlWords.Number(stated.Loss.Value));

    private static string NetworkMap(Network network)
    {
        List<(string Key, string Value)> entries =
        [
            ("network", YamlWords.Text(network.Name.Value)),
            ("radio", YamlWords.Text(network.Radio.Name)),
            ("channel", Whole(network.Channel)),
            ("coordinator", YamlWords.Text(network.Coordinator.Value)),
        ];
        if (network.HopLimit != network.Radio.HopLimit) entries.Add(("hops", Whole(network.HopLimit)));
        if (network.IsBesideUsb3) entries.Add(("usb3 beside", "true"));
        if (network.LeadMetres > 0) entries.Add(("lead", YamlWords.Number(network.LeadMetres)));
        return YamlWords.Map(entries);
    }

    private static string AccessPointMap(AccessPoint point) => YamlWords.Map(
    [
        ("access point", YamlWords.Text(point.Name)),
        ("storey", YamlWords.Text(point.Storey.Value)),
        ("at", $"[{YamlWords.Number(point.Point.XMetres)}, {YamlWords.Number(point.Point.YMetres)}, {YamlWords.Number(point.HeightMetres)}]"),
        ("channel", Whole(point.Channel)),
        ("width", Whole(point.WidthMegahertz)),
        ("power", YamlWords.Number(point.Power.Dbm)),
        ("busy", YamlWords.Number(point.Busy)),
    ]);

    private static string CircuitMap(Circuit circuit) =>
        YamlWords.Map([("circuit", YamlWords.Text(circuit.Name)), ("isolated at", YamlWords.Text(circuit.IsolatedAt))]);

    private static string StateMap(State state)
    {
        List<(string Key, string Value)> entries = [("state", YamlWords.Text(state.Name))];
        if (!state.DevicesOff.IsEmpty) entries.Add(("off", YamlWords.Texts(state.DevicesOff.Select(device => device.Value))));
        if (!state.CircuitsOff.IsEmpty) entries.Add(("circuits off", YamlWords.Texts(state.CircuitsOff)));
        if (!state.SwitchesOff.IsEmpty) entries.Add(("switches off", YamlWords.Texts(state.SwitchesOff)));
        if (!state.Open.IsEmpty) entries.Add(("open", YamlWords.Texts(state.Open)));
        if (state.MustHold) entries.Add(("must hold", "true"));
        return YamlWords.Map(entries);
    }

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static void AppendList(StringBuilder text, string key, IEnumerable<string> items)
    {
        bool isFirst = true;
        foreach (string item in items)
        {
            if (isFirst) Line(text, $"{key}:");
            isFirst = false;
            Line(text, $"  - {item}");
        }
    }

    private static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');
}
