using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Rules;
using Generator.Solver.Engine;
using Google.OrTools.Sat;

namespace Generator.Solver.Proving;

/// <summary>
/// A whole routine as far as a proof looks at it: in each place a class of moves, with the postures, openings, returns, falls and times that
/// follow. Every routine that passes the audit fits it; so where nothing fits it, there is no such routine. The reverse does not hold: it knows no
/// stance, hands, facing or bearings. A layout may leave moves out of sight and attackers unfollowed, which makes it wider and much smaller.
/// </summary>
internal sealed partial class RoutinePlan
{
    private const int Postures = (int)Posture.Out + 1;

    private readonly PlanLayout layout;
    private readonly IReadOnlyList<MoveClass> unseen;
    private readonly IntVar leadIn;
    private readonly int latest;
    private readonly int farBack;
    private readonly int farAhead;

    /// <param name="scene">The brief, worked out.</param>
    /// <param name="classes">What moves there are.</param>
    /// <param name="size">How many moves and counts there can be.</param>
    /// <param name="places">Places for moves: no fewer than the routine can have.</param>
    public RoutinePlan(Scene scene, MoveClasses classes, PlanSize size, int places)
        : this(scene, classes, size, PlanLayout.Whole(places, scene.Cast))
    {
    }

    /// <param name="scene">The brief, worked out.</param>
    /// <param name="classes">What moves there are.</param>
    /// <param name="size">How many moves and counts there can be.</param>
    /// <param name="layout">What is looked at.</param>
    public RoutinePlan(Scene scene, MoveClasses classes, PlanSize size, PlanLayout layout)
    {
        Scene = scene;
        Classes = classes;
        this.layout = layout;
        Seen = layout.WithStretches ? [.. classes.All.Where(IsSeen)] : classes.All;
        unseen = layout.WithStretches ? [.. classes.All.Where(c => !IsSeen(c))] : [];
        var places = size.MostMoves ?? layout.Groups.Sum();
        var longest = classes.All.Select(c => c.Longest).DefaultIfEmpty(1).Max() + Pace.DeadAirBreaks.Value;
        var firstStart = FarthestEntrance + LongestWalk + HalfCounts.PerCount;
        latest = size.LatestEnd ?? Math.Max(20_000, firstStart) + (places * longest);
        farBack = LongestWalk;
        farAhead = Math.Max(latest, FarthestEntrance) + LongestWalk + classes.All.Select(c => Math.Max(c.Back, Math.Max(c.Open < MoveClasses.Held ? c.Open : 0, c.SecondBack))).DefaultIfEmpty(0).Max();
        leadIn = Cp.Int(0, Math.Min(LongestWalk, Scene.Settle.LeadInMost.Value), "leadin");
        var list = new List<PlanSlot>();
        foreach (var group in layout.Groups)
        {
            if (layout.WithStretches)
            {
                list.Add(Stretch(list.Count, list.LastOrDefault()));
            }

            for (var i = 0; i < group; i++)
            {
                list.Add(Slot(list.Count, true, list.LastOrDefault()));
            }
        }

        if (layout.WithStretches)
        {
            list.Add(Stretch(list.Count, list.LastOrDefault()));
        }

        list.Add(Slot(list.Count, false, null));
        Slots = list[..^1];
        Last = list[^1];
        for (var i = 0; i < Slots.Count; i++)
        {
            if (Slots[i].IsStretch)
            {
                Lift(Slots[i], list[i + 1]);
                Thin(Slots[i]);
            }
            else
            {
                Follow(Slots[i], list[i + 1]);
            }
        }

        Opening();
        Length(size);
        Ending();
        Caps();
        Story();
        Moments();
    }

    public Scene Scene { get; }

    public MoveClasses Classes { get; }

    /// <summary>The classes of the moves that are looked at one by one.</summary>
    public IReadOnlyList<MoveClass> Seen { get; }

    public Cp Cp { get; } = new();

    public IReadOnlyList<PlanSlot> Slots { get; }

    /// <summary>What is true after the last move.</summary>
    public PlanSlot Last { get; }

    private int LongestWalk => field > 0 ? field : field = Enumerable.Range(0, Scene.Cast).Max(a => Scene.WalkTime(a, FarthestOpening(a)));

    private int FarthestEntrance => Scene.Brief.Attackers.Max(a => a.Entrance?.Value ?? 0);

    private int FarthestOpening(int attacker) => Scene.Brief.Attackers[attacker].Distance?.Value ?? Math.Max(0, Enumerable.Range(0, Bearing.Circle).Max(b => Scene.Floor[b]));

    private IEnumerable<int> Followed => Enumerable.Range(0, Scene.Cast).Where(a => layout.Followed[a]);

