using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Generator.Cli.Help;

/// <summary>Prints the help of the command that was named; wins over whatever else is wrong with the line.</summary>
internal sealed class HelpAction : SynchronousCommandLineAction
{
    public static HelpOption Option() => new() { Action = new HelpAction(), Description = "Shows this page." };

    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        parseResult.InvocationConfiguration.Output.Write(HelpPage.Of(parseResult.CommandResult));
        return ExitCode.Good;
    }
}
