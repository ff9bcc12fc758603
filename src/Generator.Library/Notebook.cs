namespace Generator.Library;

/// <summary>
/// How people write of techniques and attacks in a notebook (<c>notebook.json</c>): words that say nothing, forms of one word, words that mean
/// the same, and what is said of a record beside its name. Turns any text into the few words by which the search compares.
/// </summary>
public sealed class Notebook
{
    /// <summary>So many words behind the one that says so, something is what is met.</summary>
    private const int FarFromMet = 4;

    private readonly HashSet<string> filler;
    private readonly Dictionary<string, string> forms;
    private readonly List<(string[] Written, string[] Means)> meanings;

    /// <summary>Words in the plain form in which they stand somewhere in the file, by which "dodging" is "dodge" and "kicking" is "kick".</summary>
    private readonly HashSet<string> plain;

    /// <summary>Takes the entries of the file as they stand there.</summary>
    public Notebook(
        IEnumerable<string> filler,
        IReadOnlyDictionary<string, string> forms,
        IEnumerable<(string Written, IReadOnlyList<string> Means)> meanings,
        IReadOnlyDictionary<string, IReadOnlyList<string>> attacks,
        IReadOnlyDictionary<string, IReadOnlyList<string>> techniques)
    {
        this.filler = filler.ToHashSet(StringComparer.Ordinal);
        this.forms = new Dictionary<string, string>(forms, StringComparer.Ordinal);
        plain = meanings.SelectMany(m => m.Means.Append(m.Written)).Concat(forms.Values).Concat(attacks.Concat(techniques).SelectMany(e => e.Value))
            .SelectMany(w => PlainWord.Of(w).Split(' ')).SelectMany(w => w.EndsWith('s') ? [w, w[..^1]] : new[] { w }).ToHashSet(StringComparer.Ordinal);
        this.meanings = [.. meanings.Select(m => (Written: Stems(m.Written), Means: m.Means.ToArray())).OrderByDescending(m => m.Written.Length)];
        Attacks = attacks;
        Techniques = techniques;
    }

    /// <summary>A notebook in which every word means itself.</summary>
    public static Notebook Empty { get; } = new([], new Dictionary<string, string>(), [], new Dictionary<string, IReadOnlyList<string>>(), new Dictionary<string, IReadOnlyList<string>>());

    /// <summary>Words that say what is done and with what, such as kick, elbow or throw: they tell records apart more than where something lands.</summary>
    public IReadOnlySet<string> Acting { get; init; } = new HashSet<string>(StringComparer.Ordinal);

    /// <summary>Words without which a phrase that has them is hardly meant: nobody means a headlock who does not say so.</summary>
    public IReadOnlySet<string> Marked { get; init; } = new HashSet<string>(StringComparer.Ordinal);

    /// <summary>Words behind which "the punch" is what something is done about: who slips the jab throws none.</summary>
    public IReadOnlySet<string> Meeting { get; init; } = new HashSet<string>(StringComparer.Ordinal);

    /// <summary>Words each of which is the contrary of the other, such as over and under; both ways.</summary>
    public ILookup<string, string> Contrary { get; init; } = Array.Empty<string>().ToLookup(w => w, StringComparer.Ordinal);

    /// <summary>What is said of attacks, by id without side.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<string>> Attacks { get; }

    /// <summary>What is said of techniques, by id without side.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<string>> Techniques { get; }

    /// <summary>The words that count in a text, in order: word forms brought together, those that mean the same put under one word, filler left out.</summary>
    public IReadOnlyList<string> Tokens(string text) => [.. Pieces(text).SelectMany(p => p.Means)];

    /// <summary>The text piece by piece as it is written (in small letters), with the words that count for it: none for filler.</summary>
    public IEnumerable<(string Written, IReadOnlyList<string> Means)> Pieces(string text)
    {
        var (written, words) = (PlainWord.Of(text).Split(' ', StringSplitOptions.RemoveEmptyEntries), Stems(text));
        for (var i = 0; i < words.Length;)
        {
            var match = meanings.Find(m => m.Written.Length <= words.Length - i && m.Written.AsSpan().SequenceEqual(words.AsSpan(i, m.Written.Length)));
            var length = match.Means is null ? 1 : match.Written.Length;
            yield return (string.Join(' ', written, i, length), match.Means ?? (filler.Contains(words[i]) ? [] : [words[i]]));
            i += length;
        }
    }

    /// <summary>A word in its plain form says something: it is no filler, or a side.</summary>
    public bool Tells(string stem) => !filler.Contains(stem) || stem is "left" or "right";

    /// <summary>The words of a text, each in its plain form, filler included.</summary>
    public string[] Stems(string text) => [.. PlainWord.Of(text).Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Stem)];

    /// <summary>Words of a text that say what is done, but about which something else is: "slips the jab", "over the kick", "takes the punching arm".</summary>
    public IReadOnlySet<string> Met(string text)
    {
        var (written, stems) = (PlainWord.Of(text).Split(' ', StringSplitOptions.RemoveEmptyEntries), Stems(text));
        var met = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 1; i < written.Length; i++)
        {
            var isOfLimb = written[i].EndsWith("ing", StringComparison.Ordinal) && written.ElementAtOrDefault(i + 1) is "arm" or "hand" or "fist" or "wrist" or "leg" or "foot";
            if (isOfLimb || (Array.FindLastIndex(stems, i - 1, Math.Min(i, FarFromMet), Meeting.Contains) is >= 0 and var at && at + 1 < i && written[at + 1] is "the" or "a" or "an" or "his" or "her" or "their"))
            {
                met.UnionWith(Tokens(written[i]).Where(w => Acting.Contains(w) && !Meeting.Contains(w)));
            }
        }

        return met;
    }

    /// <summary>"Kicks", "kicked" and "kicking" are "kick", "grabbing" is "grab"; "thrown" and the like stand in the file.</summary>
    private string Stem(string word)
    {
        if (forms.TryGetValue(word, out var form))
        {
            return form;
        }

        ReadOnlySpan<(string End, string Instead)> ends = [("ies", "y"), ("ches", "ch"), ("shes", "sh"), ("sses", "ss"), ("s", string.Empty)];
        foreach (var (end, instead) in ends)
        {
            if (word.EndsWith(end, StringComparison.Ordinal) && word.Length - end.Length >= 3 && !word.EndsWith("ss", StringComparison.Ordinal))
            {
                return word[..^end.Length] + instead;
            }
        }

        var root = word.EndsWith("ing", StringComparison.Ordinal) ? word[..^3]
            : word.EndsWith("ed", StringComparison.Ordinal) && !word.EndsWith("eed", StringComparison.Ordinal) ? word[..^2] : string.Empty;
        if (root.Length < 3 || !root.Any(c => "aeiouy".Contains(c, StringComparison.Ordinal)))
        {
            return word;
        }

        var isDoubled = root[^1] == root[^2] && root[^1] is not ('l' or 's' or 'z' or 'e' or 'o');
        return isDoubled ? root[..^1] : plain.Contains(root + "e") && !plain.Contains(root) ? root + "e" : root;
    }
}
