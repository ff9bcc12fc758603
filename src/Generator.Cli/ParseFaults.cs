using System.CommandLine;
using System.CommandLine.Parsing;
using System.Text;
using Generator.Cli.Help;
using Generator.Library.Reading;

namespace Generator.Cli;

/// <summary>Says what is wrong with a command line, in the form of the house.</summary>
internal static class ParseFaults
{
    /// <summary>Every fault, two lines each: what is wrong, and what to try.</summary>
    public static string Of(ParseResult parsed)
    {
        var name = HelpPage.NameOf(parsed.CommandResult);
        var text = new StringBuilder();
        foreach (var (wrong, maybe) in Faults(parsed, name).Distinct())
        {
            text.Append(name).Append(": ").Append(wrong).Append("\n  ").Append(maybe).Append('\n');
        }

        return text.ToString();
    }

    private static IEnumerable<(string Wrong, string Maybe)> Faults(ParseResult parsed, string name)
    {
        var hasUnknownOption = parsed.UnmatchedTokens.Any(IsOption) || parsed.Errors.Any(e => e.SymbolResult is ArgumentResult { Tokens: [{ Value: ['-', _, ..] }, ..] });
        foreach (var token in parsed.UnmatchedTokens.Where(t => IsOption(t) || !hasUnknownOption))
        {
            yield return Unknown(token, parsed.CommandResult.Command, name);
        }

        foreach (var error in parsed.Errors)
        {
            switch (error.SymbolResult)
            {
                case OptionResult { Tokens.Count: 0 } option:
                    yield return ($"{option.Option.Name} needs a value.", $"Maybe write {option.Option.Name} {option.Option.HelpName}, or see {name} --help.");
                    break;
                case OptionResult { Tokens.Count: > 1, Option.Arity.MaximumNumberOfValues: 1 } option:
                    yield return ($"{option.Option.Name} is given more than once.", "Maybe one of them can go.");
                    break;
                case ArgumentResult { Tokens: [{ Value: ['-', _, ..] word }, ..] }:
                    yield return Unknown(word, parsed.CommandResult.Command, name);
                    break;
                case ArgumentResult { Tokens.Count: 0 } argument:
                    yield return ($"{argument.Argument.Name} is missing.", $"Maybe see the example of {name} --help.");
                    break;
                case CommandResult when parsed.UnmatchedTokens.Count > 0:
                    break;
                default:
                    var parts = error.Message.Split('\n', 2, StringSplitOptions.TrimEntries);
                    yield return (parts[0], parts.Length > 1 ? parts[1] : $"Maybe see {name} --help.");
                    break;
            }
        }
    }

    /// <summary>What follows an unknown option is most likely its value, so that only the option is told.</summary>
    private static bool IsOption(string token) => token.StartsWith('-');

    private static (string Wrong, string Maybe) Unknown(string token, Command command, string name)
    {
        var otherwise = $"Maybe see {name} --help.";
        var word = FieldText.Shorten(token);
        if (IsOption(token))
        {
            return ($"there is no option {word}.", NearestWords.Maybe(token.Split('=')[0], command.Options.Select(o => o.Name).Append("--help"), otherwise));
        }

        return command.Subcommands.Count > 0
            ? ($"there is no command {FieldText.Quote(token)}.", NearestWords.Maybe(token, command.Subcommands.Select(c => c.Name), otherwise))
            : ($"{FieldText.Quote(token)} is one too many.", otherwise);
    }
}
