using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Solver.Repertoires;

/// <summary>
/// What these people can do on this floor at this tempo, indexed by situation, so that nearly every candidate of the search is possible.
/// Built once for a scene.
/// </summary>
internal sealed class Repertoire
{
    private static readonly int Postures = Enum.GetValues<Posture>().Length;

    private readonly Scene scene;
    private readonly bool[] possible;
    private readonly bool[] able;
    private readonly Lazy<TravelMenu>[,] legs;
    private readonly Stance[,] stanceTo;
    private readonly int[,] stanceTime;

    public Repertoire(Scene scene)
    {
        this.scene = scene;
        var techniques = scene.Book.Techniques;
        able = [.. techniques.Select((_, i) => scene.Able.WhyNotTechnique(i) is null)];
        possible = [.. able.Select((a, i) => a && techniques[i].Travel is null)];
        var stances = Enum.GetValues<Stance>();
        stanceTo = new Stance[stances.Length, techniques.Count];
        stanceTime = new int[stances.Length, techniques.Count];
        foreach (var stance in stances)
        {
            for (var t = 0; t < techniques.Count; t++)
            {
                (stanceTo[(int)stance, t], stanceTime[(int)stance, t]) = StanceChoice.For(scene, stance, techniques[t].Starts);
            }
        }

        GapForTurn = [.. Enumerable.Range(0, (Bearing.Circle / 2) + 1).Select(GapFor)];
        Menus = [.. Enumerable.Range(0, scene.Cast).Select(MenuOf)];
        Recoveries = [.. NoTargets(true)];
        Breaths = [.. NoTargets(false)];
        legs = Legs();
        Travels = scene.Brief.Travels ? [.. Enumerable.Range(0, scene.Marks.Count - 1).Select(m => Leg(m, m + 1))] : null;
        SetbackKinds = Kinds(setbacks: true);
        OtherKinds = Kinds(setbacks: false);
    }

    /// <summary>The ways from each mark to the next; null where there is one mark.</summary>
    public IReadOnlyList<TravelMenu>? Travels { get; }

    /// <summary>What hero and floor allow on a mark, one flag for each technique; travel moves are not among them.</summary>
    public bool[] Possible => possible;

    /// <summary>The same with travel moves.</summary>
    public bool[] Doable => able;

    /// <summary>The travel moves that lead from one mark straight to another.</summary>
    public TravelMenu Leg(int from, int to) => legs[from, to].Value;

    /// <summary>One for each attacker.</summary>
    public Menu[] Menus { get; }

    /// <summary>Getting up, without a target.</summary>
    public Choice[] Recoveries { get; }

    /// <summary>Beats of the story without a target.</summary>
    public Choice[] Breaths { get; }

    /// <summary>The setbacks that can come, both sides of one together.</summary>
    public int[][] SetbackKinds { get; }

    /// <summary>Whatever else can be done, both sides together.</summary>
    public int[][] OtherKinds { get; }

    /// <summary>Half counts that a turn of so many half hours takes.</summary>
    public int[] GapForTurn { get; }

    /// <summary>Stance in which a technique starts, coming from another.</summary>
    public Stance StanceTo(Stance from, int technique) => stanceTo[(int)from, technique];

    /// <summary>Half counts that the change to it takes.</summary>
    public int StanceTime(Stance from, int technique) => stanceTime[(int)from, technique];

    private int[][] Kinds(bool setbacks)
    {
        var sides = new Dictionary<string, List<int>>(StringComparer.Ordinal);
        for (var t = 0; t < possible.Length; t++)
        {
            var technique = scene.Book.Techniques[t];
            if (!possible[t] || technique.Family == Family.Setback != setbacks)
            {
                continue;
            }

            if (!sides.TryGetValue(technique.BaseId, out var kind))
            {
                sides[technique.BaseId] = kind = [];
            }

            kind.Add(t);
        }

        return [.. sides.Values.Select(k => k.ToArray())];
    }

    private int GapFor(int turn)
    {
        var gap = 0;
        while (gap < StanceTable.Never && scene.Settle.TurnFor(gap) < turn)
        {
            gap++;
        }

        return gap;
    }

    private IEnumerable<Choice> NoTargets(bool recovery)
    {
        for (var t = 0; t < possible.Length; t++)
        {
            if (possible[t] && scene.Book.Techniques[t] is { HasNoTarget: true } pause && pause.Recovery == recovery)
            {
                yield return new Choice(-1, t, []);
            }
        }
    }

    private Menu MenuOf(int attacker)
    {
        var answers = Answers(attacker).ToList();
        var followUps = new Choice[Postures][];
        var beats = new Choice[Postures][];
        for (var p = 0; p < Postures; p++)
        {
            var all = FollowUps(attacker, (Posture)p).ToList();
            followUps[p] = [.. all.Where(c => !IsBeat(c))];
            beats[p] = [.. all.Where(IsBeat)];
        }

        Choice[] blocked = [.. answers.Where(c => !IsSetback(c))];
        Choice[] suiting = [.. blocked.Where(c => scene.Likings.Suits(c.Attack, c.Technique, attacker))];
        return new Menu
        {
            Answers = blocked,
            Suiting = suiting.Length < blocked.Length ? suiting : [],
            Setbacks = [.. answers.Where(IsSetback)],
            FollowUps = followUps,
            Escapes = [.. Enumerable.Range(0, AttackLine.Count).Select(l => Escapes(attacker, AttackLine.FromIndex(l)).ToArray())],
            Beats = beats,
            Armed = scene.Props.Any ? [.. blocked.Where(c => scene.Book.Attacks[c.Attack].Prop is not null)] : [],
            WithProps = scene.Props.Any ? [.. followUps.Select(f => f.Where(c => scene.Book.Techniques[c.Technique].Prop is not null).ToArray())] : [],
        };
    }

