namespace Generator.Library.Reading;

/// <summary>The words by which files name the members of an enumeration: <c>LeftLead</c> is written <c>left-lead</c>.</summary>
public static class EnumWords
{
    /// <summary>All words of an enumeration, in its order.</summary>
    public static IReadOnlyList<string> All<T>()
        where T : struct, Enum => [.. Enum.GetValues<T>().Select(Of)];

    public static string Of<T>(T value)
        where T : struct, Enum
    {
        var name = value.ToString();
        var word = new System.Text.StringBuilder(name.Length + 4);
        foreach (var letter in name)
        {
            if (char.IsAsciiLetterUpper(letter) && word.Length > 0)
            {
                word.Append('-');
            }

            word.Append(char.ToLowerInvariant(letter));
        }

        return word.ToString();
    }

    public static bool TryParse<T>(string word, out T value)
        where T : struct, Enum
    {
        foreach (var candidate in Enum.GetValues<T>())
        {
            if (string.Equals(Of(candidate), word, StringComparison.Ordinal))
            {
                value = candidate;
                return true;
            }
        }

        value = default;
        return false;
    }
}
