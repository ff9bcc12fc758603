using System.Text.RegularExpressions;
using Generator.Library;
using Generator.Library.Reading;

namespace Generator.Library.Words;

/// <summary>
/// Ranks records by how well a text of a notebook fits them. A record is known by several phrases (id, name, other names, what is said of it) and
/// by weaker words (family, height, hazard). Rare words count more than common ones, by the inverse document frequency of Spärck Jones (1972);
/// the best phrase decides, and how much of that phrase was said.
/// </summary>
public sealed class Ranking<T>
{
    /// <summary>Shares of a word that stands in another phrase of the record, and of one that only describes it. Set by the cells that are not held out.</summary>
    private const double Elsewhere = 0.7, Described = 0.45;

    /// <summary>How much of a fit hangs on the phrase holding nothing else.</summary>
    private const double Whole = 0.25;

    /// <summary>How much more a word counts that says what is done or with what, and what is left of a fit with a record that speaks of the contrary. Set likewise.</summary>
    private const double Acting = 1.6, OfContrary = 0.6;

    /// <summary>What is left of a fit with a phrase of which something is not said that nobody would leave out.</summary>
    private const double Unmarked = 0.7;

    /// <summary>What is left of the weight of a word that says about what something is done.</summary>
    private const double OfMet = 0.3;

    /// <summary>What a fit with one of the things that "steps outside and takes the wrist" says counts at least; the more, the more of the words it takes.</summary>
    private const double OfPart = 0.5;

    /// <summary>Of two that fit alike the one with the shorter phrase is meant.</summary>
    private const double Longer = 0.004;

    /// <summary>A record of such a handicap does not make its words common.</summary>
    private const double Rare = 0.3;

    private readonly Notebook notebook;
    private readonly int common;
    private readonly List<Known> records;
    private readonly Dictionary<string, int> frequency = new(StringComparer.Ordinal);

    /// <summary>Two words by how they are written as one: "sidestep" is "side step".</summary>
    private readonly Dictionary<string, string> joined = new(StringComparer.Ordinal);

    /// <summary>Two words that some record has one behind the other.</summary>
    private readonly HashSet<string> apart = new(StringComparer.Ordinal);

    /// <summary>Prepares the records; each text is read by the notebook once.</summary>
    /// <param name="notebook">How words are read.</param>
    /// <param name="records">The records; ties go by this order.</param>
    public Ranking(Notebook notebook, IEnumerable<Ranked<T>> records)
    {
        this.notebook = notebook;
        this.records = [.. records.Select(Know)];
        foreach (var record in this.records)
        {
            var counts = record.Source.Handicap < Rare ? 1 : 0;
            common += counts;
            foreach (var word in record.All.Union(record.Weak))
            {
                frequency[word] = frequency.GetValueOrDefault(word) + counts;
            }
        }

        foreach (var stems in this.records.SelectMany(r => r.Source.Phrases).Select(notebook.Stems))
        {
            foreach (var (one, two) in stems.Zip(stems.Skip(1)))
            {
                apart.Add(one + " " + two);
                if (!frequency.ContainsKey(one + two))
                {
                    joined.TryAdd(one + two, one + " " + two);
                }
            }
        }
    }

    /// <summary>How many pieces of a text a record has as they are written, and how many say nothing of it; one that is only spelt alike is neither.</summary>
    public (int AsWritten, int Unread) Covers(string text, Func<T, bool> isTaken)
    {
        var taken = records.Where(r => isTaken(r.Source.Record)).ToList();
        var pieces = notebook.Pieces(Parted(text)).Where(p => p.Means.Count > 0).ToList();
        return (pieces.Count(p => p.Means.Any(w => taken.Exists(r => r.All.Contains(w) || r.Weak.Contains(w)))), Unread(text, isTaken).Count);
    }

    /// <summary>Words of a text that count as others because they are spelt alike, as what they count.</summary>
    public IReadOnlyList<(string Written, string As)> Respelt(string text, Func<T, bool> isTaken)
    {
        var taken = records.Where(r => isTaken(r.Source.Record)).ToList();
        return [.. notebook.Pieces(Parted(text)).SelectMany(p => p.Means.Select(w => (p.Written, As: Spelt(w), Word: w)))
            .Where(p => !string.Equals(p.Word, p.As, StringComparison.Ordinal) && taken.Exists(r => r.All.Contains(p.As) || r.Weak.Contains(p.As))).Select(p => (p.Written, p.As))];
    }

