using System.CommandLine;
using Generator.Library.Reading;
using Generator.Paperwork.SafetyPapers;

namespace Generator.Cli.Options;

/// <summary>The option that takes the country whose guidance the safety papers name.</summary>
internal static class GuidanceOption
{
    public static Option<Guidance?> Of() => new("--guidance")
    {
        HelpName = "COUNTRY",
        Description = "Whose guidance the safety papers name: generic, uk, us or ontario; generic when nothing is said.",
        CustomParser = result =>
        {
            var text = result.Tokens[0].Value;
            if (Guidance.All.FirstOrDefault(g => string.Equals(g.Word, text, StringComparison.OrdinalIgnoreCase)) is { } guidance)
            {
                return guidance;
            }

            result.AddError($"--guidance {FieldText.Shorten(text)} is not a country that these papers know.\nMaybe one of these is meant: {string.Join(", ", Guidance.All.Select(g => g.Word))}.");
            return null;
        },
    };
}
