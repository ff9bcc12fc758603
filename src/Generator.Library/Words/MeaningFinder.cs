using Generator.Domain;
using Generator.Domain.Sketches;

namespace Generator.Library.Words;

/// <summary>
/// What the words in one cell of a sketch allow: one record, both sides of it, a family ("any throw"), or several meanings. A word that fits
/// several things keeps them all; the solver settles which.
/// </summary>
public sealed class MeaningFinder
{
    /// <summary>A text that fits no record better than this means nothing.</summary>
    private const double Least = 0.2;

    /// <summary>Whatever fits more than half as well as the best may be meant too: attack and technique then settle it between them.</summary>
    private const double Near = 0.6;

    private const int Most = 6;

    private readonly WordFinder finder;
    private readonly ILookup<string, Technique> techniqueSides;
    private readonly ILookup<string, Attack> attackSides;
    private readonly Book book;

    public MeaningFinder(Book book)
    {
        this.book = book;
        finder = new WordFinder(book);
        techniqueSides = book.Techniques.ToLookup(t => t.BaseId, StringComparer.Ordinal);
        attackSides = book.Attacks.ToLookup(a => a.BaseId, StringComparer.Ordinal);
    }

    /// <summary>What may be meant of what the hero does.</summary>
    public Meaning Technique(string text)
    {
        var family = FamilyWords.Of(text);
        return family is { } f
            ? new Meaning([.. book.Techniques.Where(t => t.Family == f && !t.HasNoTarget).Select(t => t.Id)], null, false, [])
            : Read(text, OfItsKind(text, Find(text, finder.Technique, RankedRecords.Techniques(book), t => techniqueSides[t.BaseId], t => t.Id, t => t.Side)), RankedRecords.Techniques(book), t => techniqueSides[t.BaseId].Select(s => s.Id), limbs: true);
    }

    /// <summary>Of several guesses no beats of the story, and only kicks where a kick is named: a throw may well be an escape, but a kick is a kick.</summary>
    private Meaning OfItsKind(string text, Meaning meaning)
    {
        if (!meaning.IsGuess)
        {
            return meaning;
        }

        var isKick = FamilyWords.Within(text) == Family.Kick;
        var kept = meaning.Ids.Where(id => isKick ? book.Technique(id).Family is Family.Kick or Family.Finish : book.Technique(id).Family != Family.Pause).ToList();
        return kept.Count > 0 ? meaning with { Ids = kept } : meaning;
    }

    /// <summary>
    /// The same, of what the hero does about an attack: where none of it meets the attack but the words name a kind of technique ("middle block"),
    /// any of that kind which does is meant as well.
    /// </summary>
    public Meaning Technique(string text, IReadOnlyList<string> attacks)
    {
        var meaning = Technique(text);
        var lines = attacks.Select(book.Attack).Where(a => !a.IsWalkIn).Select(a => a.Line).ToList();
        if (lines.Count == 0 || FamilyWords.Within(text) is not { } family || meaning.Ids.Any(id => lines.Any(book.Technique(id).Answers.Contains)))
        {
            return meaning;
        }

        var meets = book.Techniques.Where(t => t.Family == family && lines.Any(t.Answers.Contains)).Select(t => t.Id);
        return meaning with { Ids = [.. meaning.Ids.Union(meets, StringComparer.Ordinal)], IsGuess = true };
    }

    /// <summary>What may be meant of something that the hero does with nobody; "pause" alone is any beat of the story.</summary>
    public Meaning Beat(string text)
    {
        var beats = book.Techniques.Where(t => t.HasNoTarget).ToList();
        if (PlainWord.Of(text) is "pause" or "a pause" or "beat" or "a beat")
        {
            return new Meaning([.. beats.Where(t => t.IsStoryPause).Select(t => t.Id)], null, false, []);
        }

        var found = Technique(text);
        return found with { Ids = [.. found.Ids.Where(id => book.Technique(id).HasNoTarget)] };
    }

    /// <summary>What may be meant of what the attacker does. How attackers stand is not followed, so that lead and rear say nothing of them.</summary>
    public Meaning Attack(string text) =>
        Read(text, Find(text, finder.Attack, RankedRecords.Attacks(book), a => attackSides[a.BaseId], a => a.Id, a => a.Side), RankedRecords.Attacks(book), a => attackSides[a.BaseId].Select(s => s.Id), limbs: false);

    /// <summary>What may be meant of how the attacker takes it.</summary>
    public Meaning Reaction(string text) => Read(text, Find(text, finder.Reaction, RankedRecords.Reactions(book), r => [r], r => r.Id, _ => null), RankedRecords.Reactions(book), r => [r.Id], limbs: false);

    private static Meaning Find<T>(string text, Func<string, Lookup<T>> exact, Ranking<T> ranking, Func<T, IEnumerable<T>> sides, Func<T, string> idOf, Func<T, Side?> sideOf)
    {
        var lookup = exact(text);
        if (lookup.Found.Count > 0)
        {
            return new Meaning([.. lookup.Found.Select(idOf)], null, false, []);
        }

        var ranked = ranking.Find(text, Most);
        if (ranked.Count == 0 || ranked[0].Fit < Least)
        {
            return new Meaning([], null, false, lookup.Suggestions);
        }

        var side = LimbWords.SideOf(text);
        var found = ranked.TakeWhile(r => r.Fit >= Near * Math.Min(1, ranked[0].Fit)).SelectMany(r => sides(r.Record)).ToList();
        var sided = found.Where(r => side is null || sideOf(r) is null || sideOf(r) == side).ToList();
        return new Meaning([.. (sided.Count > 0 ? sided : found).Select(idOf)], null, true, lookup.Suggestions);
    }

    /// <summary>Adds which limb is meant, and which words nothing that was taken speaks of.</summary>
    private static Meaning Read<T>(string text, Meaning meaning, Ranking<T> ranking, Func<T, IEnumerable<string>> ids, bool limbs)
    {
        var foot = LimbWords.FootOf(text) is { } said && (meaning.IsGuess || said.Foot is SketchFoot.Lead or SketchFoot.Rear) ? said : ((SketchFoot Foot, string Word)?)null;
        var unread = ranking.Unread(text, r => ids(r).Any(meaning.Ids.Contains)).Concat(meaning.IsGuess ? LimbWords.UnreadSides(text) : []);
        return meaning with { Foot = limbs ? foot?.Foot : null, Unread = [.. unread.Where(u => !limbs || !string.Equals(u, foot?.Word, StringComparison.Ordinal)).Distinct(StringComparer.Ordinal)] };
    }
}