    /// <summary>Something of a text that says what one record does another says too, if anything does: a walk in is no front kick.</summary>
    public bool ActsLike(string text, T other, T one)
    {
        var (others, ones) = (records.Find(r => Equals(r.Source.Record, other))!, records.Find(r => Equals(r.Source.Record, one))!);
        var acts = Doing(text).Where(ones.All.Contains).ToList();
        return acts.Count == 0 || acts.Exists(w => others.All.Contains(w) || others.Weak.Contains(w));
    }

    /// <summary>How many of the words of a text that say what is done, or with what, a record has: a jab to the nose is a jab before it is anything else to the nose.</summary>
    public int Acts(string text, T record)
    {
        var known = records.Find(r => Equals(r.Source.Record, record))!;
        return Doing(text).Count(known.All.Contains);
    }

    /// <summary>Every word of a text that counts is one that some record has.</summary>
    public bool Knows(string text) => notebook.Tokens(Parted(text)).All(frequency.ContainsKey);

    /// <summary>The records that share a word with the text, best first; those that are called just so before all others.</summary>
    /// <param name="written">As written; typing mistakes are allowed for, and stances say nothing.</param>
    /// <param name="most">No more than so many.</param>
    public IReadOnlyList<(T Record, double Fit)> Find(string written, int most)
    {
        var text = StepWords.Plain(StanceWords.Without(written));
        var asked = Asked(text);
        if (asked.Count == 0)
        {
            return [];
        }

        var met = notebook.Met(Parted(text));
        var (whole, sum) = (PlainWord.Squeezed(written), asked.Sum(w => Weight(w, met)));
        string[] parts = [.. Regex.Split(text, @"\s(?:and|or|then|till|until)\s|[,;]\s", RegexOptions.IgnoreCase).Where(p => p.Length < text.Length)];
        var doings = parts.Select(Asked).Where(a => a.Count > 0).ToList();
        return [.. records.Select(r => (r.Source.Record, Fit: doings.Select(d => (OfPart + ((1 - OfPart) * d.Sum(w => Weight(w, met)) / sum)) * Fit(d, asked, met, r)).Append(Fit(asked, asked, met, r)).Max() + (r.Written.Contains(whole) ? 1 : 0)))
            .Where(r => r.Fit > 0)
            .OrderByDescending(r => r.Fit)
            .Take(most)];
    }

    /// <summary>The text without filler before and behind it, each word in its plain form: "slaps him" is "slap".</summary>
    public string Bare(string text)
    {
        var stems = notebook.Stems(Parted(text)).ToList();
        var pieces = stems.SkipWhile(s => !notebook.Tells(s)).Reverse().SkipWhile(s => !notebook.Tells(s)).Reverse();
        return string.Join(' ', pieces);
    }

    /// <summary>The pieces of a text of which no record that was taken speaks: neither filler, nor in its phrases, nor among what describes it.</summary>
    public IReadOnlyList<string> Unread(string text, Func<T, bool> isTaken)
    {
        var taken = records.Where(r => isTaken(r.Source.Record)).ToList();
        return [.. notebook.Pieces(Parted(text)).Where(p => p.Means.Count > 0 && !p.Means.Select(Spelt).Any(w => taken.Exists(r => r.All.Contains(w) || r.Weak.Contains(w)))).Select(p => p.Written)];
    }

    /// <summary>The words of a text that say what is done or with what, and not what it is done about.</summary>
    private IEnumerable<string> Doing(string text)
    {
        var met = notebook.Met(Parted(text));
        return Asked(text).Where(w => notebook.Acting.Contains(w) && !met.Contains(w));
    }

    private HashSet<string> Asked(string text) => notebook.Tokens(Parted(text)).Select(Spelt).ToHashSet(StringComparer.Ordinal);

