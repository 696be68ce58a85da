using System.CommandLine;
using MeshSim.Cli.Wording;

namespace MeshSim.Cli.Commands;

/// <summary>What the commands have in common that compute something about a home.</summary>
internal sealed class StudyArguments
{
    /// <summary>The home folder.</summary>
    public Argument<string> Home { get; } = SharedArguments.Home();

    /// <summary>One network alone.</summary>
    public Option<string?> Network { get; } = new("--network")
    {
        Description = "One network alone; without it, all of the home",
        HelpName = "NAME",
    };

    /// <summary>The state of the house.</summary>
    public Option<string?> State { get; } = new("--state")
    {
        Description = "A state of the home, such as bedtime; without it, everything is on and every door is closed",
        HelpName = "NAME",
    };

    /// <summary>The path-loss model.</summary>
    public Option<string> Model { get; } = MakeModel();

    /// <summary>JSON instead of text.</summary>
    public Option<bool> Json { get; } = SharedArguments.Json();

    /// <summary>Adds them to a command.</summary>
    public void AddTo(Command command)
    {
        command.Arguments.Add(Home);
        foreach (Option option in new Option[] { Network, State, Model, Json }) command.Options.Add(option);
    }

    /// <summary>Adds them to a command that chooses its networks in another way.</summary>
    public void AddWithoutNetworkTo(Command command)
    {
        command.Arguments.Add(Home);
        foreach (Option option in new Option[] { State, Model, Json }) command.Options.Add(option);
    }

    private static Option<string> MakeModel()
    {
        var model = new Option<string>("--model")
        {
            Description = $"The path-loss model: {string.Join(", ", ModelWords.All)}",
            HelpName = "MODEL",
            DefaultValueFactory = _ => ModelWords.All[0],
        };
        model.AcceptOnlyFromAmong(ModelWords.All);
        return model;
    }
}
