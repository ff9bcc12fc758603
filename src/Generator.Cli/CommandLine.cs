using System.CommandLine;
using Generator.Cli.Commands;
using Generator.Cli.Help;
using Generator.Library.Reading;

namespace Generator.Cli;

/// <summary>From arguments to an exit code; never a stack trace.</summary>
public static class CommandLine
{
    public const string Name = "generator";

    /// <summary>Runs one command.</summary>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    public static int Run(IReadOnlyList<string> args, Desk desk)
    {
        try
        {
            var parsed = Root(desk).Parse(args, new ParserConfiguration { EnablePosixBundling = false, ResponseFileTokenReplacer = null });
            if (parsed.Errors.Count > 0 && parsed.Action is not HelpAction)
            {
                desk.Err.Write(ParseFaults.Of(parsed));
                return ExitCode.Input;
            }

            return parsed.Invoke(new InvocationConfiguration { Output = desk.Out, Error = desk.Err, EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = null });
        }
        catch (RefusedException refused)
        {
            desk.Err.WriteLine(UnseenMarks.Shown(refused.Message));
            return refused.Code;
        }
        catch (Solver.SeveralMarksException several)
        {
            desk.Err.WriteLine(UnseenMarks.Shown(several.Message));
            return ExitCode.Input;
        }
        catch (OutputException full)
        {
            desk.Err.WriteLine(full.Message);
            return ExitCode.NoOutput;
        }
        catch (Exception) when (Guarding.Surroundings.FolderIsGone())
        {
            desk.Err.WriteLine("Generator stopped: the folder in which it was started is gone.");
            desk.Err.WriteLine("  Maybe change into a folder that is there, and run it again.");
            return ExitCode.Surroundings;
        }
        catch (Exception fault) when (IsMemory(fault))
        {
            desk.Err.WriteLine("Generator stopped: there was not enough memory.");
            desk.Err.WriteLine("  Maybe ask for less in the brief. Files were left as they were.");
            return ExitCode.BrokenDown;
        }
        catch (Exception fault)
        {
            desk.Err.WriteLine($"Generator stopped: {fault.Message}");
            desk.Err.WriteLine("  Maybe this is a fault of the program: please report it, with the command and the files that were given. Files were left as they were.");
            return ExitCode.Fault;
        }
    }

    private static bool IsMemory(Exception fault) => fault is OutOfMemoryException || (fault.InnerException is { } inner && IsMemory(inner));

    /// <summary>The command that holds all others.</summary>
    public static Command Root(Desk desk)
    {
        var root = new HouseCommand(Name, "Drafts and audits fight routines, one hero against one to eight attackers, for trained performers under a qualified fight coordinator.")
        {
            DraftCommand.Of(desk),
            CompleteCommand.Of(desk),
            AuditCommand.Of(desk),
            ShapeCommand.Of(desk),
            AlternativesCommand.Of(desk),
            RepairCommand.Of(desk),
            ReviseCommand.Of(desk),
            ExplainCommand.Of(desk),
            PaperworkCommand.Of(desk),
            RehearseCommand.Of(desk),
            LibraryCommand.Of(desk),
            GuideCommand.Of(desk),
        };
        root.Example = "generator draft --attackers 3 --counts 48";
        root.Options.Add(HelpAction.Option());
        root.Options.Add(new VersionOption { Description = "Shows the version." });
        root.SetAction(parsed =>
        {
            desk.Out.Write(HelpPage.Of(parsed.CommandResult));
            return ExitCode.Good;
        });
        return root;
    }
}
