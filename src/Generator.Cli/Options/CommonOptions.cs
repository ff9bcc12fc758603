using System.CommandLine;

namespace Generator.Cli.Options;

/// <summary>Options that have the same name and meaning everywhere.</summary>
internal static class CommonOptions
{
    /// <summary>May be given several times.</summary>
    public static Option<string[]> Library() => new("--library") { HelpName = "FILE", Description = "A file of your own techniques, attacks or reactions, added to the library. May be given several times." };

    public static Option<bool> Json() => new("--json") { Description = "Prints JSON for other programs instead of text." };

    public static Option<string?> Out(string description) => new("--out") { HelpName = "FILE", Description = description };

    public static Option<string?> Brief(string description) => new("--brief") { HelpName = "BRIEF", Description = description + " A routine in JSON gives the brief inside it." };

    /// <summary>A file to read, or - for standard input.</summary>
    public static Argument<string?> File(string name, string description)
    {
        var argument = new Argument<string?>(name) { Arity = ArgumentArity.ZeroOrOne, Description = description };
        RefuseOptions(argument);
        return argument;
    }

    /// <summary>A mistyped option would otherwise be taken for the argument.</summary>
    public static void RefuseOptions(Argument argument) => argument.Validators.Add(result =>
    {
        if (result.Tokens is [{ Value: ['-', _, ..] word }, ..])
        {
            result.AddError($"There is no option {word}.");
        }
    });
}
