using System.Globalization;
using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>The attackers of a brief by the words that stand for them: their names, or A1, A2 … in order. Capitals do not matter.</summary>
internal sealed class Cast(IReadOnlyList<string> names)
{
    /// <summary>Most attackers in one fight.</summary>
    public const int Most = 8;

    public IReadOnlyList<string> Names { get; } = names;

    public static Cast Of(Brief brief) => new([.. brief.Attackers.Select(a => a.Name)]);

    /// <summary>"A1" for the first.</summary>
    public static string Label(int index) => "A" + (index + 1).ToString(CultureInfo.InvariantCulture);

    /// <summary>Number of the attacker from 0, or −1.</summary>
    public int Find(string word)
    {
        for (var i = 0; i < Names.Count; i++)
        {
            if (string.Equals(Names[i], word, StringComparison.OrdinalIgnoreCase))
            {
                return i;
            }
        }

        return Enumerable.Range(0, Names.Count).Where(i => string.Equals(Label(i), word, StringComparison.OrdinalIgnoreCase)).FirstOrDefault(-1);
    }

    /// <summary>The message that nobody is called so.</summary>
    public static string Unknown(string word) => $"No attacker is called {FieldText.Quote(word)}.";

    /// <summary>The advice that goes with it.</summary>
    public string Advice(string word) => Names.Count == 0 ? "Maybe the brief lacks its attackers." : NearestWords.Maybe(word, Names, NearestWords.OneOf(Names));
}
