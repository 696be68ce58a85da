namespace MeshSim.Files.Diagnostics;

/// <summary>How much a diagnostic matters.</summary>
public enum Severity
{
    /// <summary>The home cannot be used until it is put right.</summary>
    Error,

    /// <summary>The home is used; a person should know what was assumed or moved.</summary>
    Notice,
}

/// <summary>One remark about a file that a person wrote. Printed as <c>file(line,column): error: message; help</c>.</summary>
/// <param name="File">The file, as a path that can be opened from where the reader was called.</param>
/// <param name="Line">Line in the file, from 1.</param>
/// <param name="Column">Character in the line, from 1.</param>
/// <param name="Severity">How much it matters.</param>
/// <param name="Message">What is wrong.</param>
/// <param name="Help">What would be right; empty when there is nothing to suggest.</param>
public sealed record Diagnostic(string File, int Line, int Column, Severity Severity, string Message, string Help)
{
    /// <summary>The line that is printed; editors jump to it.</summary>
    public override string ToString()
    {
        string severity = Severity == Severity.Error ? "error" : "notice", help = Help.Length > 0 ? "; " + Help : "";
        return FormattableString.Invariant($"{File}({Line},{Column}): {severity}: {Message}{help}");
    }
}