    private bool IsSetback(Choice choice) => scene.Book.Techniques[choice.Technique].Family == Family.Setback;

    private bool IsBeat(Choice choice) => scene.Book.Techniques[choice.Technique].IsStoryPause;

    /// <summary>Several searches share them, and most ask for few.</summary>
    private Lazy<TravelMenu>[,] Legs()
    {
        bool[] travels = [.. able.Select((a, i) => a && scene.Book.Techniques[i].Travel is not null)];
        var answers = new Lazy<List<Choice>[]>(() => [.. Enumerable.Range(0, scene.Cast).Select(a => Answers(a, travels).ToList())]);
        var stalks = new Lazy<List<Choice>[]>(() => [.. Enumerable.Range(0, scene.Cast).Select(a => FollowUps(a, Posture.Ready, travels).ToList())]);
        var byWill = Enumerable.Range(0, travels.Length).Where(t => travels[t] && scene.Book.Techniques[t].HasNoTarget).Select(t => new Choice(-1, t, [])).ToList();
        var all = new Lazy<TravelMenu>[scene.Marks.Count, scene.Marks.Count];
        for (var m = 0; m < scene.Marks.Count; m++)
        {
            for (var n = 0; n < scene.Marks.Count; n++)
            {
                var (from, to) = (m, n);
                all[from, to] = new Lazy<TravelMenu>(() => Between(from, to));
            }
        }

        return all;

        TravelMenu Between(int from, int to)
        {
            var way = scene.Marks.Way(from, to);
            return new TravelMenu(to, scene.Marks.Heading(from, to), Fitting(byWill), [.. answers.Value.Select(Fitting)], [.. stalks.Value.Select(Fitting)]);

            Choice[] Fitting(List<Choice> choices) => [.. choices
                .Where(c => scene.Book.Techniques[c.Technique].Travel is { } t && t.Least.Value <= way && way <= t.Most.Value && Serves(c.Technique, from, to))
                .Select(c => c with { To = to })];
        }
    }

    private bool Serves(int technique, int from, int to) => scene.Book.Techniques[technique].Uses is not { } need || scene.Things.On(need, from, to) is not null;

    private IEnumerable<Choice> Answers(int attacker) => Answers(attacker, possible);

    private IEnumerable<Choice> Answers(int attacker, bool[] among)
    {
        for (var k = 0; k < scene.Book.Attacks.Count; k++)
        {
            var attack = scene.Book.Attacks[k];
            if (scene.Able.WhyNotAttack(k, attacker) is not null)
            {
                continue;
            }

            for (var t = 0; t < among.Length; t++)
            {
                var technique = scene.Book.Techniques[t];
                var suits = technique.Meets(attack);
                if (suits && Works(t, attacker, among) && Meets(k, t, attacker) && Reactions(t, attacker, null, technique.Seizes) is { Length: > 0 } reactions)
                {
                    yield return new Choice(k, t, reactions);
                }
            }
        }
    }

    private bool Works(int technique, int attacker, bool[] among) =>
        among[technique] && !scene.Book.Techniques[technique].HasNoTarget && scene.Able.WhyNotOn(technique, attacker) is null;

    private bool Meets(int attack, int technique, int attacker)
    {
        var reach = scene.TechniqueReach(technique, attacker);
        var distance = scene.ContactDistance(attack, technique, attacker);
        return distance >= reach.Least && distance <= reach.Most;
    }

    private IEnumerable<Choice> FollowUps(int attacker, Posture posture) => FollowUps(attacker, posture, possible);

    private IEnumerable<Choice> FollowUps(int attacker, Posture posture, bool[] among)
    {
        for (var t = 0; t < among.Length; t++)
        {
            if (scene.Book.Techniques[t].Needs.Contains(posture) && Works(t, attacker, among) && Reactions(t, attacker, posture, false) is { Length: > 0 } reactions)
            {
                yield return new Choice(-1, t, reactions);
            }
        }
    }

    private IEnumerable<Choice> Escapes(int attacker, AttackLine line)
    {
        for (var t = 0; t < possible.Length; t++)
        {
            var technique = scene.Book.Techniques[t];
            var escapes = technique.Family == Family.Escape && technique.Answers.Contains(line);
            if (escapes && Works(t, attacker, possible) && Reactions(t, attacker, Posture.Gripping, false) is { Length: > 0 } reactions)
            {
                yield return new Choice(-1, t, reactions);
            }
        }
    }

    /// <summary>Reactions that this attacker can perform from this posture (null: comes with an attack).</summary>
    private int[] Reactions(int technique, int attacker, Posture? posture, bool seizes)
    {
        var fitting = new List<int>();
        foreach (var id in scene.Book.Techniques[technique].Reactions)
        {
            var r = scene.Book.ReactionIndex(id);
            if (r >= 0 && scene.Able.WhyNotReaction(r, attacker) is null && scene.Book.Reactions[r].CanFollow(posture, seizes))
            {
                fitting.Add(r);
            }
        }

        return [.. fitting];
    }
}
