using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library;

namespace Generator.Library.Words;

/// <summary>
/// What the words in one cell of a sketch allow: one record, both sides of it, a family ("any throw"), or several meanings. A word that fits
/// several things keeps them all; the solver settles which.
/// </summary>
public sealed class MeaningFinder
{
    /// <summary>A text that fits no record better than this means nothing.</summary>
    private const double Least = 0.2;

    /// <summary>
    /// Whatever fits so well, as a share of the best, may be meant too: attack and technique then settle it between them. Where the best has every word of the text, what lacks one must fit better.
    /// </summary>
    private const double Near = 0.6, NearWhole = 0.8;

    /// <summary>What fits so well, as a share of the best, may be meant where the best does not go with what is written beside it: the words beside it say part of what is meant ("from behind").</summary>
    private const double Besides = 0.4;

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
            : ReadTechnique(text, OfItsKind(text, Find(text, finder.Technique, RankedRecords.Techniques(book), t => techniqueSides[t.BaseId], t => t.Id, t => t.Side)));
    }

    private Meaning ReadTechnique(string text, Meaning meaning) => Read(text, meaning, RankedRecords.Techniques(book), t => techniqueSides[t.BaseId].Select(s => s.Id), limbs: true);

    /// <summary>
    /// Of several guesses no beats of the story, only kicks where a kick is named (a throw may well be an escape, but a kick is a kick), no defences
    /// where the likeliest is a blow ("punch to the face" catches none), and nothing that is done to the hero unless the words say so: who "sweeps the leg" is not swept.
    /// </summary>
    private Meaning OfItsKind(string text, Meaning meaning)
    {
        if (!meaning.IsGuess)
        {
            return meaning;
        }

        var isKick = FamilyWords.Within(text) == Family.Kick;
        var own = Kept(meaning, t => isKick ? t.Family is Family.Kick or Family.Finish : t.Family != Family.Pause && (t.Family != Family.Setback || IsSuffered(text)));
        return IsBlow(own.Ids[0]) && book.Notebook.Tokens(text).Any(book.Notebook.Acting.Contains) ? Kept(own, t => IsBlow(t.Id)) : own;
    }

    private bool IsBlow(string id) => book.Technique(id).Family is Family.Strike or Family.Kick or Family.Finish;

    private Meaning Kept(Meaning meaning, Func<Technique, bool> keep) =>
        meaning.Ids.Where(id => keep(book.Technique(id))).ToList() is { Count: > 0 } kept ? meaning with { Ids = kept } : meaning;

    private static bool IsSuffered(string text) => PlainWord.Of(text).Split(' ')[0] is "is" or "gets" or "takes" or "falls" or "goes" or "hit" or "caught" or "held" or "knocked" or "swept" or "thrown";

    /// <summary>
    /// The same, of what the hero does about an attack. Of several guesses about a blow those are meant that meet it; where none does but the words
    /// name a kind of technique ("middle block"), any of that kind which does is meant as well, and whatever else fits the words and goes with the attack. A name means what it names,
    /// but in a hold a stamp on the foot of somebody behind is a stamp backward; an id never means anything else.
    /// </summary>
    public Meaning Technique(string text, IReadOnlyList<string> attacks)
    {
        var meaning = Technique(text);
        var thrown = attacks.Select(book.Attack).Where(a => !a.IsWalkIn).ToList();
        if (thrown.Count == 0 || meaning.Ids.Count == 0 || IsId(text) || (!meaning.IsGuess && !thrown.Exists(a => a.Line.IsGrab)))
        {
            return meaning;
        }

        if (meaning.Ids.Any(id => thrown.Exists(a => Meeting.Suits(book.Technique(id), a))))
        {
            // A sweep that meets nothing is still no block.
            var isDefence = book.Technique(meaning.Ids[0]).Family == Family.Defence;
            return !meaning.IsGuess || thrown.Exists(a => a.Line.IsGrab) ? meaning : ReadTechnique(text, Kept(meaning, t => (t.Family == Family.Defence) == isDefence && thrown.Exists(a => t.Answers.Contains(a.Line))));
        }

        var kind = meaning.IsGuess ? FamilyWords.Within(text) : null;
        var meets = book.Techniques.Where(t => t.Family == kind && thrown.Exists(a => t.Answers.Contains(a.Line))).Select(t => t.Id)
            .Concat(AsWell(text, t => thrown.Exists(a => Meeting.Suits(t, a))).Select(t => t.Id)).ToList();
        return meets.Count == 0 ? meaning : ReadTechnique(text, meaning with { Ids = [.. meaning.Ids.Union(meets, StringComparer.Ordinal)], IsGuess = true });
    }

    private bool IsId(string text) => book.TechniqueIndex(text) >= 0 || techniqueSides.Contains(text);

    /// <summary>Of the records that suit, with their sides, those that fit the words best, if they do so well enough beside any that do not suit.</summary>
    private List<Technique> AsWell(string text, Func<Technique, bool> suits)
    {
        var ranked = RankedRecords.Techniques(book).Find(LimbWords.Without(text), int.MaxValue);
        var fitting = ranked.Where(r => r.Fit >= Math.Max(Least, Besides * Math.Min(1, ranked[0].Fit))).Select(r => (Suiting: techniqueSides[r.Record.BaseId].Where(suits).ToList(), r.Fit)).Where(r => r.Suiting.Count > 0).ToList();
        return [.. fitting.TakeWhile(r => r.Fit >= NearWhole * fitting[0].Fit).SelectMany(r => r.Suiting)];
    }

    /// <summary>What may be meant of something that the hero does with nobody who is named; "pause" alone is any beat of the story.</summary>
    public Meaning Beat(string text)
    {
        var beats = book.Techniques.Where(t => t.HasNoTarget).ToList();
        if (PlainWord.Of(text) is "pause" or "a pause" or "beat" or "a beat")
        {
            return new Meaning([.. beats.Where(t => t.IsStoryPause).Select(t => t.Id)], null, false, []);
        }

        var found = Technique(text);
        return found with { Ids = [.. found.Ids.Where(id => book.Technique(id) is { HasNoTarget: true } or { Family: Family.Pause })] };
    }

    /// <summary>What may be meant of what the attacker does. How attackers stand is not followed, so that lead and rear say nothing of them.</summary>
    public Meaning Attack(string text)
    {
        var found = Find(text, finder.Attack, RankedRecords.Attacks(book), a => attackSides[a.BaseId], a => a.Id, a => a.Side);
        var read = Read(text, found, RankedRecords.Attacks(book), a => attackSides[a.BaseId].Select(s => s.Id), limbs: false);
        var held = LimbWords.TakenOf(text) is { } taken ? read.Ids.Where(id => (taken == Side.Left ? book.Attack(id).GripsLeft : book.Attack(id).GripsRight) == HandEnd.Held).ToList() : [];
        return held.Count > 0 ? read with { Ids = held, Unread = [.. read.Unread.Where(u => SideWords.Parse(u) is null)] } : read;
    }

    /// <summary>The words by themselves say what somebody does to the hero: they name an attack, or are a guess in which a word says what is done ("wild swing", and not "both hands").</summary>
    public bool IsAttack(string text) => Attack(text) is { Ids.Count: > 0 } found && (!found.IsGuess || book.Notebook.Tokens(text).Any(book.Notebook.Acting.Contains));

    /// <summary>An attack alone that is none, but an end of the fight for whoever does it: "runs away", "gives up".</summary>
    public Meaning? End(string text) =>
        finder.Attack(text).IsFound || RankedRecords.Techniques(book).Find(text, 1) is not [{ Fit: >= 1, Record: { Family: Family.Finish, BaseId: var id } }] ? null
            : new Meaning([.. techniqueSides[id].Select(t => t.Id)], null, false, []);

    public Family? FamilyOf(string id) => book.TechniqueIndex(id) is >= 0 and var t ? book.Techniques[t].Family : null;

    /// <summary>The other side of techniques or attacks that are all of one; null where they are of both, or of none.</summary>
    public IReadOnlyList<string>? OtherSide(IReadOnlyList<string> ids)
    {
        var sided = ids.Select(id => book.TechniqueIndex(id) is >= 0 and var t ? (book.Techniques[t].BaseId, book.Techniques[t].Side) : (book.Attack(id).BaseId, book.Attack(id).Side)).ToList();
        return sided.Select(s => s.Side).Distinct().ToList() is [{ } side] ? [.. sided.Select(s => Mirror.Id(s.BaseId, side.Other()))] : null;
    }

    /// <summary>What may be meant of how the attacker takes it; "out" is any way of being out.</summary>
    public Meaning Reaction(string text) => PlainWord.Of(text) is "out" or "is out" or "knocked out" or "out cold" or "stays down"
        ? new Meaning([.. book.Reactions.Where(r => r.Posture == Posture.Out).Select(r => r.Id)], null, false, [])
        : Read(text, Find(text, finder.Reaction, RankedRecords.Reactions(book), r => [r], r => r.Id, _ => null), RankedRecords.Reactions(book), r => [r.Id], limbs: false);

    private static Meaning Find<T>(string text, Func<string, Lookup<T>> exact, Ranking<T> ranking, Func<T, IEnumerable<T>> sides, Func<T, string> idOf, Func<T, Side?> sideOf)
    {
        var lookup = exact(text);
        if ((lookup.IsFound ? lookup : exact(ranking.Bare(text))) is { IsFound: true } named)
        {
            return new Meaning([.. named.Found.Select(idOf)], null, false, []);
        }

        var ranked = ranking.Find(LimbWords.Without(text), Most);
        if (ranked.Count == 0 || ranked[0].Fit < Least || ranking.Covers(text, r => Equals(r, ranked[0].Record)) is var (written, unread) && unread > 3 * written)
        {
            return new Meaning([], null, false, lookup.Suggestions);
        }

        var near = ranked.TakeWhile(r => r.Fit >= Near * Math.Min(1, ranked[0].Fit)).OrderByDescending(r => ranking.Acts(text, r.Record)).ToList();
        var best = near[0];
        near = near.FindAll(r => ranking.ActsLike(text, r.Record, best.Record));
        if (ranking.Knows(text) && Unread(best.Record) == 0)
        {
            near = near.FindAll(r => r.Fit >= NearWhole * Math.Min(1, best.Fit) || Unread(r.Record) == 0);
        }

        var side = LimbWords.SideOf(text);
        var found = near.SelectMany(r => sides(r.Record)).ToList();
        var sided = found.Where(r => side is null || sideOf(r) is null || sideOf(r) == side).ToList();
        return new Meaning([.. (sided.Count > 0 ? sided : found).Select(idOf)], null, true, lookup.Suggestions);

        int Unread(T record) => ranking.Unread(text, r => Equals(r, record)).Count;
    }

    /// <summary>Adds which limb is meant, and which words nothing that was taken speaks of.</summary>
    private static Meaning Read<T>(string text, Meaning meaning, Ranking<T> ranking, Func<T, IEnumerable<string>> ids, bool limbs)
    {
        var foot = LimbWords.FootOf(text) is { } said && (meaning.IsGuess || said.Foot is SketchFoot.Lead or SketchFoot.Rear) ? said : ((SketchFoot Foot, string Word)?)null;
        var unread = ranking.Unread(text, r => ids(r).Any(meaning.Ids.Contains)).Concat(meaning.IsGuess ? LimbWords.UnreadSides(text) : []);
        var limb = LimbWords.LimbBehind(text, foot?.Word);
        return meaning with { Respelt = meaning.IsGuess ? ranking.Respelt(text, r => ids(r).Any(meaning.Ids.Contains)) : [], Foot = limbs ? foot?.Foot : null, Unread = [.. unread.Where(u => !limbs || (!string.Equals(u, foot?.Word, StringComparison.Ordinal) && !string.Equals(u, limb, StringComparison.Ordinal))).Distinct(StringComparer.Ordinal)] };
    }
}