    private static double Handicapped(double fit, double handicap) => fit <= 0 ? 0 : Math.Max(fit - handicap, double.Epsilon);

    private Known Know(Ranked<T> source)
    {
        var phrases = source.Phrases.Select(p => notebook.Tokens(p).ToHashSet(StringComparer.Ordinal)).Where(p => p.Count > 0).ToList();
        return new Known(source, source.Phrases.Select(PlainWord.Squeezed).ToHashSet(StringComparer.Ordinal), phrases, phrases.SelectMany(p => p).ToHashSet(StringComparer.Ordinal), source.Weak.SelectMany(notebook.Tokens).ToHashSet(StringComparer.Ordinal));
    }

    private double Fit(HashSet<string> asked, HashSet<string> whole, IReadOnlySet<string> met, Known record)
    {
        var (best, sum) = (0d, asked.Sum(w => Weight(w, met)));
        foreach (var phrase in record.Phrases)
        {
            var (hit, beside) = (0d, 0d);
            foreach (var word in asked)
            {
                if (phrase.Contains(word))
                {
                    hit += Weight(word, met);
                }
                else if (record.All.Contains(word))
                {
                    beside += Elsewhere * Weight(word, met);
                }
                else if (record.Weak.Contains(word))
                {
                    beside += Described * Weight(word, met);
                }
            }

            var unsaid = phrase.Where(w => !asked.Contains(w)).Sum(Weight);
            var said = hit > 0 ? hit / (hit + unsaid) : 0;
            var isLeftOut = phrase.Any(w => notebook.Marked.Contains(w) && !whole.Contains(w));
            best = Math.Max(best, ((isLeftOut ? Unmarked : 1) * (hit + beside) / sum * (1 - Whole + (Whole * said))) - (Longer * phrase.Count));
        }

        var isContrary = asked.Any(w => !record.All.Contains(w) && notebook.Contrary[w].Any(c => record.All.Contains(c) && !asked.Contains(c)));
        return Handicapped(isContrary ? OfContrary * best : best, record.Source.Handicap);
    }

    /// <summary>The text with words parted that are written as one, and in one that are written as two, as records have them: "armbar", "head lock".</summary>
    private string Parted(string asWritten)
    {
        var text = PersonWords.Without(asWritten);
        var (written, stems) = (PlainWord.Of(text).Split(' ', StringSplitOptions.RemoveEmptyEntries), notebook.Stems(text));
        var words = new List<string>(written.Length);
        for (var i = 0; i < written.Length; i++)
        {
            var one = i + 1 < stems.Length ? stems[i] + stems[i + 1] : string.Empty;
            var isOne = frequency.ContainsKey(one) && !apart.Contains(stems[i] + " " + stems[i + 1]);
            words.Add(isOne ? one : joined.GetValueOrDefault(stems[i], written[i]));
            i += isOne ? 1 : 0;
        }

        return string.Join(' ', words);
    }

    /// <summary>A word that no record has is read as the known one nearest to it, if it is near.</summary>
    private string Spelt(string word)
    {
        if (word.Length < 4 || frequency.ContainsKey(word))
        {
            return word;
        }

        var most = word.Length / 4;
        return frequency.Keys.Where(k => Math.Abs(k.Length - word.Length) <= most)
            .Select(k => (Word: k, Off: NearestWords.Distance(word, k)))
            .Where(k => k.Off <= most)
            .OrderBy(k => k.Off).ThenBy(k => k.Word.Order().SequenceEqual(word.Order()) ? 0 : 1).ThenBy(k => k.Word, StringComparer.Ordinal)
            .Select(k => k.Word).FirstOrDefault(word);
    }

    private double Weight(string word, IReadOnlySet<string> met) => (met.Contains(word) ? OfMet : 1) * Weight(word);

    private double Weight(string word) => (notebook.Acting.Contains(word) ? Acting : 1) * Math.Log(1 + (Math.Max(common, 1) / (0.5 + Math.Max(frequency.GetValueOrDefault(word), 0.5))));

    private sealed record Known(Ranked<T> Source, HashSet<string> Written, List<HashSet<string>> Phrases, HashSet<string> All, HashSet<string> Weak);
}
