using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Rules.Rules;
using Generator.Solver.Repertoires;

namespace Generator.Solver.Constructing;

/// <summary>One move of a hero moment, with its words looked up and everything that could fulfil it.</summary>
internal sealed class MomentStep
{
    private readonly bool[] techniques;
    private readonly bool[]? attacks;
    private readonly bool noAttack;
    private readonly int attacker;
    private readonly int reaction;

    private readonly IReadOnlyList<NestedWindow> windows;

    /// <param name="scene">The brief.</param>
    /// <param name="repertoire">What can be done.</param>
    /// <param name="move">The move.</param>
    /// <param name="windows">Other moments that begin with it.</param>
    public MomentStep(Scene scene, Repertoire repertoire, MomentMove move, IReadOnlyList<NestedWindow> windows)
    {
        this.windows = windows;
        techniques = [.. scene.Book.Techniques.Select(t => t.GoesBy(move.Technique))];
        var first = Array.IndexOf(techniques, true);
        (IsSetback, IsBeat) = first < 0 ? (false, false) : (scene.Book.Techniques[first].Family == Family.Setback, scene.Book.Techniques[first].IsStoryPause);
        attacks = move.Attack is null || move.WantsNoAttack ? null : [.. scene.Book.Attacks.Select(a => a.GoesBy(move.Attack))];
        noAttack = move.WantsNoAttack;
        attacker = move.Attacker is null ? -1 : scene.Brief.Attackers.Select(a => a.Name).ToList().IndexOf(move.Attacker);
        reaction = move.Reaction is null ? -1 : scene.Book.ReactionIndex(move.Reaction);
        Menus = [.. repertoire.Menus.Select((menu, a) => attacker < 0 || attacker == a ? menu.Only(Keep) : null)];
        NoTargets = attacker >= 0 ? [] : [.. repertoire.Breaths.Concat(repertoire.Recoveries).Select(Keep).OfType<Choice>()];
    }

    /// <summary>For each attacker what fulfils it; null for those whom it does not concern.</summary>
    public Menu?[] Menus { get; }

    /// <summary>What fulfils it without a target.</summary>
    public Choice[] NoTargets { get; }

    /// <summary>A travel move as a way to fulfil it, with an attacker or, where that is −1, nobody; null where it does not.</summary>
    public Choice? Travels(Choice choice, int a) => attacker < 0 || attacker == a ? Keep(choice) : null;

    /// <summary>The techniques that fulfil it, one flag each.</summary>
    public bool[] Techniques => techniques;

    /// <summary>It leads to another mark, whatever fulfils it.</summary>
    public bool IsTravel(Scene scene) => Array.TrueForAll(scene.Book.Techniques.Where((_, t) => techniques[t]).ToArray(), t => t.Travel is not null);

    /// <summary>Whether something that fulfils it can be done on a mark, as far as things and ways go.</summary>
    public bool IsPossibleOn(Scene scene, Repertoire repertoire, int mark)
    {
        for (var t = 0; t < techniques.Length; t++)
        {
            if (techniques[t] && (scene.Book.Techniques[t] is var technique && technique.Travel is not null
                ? mark + 1 < scene.Marks.Count && repertoire.Leg(mark, mark + 1).All.Any(c => c.Technique == t)
                : technique.Uses is not { } need || need.Where == ThingPlace.OnTheWay || IsThere(scene, need, technique, t, mark)))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Somebody whom the technique reaches from a mark, and whom it may send farther off, comes to such a thing on some bearing.</summary>
    private bool IsThere(Scene scene, ThingNeed need, Technique technique, int index, int mark) => Serving(scene, need, technique, index, mark).Any();

    /// <summary>The bearings, in half hours, of a target on whom something that fulfils it can be done from a mark, as far as things go; null where it needs none, or one on the way.</summary>
    public IReadOnlyCollection<int>? BearingsAt(Scene scene, int mark)
    {
        var serving = new HashSet<int>();
        for (var t = 0; t < techniques.Length; t++)
        {
            if (!techniques[t])
            {
                continue;
            }

            if (scene.Book.Techniques[t] is not { HasNoTarget: false, Uses: { Where: not ThingPlace.OnTheWay } need } technique)
            {
                return null;
            }

            serving.UnionWith(Serving(scene, need, technique, t, mark));
        }

        return serving;
    }

    private IEnumerable<int> Serving(Scene scene, ThingNeed need, Technique technique, int index, int mark)
    {
        var farthest = need.Where != ThingPlace.BehindAttacker || technique.HasNoTarget ? int.MaxValue
            : Enumerable.Range(0, scene.Cast).Where(a => attacker < 0 || attacker == a).Max(a => scene.TechniqueReach(index, a).Most) + scene.Settle.FollowMost.Value
                + technique.Reactions.Select(r => scene.Book.Reaction(r).Back.Value).DefaultIfEmpty(0).Max();
        return scene.Things.BearingsOf(need, mark).Where(b => scene.Things.At(need, mark, b).Least <= farthest);
    }

    /// <summary>It is a setback.</summary>
    public bool IsSetback { get; }

    /// <summary>It is a beat of the story.</summary>
    public bool IsBeat { get; }

    /// <summary>The attacker it names; −1 for any.</summary>
    public int Attacker => attacker;

    /// <summary>Some camera sees it as it should with the target on this bearing, or there is nothing that it must see.</summary>
    public bool IsSeenAt(Scene scene, int bearing)
    {
        for (var t = 0; t < techniques.Length; t++)
        {
            if (techniques[t] && Sightline.IsSeen(scene, scene.Book.Techniques[t], bearing))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The first half count at which it may start for the sake of other moments that begin with it and do not stand yet.</summary>
    public int Earliest(long done) => windows.Where(w => (done & (1L << w.Moment)) == 0).Select(w => w.Earliest).DefaultIfEmpty(0).Max();

    /// <summary>It starts when other moments that begin with it may, unless they stand already.</summary>
    public bool IsMetBy(in Row row, long done)
    {
        if (!IsMetBy(row))
        {
            return false;
        }

        foreach (var window in windows)
        {
            if ((done & (1L << window.Moment)) == 0 && (row.Start < window.Earliest || row.Start > window.Latest))
            {
                return false;
            }
        }

        return true;
    }

    private bool IsMetBy(in Row row) =>
        row.Technique >= 0 && techniques[row.Technique]
        && (attacker < 0 || row.Attacker == attacker)
        && Takes(row.Attack)
        && (reaction < 0 || row.Reaction == reaction);

    private bool Takes(int attack) => attack < 0 ? attacks is null : !noAttack && (attacks is null || attacks[attack]);

    private Choice? Keep(Choice choice)
    {
        if (!techniques[choice.Technique] || !Takes(choice.Attack))
        {
            return null;
        }

        if (reaction < 0)
        {
            return choice;
        }

        return choice.Reactions.Contains(reaction) ? choice with { Reactions = [reaction] } : null;
    }
}
