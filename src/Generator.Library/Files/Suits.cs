using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>What is said when a reaction does not go with a technique.</summary>
internal static class Suits
{
    public static string Message(Technique technique, Reaction reaction) => $"The reaction {reaction.Id} does not suit {technique.Id}.";

    public static string Advice(Technique technique) => technique.Reactions.Count == 0
        ? "Maybe leave the reaction out: nobody reacts to this."
        : NearestWords.OneOf(technique.Reactions);
}
