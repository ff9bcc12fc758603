using System.CommandLine;
using Generator.Library.Reading;

namespace Generator.Cli.Options;

/// <summary>An option that takes one of a few words, refused in the words of the house.</summary>
internal static class WordOption
{
    /// <param name="name">With its dashes.</param>
    /// <param name="value">How help calls the word.</param>
    /// <param name="description">For help.</param>
    /// <param name="what">What the word names, for the refusal: "a frame rate".</param>
    /// <param name="whoKnows">Who knows such words: "these papers know".</param>
    /// <param name="all">What may be chosen.</param>
    /// <param name="word">The word for each.</param>
    public static Option<T?> Of<T>(string name, string value, string description, string what, string whoKnows, IReadOnlyList<T> all, Func<T, string> word)
        where T : class => new(name)
        {
            HelpName = value,
            Description = description,
            CustomParser = result =>
            {
                var text = result.Tokens[0].Value;
                if (all.FirstOrDefault(t => string.Equals(word(t), text, StringComparison.OrdinalIgnoreCase)) is { } known)
                {
                    return known;
                }

                result.AddError($"{name} {FieldText.Shorten(text)} is not {what} that {whoKnows}.\nMaybe one of these is meant: {string.Join(", ", all.Select(word))}.");
                return null;
            },
        };
}
