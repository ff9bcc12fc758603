using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Connecting;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;

namespace Generator.Solver;

/// <summary>What a draft takes for granted where the brief says nothing.</summary>
public static class DraftBrief
{
    /// <summary>Attacks that somebody must be able to throw to be given a manner: with fewer they would come with the same all the time.</summary>
    private const int FewestAttacks = 3;

    /// <summary>
    /// The brief with everything filled in that a draft decides by default: everybody goes out; three acts where it is long enough, and then a manner for each of several attackers; without acts no setbacks and no pauses but for those that
    /// the hero moments are or need, or that the acts want. Whoever asks that the hero throws somebody off who sits on them wants to see them sat on.
    /// </summary>
    public static Brief Complete(Brief brief, Book book)
    {
        var within = NestedMoments.Of(brief, book);
        IEnumerable<Moment> moments = brief.Moments.Where((_, i) => within[i] < 0);
        var setbacks = moments.Sum(m => SetbacksOf(m, brief, book));
        var acts = brief.Acts ?? ThreeActs.For(brief, setbacks);
        return brief with
        {
            Ending = brief.Ending ?? new Ending([.. brief.Attackers.Select(a => a.Name)], null),
            Acts = acts,
            Attackers = acts.Count > 0 && brief.Judged?.Contains(FightRule.Manner) != false ? Mannered(brief, book) : brief.Attackers,

            // Acts that nobody asked for make nothing impossible: how many setbacks there are is then a matter of points.
            Setbacks = brief.Setbacks ?? (brief.Acts is null && acts.Count > 0 ? null : Math.Max(setbacks, acts.Sum(a => a.FewestSetbacks))),
            Pauses = brief.Pauses ?? moments.Sum(m => m.Moves.Count(move => Is(move, book, t => t.IsStoryPause))),
        };
    }

    /// <summary>
    /// The brief with what it leaves open of the story (who goes out, how many setbacks and pauses) as a routine has it that satisfies it: whoever asks for others of
    /// that kind, or keeps some of its moves, has in it an answer already.
    /// </summary>
    public static Brief Like(Routine routine, Brief brief, Book book)
    {
        var scene = new Scene(brief, book);
        if (!Audit.Of(scene, routine with { Brief = brief }).IsClean || Replay.Of(scene, routine) is not { Count: > 0 } steps)
        {
            return brief;
        }

        return brief with
        {
            Ending = brief.Ending ?? new Ending([.. brief.Attackers.Where((_, a) => steps[^1].After.Attackers[a].Posture == Posture.Out).Select(a => a.Name)], null),
            Acts = brief.Acts ?? [],
            Setbacks = brief.Setbacks ?? steps.Count(s => s.Technique?.Family == Family.Setback),
            Pauses = brief.Pauses ?? steps.Count(s => s.Technique?.IsStoryPause == true),
        };
    }

    /// <summary>Several attackers of whom an audience should tell who is who: whoever has no manner gets one that they have attacks for, those not yet taken first.</summary>
    private static IReadOnlyList<AttackerPart> Mannered(Brief brief, Book book)
    {
        if (brief.Attackers.Count == 1)
        {
            return brief.Attackers;
        }

        var able = new Ability(brief, book);
        var taken = brief.Attackers.Select(a => a.Manner).OfType<string>().ToList();
        var attackers = brief.Attackers.ToArray();
        for (var a = 0; a < attackers.Length; a++)
        {
            int Fitting(Manner manner) => book.Attacks.Where((k, i) => manner.Attacks.Contains(k.Kind) && able.WhyNotAttack(i, a) is null).DistinctBy(k => k.BaseId).Count();
            if (attackers[a].Manner is null && book.Manners.Where(m => m.Usual && Fitting(m) >= FewestAttacks).OrderBy(m => taken.Count(t => t == m.Id)).FirstOrDefault() is { } manner)
            {
                attackers[a] = attackers[a] with { Manner = manner.Id };
                taken.Add(manner.Id);
            }
        }

        return attackers;
    }

    /// <summary>The fewest setbacks in which a hero moment can come about: its own, and those that leave the hero as its first move needs.</summary>
    private static int SetbacksOf(Moment moment, Brief brief, Book book)
    {
        var own = moment.Moves.Count(m => Is(m, book, t => t.Family == Family.Setback));
        var goals = Named(moment.Moves[0], book);
        if (!goals.Contains(true) || FormRoutes.AreNear(book, goals))
        {
            return own;
        }

        var able = new Ability(brief, book);
        var routes = new FormRoutes(FormGraph.Of(book), goals, [.. book.Techniques.Select((_, t) => able.WhyNotTechnique(t) is null)]);
        var first = Is(moment.Moves[0], book, t => t.Family == Family.Setback) ? 1 : 0;
        for (var setbacks = first; setbacks <= FormRoutes.MostSetbacks; setbacks++)
        {
            if (routes.From(HeroForm.FreeIn(brief.Hero.OpeningStance), setbacks) != FormRoutes.Never)
            {
                return own - first + setbacks;
            }
        }

        return own;
    }

    private static bool Is(MomentMove move, Book book, Func<Technique, bool> what) => Named(move, book).Zip(book.Techniques).Any(p => p.First && what(p.Second));

    private static bool[] Named(MomentMove move, Book book) => [.. book.Techniques.Select(t => t.GoesBy(move.Technique))];
}