    /// <summary>It may concern somebody who is followed, or be a move of a hero moment.</summary>
    private bool IsSeen(MoveClass move) => move.Traits.Wanted != 0 || Followed.Any(a => move.Traits.Attacker == a || (move.Traits.AbleSeconds & (1 << a)) != 0);

    private PlanSlot Slot(int i, bool isMove, PlanSlot? before)
    {
        var classes = Seen;
        var cast = Scene.Cast;
        var slot = new PlanSlot
        {
            Index = i,
            Is = isMove ? Cp.Bools(classes.Count, $"is[{i}]") : [],
            Used = isMove ? Cp.Bool($"used[{i}]") : Cp.False,
            Start = Cp.Int(0, latest, $"start[{i}]"),
            End = Cp.Int(0, latest, $"end[{i}]"),
            Touches = isMove ? Cp.Bools(cast, $"touches[{i}]") : [.. Enumerable.Repeat(Cp.False, cast)],
            Second = [.. Enumerable.Range(0, cast).Select(b => isMove && classes.Any(c => (c.Traits.AbleSeconds & (1 << b)) != 0) ? Cp.Bool($"second[{i},{b}]") : null)],
            Posture = PosturesAt(i),
            Threat = TimesAt(i, "threat", -farBack),
            Ready = TimesAt(i, "ready", -farBack),
            Open = TimesAt(i, "open", -1),
            Others = isMove && unseen.Count > 0 ? Cp.Int(0, latest, $"others[{i}]") : null,
        };
        if (!isMove)
        {
            return slot;
        }

        Cp.Model.AddExactlyOne([.. slot.Is, slot.Used.Not()]);
        Times(slot, before);
        for (var a = 0; a < cast; a++)
        {
            Need(slot, a);
        }

        return slot;
    }

    private BoolVar[][] PosturesAt(int i)
    {
        BoolVar[][] postures = [.. Enumerable.Range(0, Scene.Cast).Select(a => layout.Followed[a] ? Cp.Bools(Postures, $"posture[{i},{a}]") : [])];
        foreach (var a in Followed)
        {
            Cp.Model.AddExactlyOne(postures[a]);
        }

        return postures;
    }

    private IntVar[] TimesAt(int i, string name, int least) =>
        [.. Enumerable.Range(0, Scene.Cast).Select(a => layout.Followed[a] ? Cp.Int(least, farAhead, $"{name}[{i},{a}]") : Cp.Const(0))];

    /// <summary>Moves follow one another without overlapping and without dead air that breaks the routine.</summary>
    private void Times(PlanSlot slot, PlanSlot? before)
    {
        var classes = Seen;
        var model = Cp.Model;
        model.Add(slot.End >= slot.Start + Cp.Sum(slot.Is, classes.Select(c => (long)c.Shortest)));
        model.Add(slot.End <= slot.Start + Cp.Sum(slot.Is, classes.Select(c => (long)c.Longest)));
        if (before is null)
        {
            return;
        }

        if (!before.IsStretch)
        {
            // Runs whose last move is known are filled from the back.
            _ = layout.Order is null ? model.AddImplication(slot.Used, before.Used) : model.AddImplication(before.Used, slot.Used);
        }

        var rest = LinearExpr.Affine(slot.Used, Pace.DeadAirBreaks.Value, 0);
        if (slot.Others is { } others)
        {
            model.Add(others <= LinearExpr.Affine(slot.Used, latest, 0));
            model.Add(slot.Start >= before.End + (others * unseen.Min(c => c.Shortest)));
            model.Add(slot.Start <= before.End + rest + (others * (unseen.Max(c => c.Longest) + Pace.DeadAirBreaks.Value)));
        }
        else
        {
            model.Add(slot.Start >= before.End);
            model.Add(slot.Start <= before.End + rest);
        }
    }

