using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Rules.Rules;

namespace Generator.Solver.Proving;

/// <summary>
/// Every move that bodies, skills, limits, floor and tempo of a brief leave possible at all, gathered into classes. What a class says of a move is
/// never narrower than the move: stance, hands, facing and bearings are left out, distances are taken from what each technique and attack allow.
/// </summary>
internal sealed class MoveClasses
{
    /// <summary>Half counts for which somebody held stays so: no matter how long.</summary>
    public const int Held = 100_000;

    /// <summary>Postures of those who are free to come.</summary>
    public static readonly PostureSet Free = PostureSet.Of([.. Enum.GetValues<Posture>().Where(IsFree)]);

    private readonly Scene scene;
    private readonly WantedMoves wanted;
    private readonly int farthest;
    private readonly bool hitsCapped;
    private readonly bool heroFallsCapped;
    private readonly bool[] fallsCapped;
    private readonly Dictionary<MoveTraits, MoveClass> found = [];

    /// <param name="scene">The brief, worked out.</param>
    /// <param name="mostMoves">Moves that are looked at one by one, at most: what no cap can stop among so many is not told apart.</param>
    public MoveClasses(Scene scene, int mostMoves = int.MaxValue)
    {
        this.scene = scene;
        hitsCapped = Exposure.HeadHitCap(scene.Brief) < mostMoves;
        heroFallsCapped = Exposure.FallCap(scene.Brief, scene.Brief.Hero) < mostMoves;
        fallsCapped = [.. scene.Brief.Attackers.Select(a => Exposure.FallCap(scene.Brief, a) < mostMoves)];
        wanted = new WantedMoves(scene);
        farthest = Enumerable.Range(0, Bearing.Circle).Max(b => scene.Floor[b]);
        for (var t = 0; t < scene.Book.Techniques.Count; t++)
        {
            if (scene.Able.WhyNotTechnique(t) is null)
            {
                AddTechnique(t);
            }
        }

        All = [.. found.Values];
    }

    public IReadOnlyList<MoveClass> All { get; }

    /// <summary>Bit of the first move of each hero moment; −1 for one that the proof leaves out.</summary>
    public IReadOnlyList<int> FirstWanted => wanted.First;

    /// <summary>Neither held, nor gripping, nor out.</summary>
    public static bool IsFree(Posture posture) => !posture.IsControlled() && posture is not (Posture.Gripping or Posture.Out);

    /// <summary>The classes that a move can be seen as, for checking: more than one where the hold may or may not last.</summary>
    public IEnumerable<MoveClass> Matching(Func<MoveTraits, bool> traits) => All.Where(c => traits(c.Traits));

    /// <summary>Bits of the hero moments' moves.</summary>
    public ulong WantedBits(Row row) => wanted.Of(row.Technique, row.Attack, row.Attacker) & wanted.OfReaction(row.Reaction);

    /// <summary>Only what this brief can tell moves apart by: where nothing is asked of setbacks, say, they are moves like others.</summary>
    public MoveTraits ToldApart(MoveTraits traits)
    {
        return traits with
        {
            Setback = traits.Setback && scene.Brief.Setbacks is not null,
            Pause = traits.Pause && scene.Brief.Pauses is not null,
            HeroFalls = traits.HeroFalls && heroFallsCapped,
            HeroHeadHit = traits.HeroHeadHit && hitsCapped,
            HeadHit = traits.HeadHit && hitsCapped,
            Falls = traits.Falls && (traits.Second == SecondRole.Taken || fallsCapped[traits.Attacker]),
        };
    }

    private void AddTechnique(int t)
    {
        var technique = scene.Book.Techniques[t];
        if (technique.HasNoTarget)
        {
            Add(technique, Traits(t, -1, -1, -1), PostureSet.Empty, 0, 0, 0, int.MaxValue, 0);
            return;
        }

        for (var a = 0; a < scene.Cast; a++)
        {
            if (scene.Able.WhyNotOn(t, a) is not null)
            {
                continue;
            }

            var attacks = AttacksFor(t, a).ToList();
            foreach (var r in technique.Reactions.Count == 0 ? [-1] : technique.Reactions.Select(scene.Book.ReactionIndex))
            {
                if (r < 0 || (scene.Able.WhyNotReaction(r, a) is null && (scene.Cast > 1 || !(technique.TakesTwo || scene.Book.Reactions[r].HitsSecond))))
                {
                    AddFollowUps(t, a, r);
                    if (r < 0 || CanAnswer(scene.Book.Reactions[r], technique))
                    {
                        attacks.ForEach(k => AddReacting(t, a, r, Traits(t, k.Attack, r, a) with { By = ComesBy.Attack }, Free, k.Near, k.Far));
                    }
                }
            }
        }
    }

    /// <summary>Attacks that proofs need not tell apart are one, from the nearest to the farthest at which one of them lands.</summary>
    private IEnumerable<(int Attack, int Near, int Far)> AttacksFor(int t, int a)
    {
        var (technique, reach) = (scene.Book.Techniques[t], scene.TechniqueReach(t, a));
        return AttackAnswers.Of(scene.Book)[t].Where(k => scene.Able.WhyNotAttack(k, a) is null)
            .Select(k => (Attack: k, At: scene.ContactDistance(k, t, a)))
            .Where(k => k.At >= reach.Least && k.At <= reach.Most)
            .GroupBy(k => (Exposure.HitsHeroHead(technique, scene.Book.Attacks[k.Attack]), wanted.Of(t, k.Attack, a)))
            .Select(g => (g.First().Attack, g.Min(k => k.At), g.Max(k => k.At)));
    }

