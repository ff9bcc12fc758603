using System.CommandLine;

namespace Generator.Cli;

/// <summary>A command whose help ends with an example.</summary>
internal sealed class HouseCommand(string name, string description) : Command(name, description)
{
    /// <summary>A whole line that works as it stands.</summary>
    public string Example { get; set; } = string.Empty;

    /// <summary>Exit codes other than those of every program, with what they mean here.</summary>
    public IReadOnlyList<(int Code, string Meaning)> ExitCodes { get; set; } = [];
}