    /// <summary>What a move needs of an attacker: posture, opening, recovery, and time to come in.</summary>
    private void Need(PlanSlot slot, int a)
    {
        if (!layout.Followed[a])
        {
            Takers(slot, a);
            return;
        }

        var (classes, model) = (Seen, Cp.Model);
        var on = Enumerable.Range(0, classes.Count).Where(c => classes[c].Traits.Attacker == a).ToList();
        List<BoolVar> touching = [.. on.Select(c => slot.Is[c])];
        if (slot.Second[a] is { } second)
        {
            touching.Add(second);
        }

        model.Add(Cp.Sum(touching) == slot.Touches[a]);
        foreach (var c in on)
        {
            model.AddBoolOr([slot.Is[c].Not(), .. classes[c].From.Members.Select(p => slot.Posture[a][(int)p])]);
        }

        foreach (var group in on.GroupBy(c => classes[c].Traits.By))
        {
            var comes = Sum([.. group.Select(c => slot.Is[c])], $"{group.Key}[{slot.Index},{a}]");
            var timely = group.Key switch
            {
                ComesBy.Attack => model.Add(slot.Start + Scene.Settle.ContactAfter.Value >= slot.Threat[a]),
                ComesBy.Opening => model.Add(slot.Start <= slot.Open[a]),
                _ => model.Add(slot.Start >= slot.Ready[a]),
            };
            timely.OnlyEnforceIf(comes);
        }

        if (slot.Second[a] is { } taken)
        {
            var takers = Takers(slot, a);
            foreach (var p in Enumerable.Range(0, Postures).Where(p => !MoveClasses.IsFree((Posture)p)))
            {
                model.AddBoolOr([taken.Not(), slot.Posture[a][p].Not()]);
            }

            // Nobody is bumped into who lies on the floor.
            foreach (var p in Enumerable.Range(0, Postures).Where(p => ((Posture)p).IsDown()))
            {
                model.Add(slot.Start >= slot.Ready[a]).OnlyEnforceIf([taken, slot.Posture[a][p]]);
            }

            foreach (var c in takers.Where(c => classes[c].Traits.Second == SecondRole.Taken))
            {
                var found = classes[c].Traits.SecondFrom;
                model.AddBoolOr([taken.Not(), slot.Is[c].Not(), .. found.Members.Select(p => slot.Posture[a][(int)p])]);
                if (!found.Contains(Posture.Ready))
                {
                    model.Add(slot.Start <= slot.Open[a]).OnlyEnforceIf([taken, slot.Is[c]]);
                }
            }
        }
    }

    /// <summary>Classes of moves that can concern this attacker as the second, if the second it is.</summary>
    private List<int> Takers(PlanSlot slot, int a)
    {
        var takers = Enumerable.Range(0, Seen.Count).Where(c => (Seen[c].Traits.AbleSeconds & (1 << a)) != 0).ToList();
        if (slot.Second[a] is { } taken)
        {
            Cp.Model.AddBoolOr([taken.Not(), .. takers.Select(c => slot.Is[c])]);
        }

        return takers;
    }

    private BoolVar Sum(List<BoolVar> literals, string name)
    {
        if (literals.Count == 1)
        {
            return literals[0];
        }

        var any = Cp.Bool(name);
        Cp.Model.Add(Cp.Sum(literals) == any);
        return any;
    }

    /// <summary>Everybody is ready where and when the brief has them open; all set off before count 1 where the first move needs it.</summary>
    private void Opening()
    {
        var (first, opening, classes, model) = (Slots.First(s => !s.IsStretch || Slots.All(t => t.IsStretch)), Slots[0], Seen, Cp.Model);
        var early = Cp.Bool("setsoffearly");
        model.Add(leadIn == 0).OnlyEnforceIf(early.Not());
        var starters = new List<ILiteral> { early.Not() };
        if (unseen.Count > 0 || layout.WithStretches)
        {
            // Whoever the first move concerns may be out of sight.
            starters.Add(Cp.True);
        }

        foreach (var a in Followed)
        {
            var part = Scene.Brief.Attackers[a];
            var walk = Scene.WalkTime(a, part.Distance?.Value ?? 0);
            model.Add(opening.Posture[a][(int)(part.Kneels is null ? Posture.Ready : Posture.Knelt)] == 1);
            model.Add(opening.Open[a] == -1);
            if (part.Entrance is { Value: > 0 } entrance)
            {
                model.Add(opening.Threat[a] == entrance.Value + walk);
                model.Add(opening.Ready[a] == entrance.Value);
                foreach (var slot in Places)
                {
                    model.Add(slot.Start >= entrance.Value - Scene.Settle.ContactAfter.Value).OnlyEnforceIf(slot.Touches[a]);
                }

                continue;
            }

            // Before the first move, everybody without an entrance walks in together, only as early as the one concerned must.
            model.Add(opening.Threat[a] == walk - leadIn);
            model.Add(opening.Ready[a] == LinearExpr.Term(leadIn, -1));
            var concerned = Enumerable.Range(0, classes.Count).Where(c => !first.IsStretch && classes[c].Traits.Attacker == a).Select(c => first.Is[c]).ToList();
            if (concerned.Count > 0 && !layout.WithStretches)
            {
                var starts = Sum(concerned, $"startswith[{a}]");
                starters.Add(starts);
                model.Add(leadIn + first.Start + Scene.Settle.ContactAfter.Value <= Scene.WalkTime(a, FarthestOpening(a))).OnlyEnforceIf([early, starts]);
            }
        }

        model.AddBoolOr(starters);
    }
}
