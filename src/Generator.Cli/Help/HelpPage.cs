using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Parsing;
using System.Globalization;
using System.Text;
using Generator.Paperwork.Text;

namespace Generator.Cli.Help;

/// <summary>The help of one command: what it does, how it is called, its options, and an example.</summary>
internal static class HelpPage
{
    private const int Gap = 2;

    public static string Of(CommandResult result)
    {
        var command = result.Command;
        var name = NameOf(result);
        var text = new StringBuilder();
        Add(text, Page.Wrap(command.Description ?? string.Empty, Page.Width));
        text.Append('\n').Append("Usage: ").Append(Usage(name, command)).Append('\n');
        Table(text, "Commands", command.Subcommands.Select(c => (c.Name, c.Description)));
        Table(text, "Arguments", command.Arguments.Select(a => (a.Name, a.Description)));
        Table(text, "Options", OptionsOf(result).Select(o => (Signature(o), o.Description)));
        if (command is HouseCommand { ExitCodes.Count: > 0 } known)
        {
            Table(text, "Exit codes", known.ExitCodes.Select(c => (c.Code.ToString(CultureInfo.InvariantCulture), (string?)c.Meaning)));
        }

        if (command is HouseCommand { Example.Length: > 0 } house)
        {
            text.Append("\nExample:\n  ").Append(house.Example).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>"generator library list".</summary>
    public static string NameOf(CommandResult result) =>
        result.Parent is CommandResult parent ? NameOf(parent) + " " + result.Command.Name : result.Command.Name;

    private static string Usage(string name, Command command)
    {
        var arguments = string.Concat(command.Arguments.Select(a => a.Arity.MinimumNumberOfValues == 0 ? $" [{a.Name}]" : $" {a.Name}"));
        return name + (command.Subcommands.Count > 0 ? " COMMAND" : string.Empty) + arguments + " [options]";
    }

    private static IEnumerable<Option> OptionsOf(CommandResult result)
    {
        var own = result.Command.Options.Where(o => !o.Hidden);
        for (var above = result.Parent as CommandResult; above is not null; above = above.Parent as CommandResult)
        {
            own = own.Concat(above.Command.Options.Where(o => o.Recursive));
        }

        return own.OrderBy(o => o is HelpOption or VersionOption);
    }

    private static string Signature(Option option)
    {
        var name = option is HelpOption ? "-h, --help" : option.Name;
        return option.HelpName is { Length: > 0 } value ? $"{name} {value}" : name;
    }

    private static void Table(StringBuilder text, string title, IEnumerable<(string Name, string? Words)> rows)
    {
        var all = rows.ToList();
        if (all.Count == 0)
        {
            return;
        }

        text.Append('\n').Append(title).Append(":\n");
        var width = all.Max(r => r.Name.Length);
        foreach (var (name, words) in all)
        {
            Add(text, Page.Row(Gap, (name, width), (words ?? string.Empty, Page.Width - width - (2 * Gap))));
        }
    }

    private static void Add(StringBuilder text, IEnumerable<string> lines)
    {
        foreach (var line in lines)
        {
            text.Append(line).Append('\n');
        }
    }
}