    /// <summary>A reaction to an attack that some posture of one who comes with it allows; they may still be open from the last time.</summary>
    private static bool CanAnswer(Reaction reaction, Technique technique) => Free.Members.Any(p => reaction.CanFollow(p, technique.Seizes));

    private void AddFollowUps(int t, int a, int r)
    {
        var technique = scene.Book.Techniques[t];
        var reach = scene.TechniqueReach(t, a);
        var reaction = r < 0 ? null : scene.Book.Reactions[r];
        Posture[] finds = [.. Enum.GetValues<Posture>().Where(p => technique.MayFind(p) && reaction?.CanFollow(p, false) != false)];
        var traits = Traits(t, -1, r, a) with { By = ComesBy.Opening };
        foreach (var from in finds.Length == 0 ? [] : reaction?.Posture is null ? finds.Select(p => PostureSet.Of(p)) : [PostureSet.Of(finds)])
        {
            AddReacting(t, a, r, traits, from, Math.Max(0, reach.Least), reach.Most);
        }

        if (finds.Contains(Posture.Ready))
        {
            AddReacting(t, a, r, traits with { By = ComesBy.Recovery }, Free, Math.Max(0, reach.Least), reach.Most);
        }
    }

    /// <param name="t">Technique.</param>
    /// <param name="a">Target.</param>
    /// <param name="r">Reaction; −1 for none.</param>
    /// <param name="traits">The class, without what the reaction leaves.</param>
    /// <param name="from">Postures in which it finds the target; one only where the target may be held.</param>
    /// <param name="near">Nearest distance of the target before the move.</param>
    /// <param name="far">Farthest.</param>
    private void AddReacting(int t, int a, int r, MoveTraits traits, PostureSet from, int near, int far)
    {
        var technique = scene.Book.Techniques[t];
        var was = from.Members.First();
        if (r < 0)
        {
            Add(technique, traits, from, 0, 0, 0, far, 0);
            AddLetGo(technique, traits, from, was, far);
            return;
        }

        var reaction = scene.Book.Reactions[r];

        // Only somebody held keeps the posture.
        var to = reaction.Posture ?? was;
        var lands = Effects.CarriedTo(scene, t, a, reaction, to, near);
        if (reaction.Sends && !reaction.RunsOff && lands > farthest)
        {
            return;
        }

        List<int> able = traits.Second == SecondRole.None ? [] : [.. Enumerable.Range(0, scene.Cast).Where(b => b != a && (traits.Second == SecondRole.Bumped || (scene.Able.WhyNotOn(t, b) is null && scene.Able.WhyNotReaction(r, b) is null)))];
        if (traits.Second != SecondRole.None && able.Count == 0)
        {
            return;
        }

        var full = traits with
        {
            To = to,
            Finishes = to == Posture.Out && technique.Family == Family.Finish,
            AbleSeconds = able.Sum(b => 1 << b),
        };
        var open = IsFree(to) ? scene.OpenFor(r) : Held;
        Add(technique, full, from, scene.ReadyAfter(r, a) + scene.WalkTime(a, lands), scene.ReadyAfter(r, a), open, far, traits.Second == SecondRole.None || to.IsControlled() ? 0 : able.Min(b => scene.ReadyAfter(r, b)));
        AddLetGo(technique, full, from, to, far);
    }

    /// <summary>A move that takes the holding hands elsewhere lets go of the one held, who is free at once.</summary>
    private void AddLetGo(Technique technique, MoveTraits traits, PostureSet from, Posture posture, int far)
    {
        var keeps = technique.LeftEnd == HandEnd.Holding || technique.RightEnd == HandEnd.Holding
            || (technique.LeftEnd == HandEnd.Unchanged && technique.RightEnd == HandEnd.Unchanged);
        if (posture.IsControlled() && !keeps)
        {
            Add(technique, traits with { To = Posture.Ready, Finishes = false }, from, 0, 0, 0, far, 0);
        }
    }

    private void Add(Technique technique, MoveTraits traits, PostureSet from, int back, int recover, int open, int far, int secondBack)
    {
        traits = ToldApart(traits);
        var one = new MoveClass(traits, from, technique.Length.Value, technique.Length.Value, back, recover, open, far, secondBack);
        found[traits] = found.TryGetValue(traits, out var same) ? same.With(one) : one;
    }

    private MoveTraits Traits(int t, int k, int r, int attacker)
    {
        var technique = scene.Book.Techniques[t];
        var reaction = r < 0 ? null : scene.Book.Reactions[r];
        return new MoveTraits
        {
            Attacker = attacker,
            Setback = technique.Family == Family.Setback,
            Pause = technique.IsStoryPause,
            HeroFalls = technique.HeroFall != FallClass.None,
            HeroHeadHit = Exposure.HitsHeroHead(technique, k < 0 ? null : scene.Book.Attacks[k]),
            Falls = reaction is { Fall: not FallClass.None },
            HeadHit = technique.IsHeadHit && attacker >= 0 && reaction is not { AnswersBlow: true },
            SecondFrom = reaction is not null && technique.Two is { } two ? two.Needs.Contains(Posture.Ready) ? Free : two.Needs : PostureSet.Empty,
            Second = reaction is null ? SecondRole.None : technique.TakesTwo ? SecondRole.Taken : reaction.HitsSecond ? SecondRole.Bumped : SecondRole.None,
            Wanted = wanted.Of(t, k, attacker) & wanted.OfReaction(r),
        };
    }
}
