namespace Generator.Domain;

/// <summary>How the name that a brief gives to a thing or a prop stands in a sentence.</summary>
public static class InSentence
{
    private static readonly string[] Determiners = ["a", "an", "his", "her", "their", "its", "my", "our", "your", "this", "that"];

    /// <summary>"the rail" of "rail", "the rail" and "The rail"; a name that says whose it is, or begins with another article, has none before it.</summary>
    public static string Of(string name)
    {
        var first = name.Split(' ', 2)[0];
        return string.Equals(first, "the", StringComparison.OrdinalIgnoreCase) ? "the" + name[first.Length..]
            : Determiners.Contains(first, StringComparer.OrdinalIgnoreCase) || first.EndsWith("'s", StringComparison.Ordinal) || first.EndsWith("’s", StringComparison.Ordinal) ? name
            : "the " + name;
    }
}
