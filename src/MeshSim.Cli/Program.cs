using System.Text;
using MeshSim.Cli;

// Names of rooms are not only ASCII, and a byte order mark in front of JSON would break its readers.
Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);

return await Application.RunAsync(args, new Terminal
{
    Output = Console.Out,
    Error = Console.Error,
    Width = Console.IsOutputRedirected || Console.WindowWidth <= 0 ? Terminal.PipedWidth : Console.WindowWidth,
    ShowsProgress = !Console.IsErrorRedirected,
    Trace = Environment.GetEnvironmentVariable(Application.TraceVariable) is { Length: > 0 },
});
