using System.Text;

namespace Generator.Library.Reading;

/// <summary>The words by which files name the members of an enumeration: <c>LeftLead</c> is written <c>left-lead</c>.</summary>
public static class EnumWords
{
    /// <summary>All words of an enumeration, in its order.</summary>
    public static IReadOnlyList<string> All<T>()
        where T : struct, Enum => Table<T>.Words;

    public static string Of<T>(T value)
        where T : struct, Enum => Kebab(value.ToString());

    public static bool TryParse<T>(string word, out T value)
        where T : struct, Enum
    {
        var index = Array.IndexOf(Table<T>.Words, word);
        value = index >= 0 ? Table<T>.Values[index] : default;
        return index >= 0;
    }

    private static string Kebab(string name)
    {
        var word = new StringBuilder(name.Length + 4);
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

    /// <summary>Worked out once for each enumeration: a library holds thousands of such words.</summary>
    private static class Table<T>
        where T : struct, Enum
    {
        public static readonly T[] Values = Enum.GetValues<T>();

        public static readonly string[] Words = Array.ConvertAll(Enum.GetNames<T>(), Kebab);
    }
}
