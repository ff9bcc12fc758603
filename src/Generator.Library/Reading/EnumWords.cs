using System.Collections.Concurrent;
using System.Text;

namespace Generator.Library.Reading;

/// <summary>The words by which files name the members of an enumeration: <c>LeftLead</c> is written <c>left-lead</c>.</summary>
/// <remarks>The work goes by <see cref="Type"/>: generic code is compiled anew for every enumeration, which costs each start of the program.</remarks>
public static class EnumWords
{
    /// <summary>Worked out once for each enumeration: a library holds thousands of such words.</summary>
    private static readonly ConcurrentDictionary<Type, EnumTable> Tables = new();

    /// <summary>All words of an enumeration, in its order.</summary>
    public static IReadOnlyList<string> All<T>()
        where T : struct, Enum => All(typeof(T));

    /// <inheritdoc cref="All{T}"/>
    public static IReadOnlyList<string> All(Type type) => Table(type).Words;

    /// <summary>The member of an enumeration that a word names; null when it names none.</summary>
    public static object? Find(Type type, string word)
    {
        var table = Table(type);
        var index = Array.IndexOf(table.Words, word);
        return index >= 0 ? table.Values[index] : null;
    }

    public static string Of<T>(T value)
        where T : struct, Enum => Kebab(value.ToString());

    public static bool TryParse<T>(string word, out T value)
        where T : struct, Enum
    {
        var found = Find(typeof(T), word);
        value = found is null ? default : (T)found;
        return found is not null;
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

    private static EnumTable Table(Type type) => Tables.GetOrAdd(type, t => new EnumTable([.. Enum.GetNames(t).Select(Kebab)], [.. Enum.GetValues(t).Cast<object>()]));

    private sealed record EnumTable(string[] Words, object[] Values);
}
