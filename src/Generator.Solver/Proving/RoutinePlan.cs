using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Rules;
using Generator.Solver.Engine;
using Google.OrTools.Sat;

namespace Generator.Solver.Proving;

/// <summary>
/// A whole routine as far as a proof looks at it: in each place a class of moves, with the postures, openings, returns, falls and times that
/// follow. Every routine that passes the audit fits it; so where nothing fits it, there is no such routine. The reverse does not hold: it knows no
/// stance, hands, facing or bearings.
/// </summary>
internal sealed partial class RoutinePlan
{
    private const int Postures = (int)Posture.Out + 1;

    private readonly IntVar leadIn;
    private readonly int latest;
    private readonly int farBack;
    private readonly int farAhead;

    /// <param name="scene">The brief, worked out.</param>
    /// <param name="classes">What moves there are.</param>
    /// <param name="size">How many moves and counts there can be.</param>
    /// <param name="places">Places for moves: no fewer than the routine can have.</param>
    public RoutinePlan(Scene scene, MoveClasses classes, PlanSize size, int places)
    {
        Scene = scene;
        Classes = classes;
        var longest = classes.All.Select(c => c.Longest).DefaultIfEmpty(1).Max() + Pace.DeadAirBreaks.Value;
        var firstStart = FarthestEntrance + LongestWalk + HalfCounts.PerCount;
        latest = size.LatestEnd ?? Math.Max(20_000, firstStart) + (places * longest);
        farBack = LongestWalk;
        farAhead = Math.Max(latest, FarthestEntrance) + LongestWalk + classes.All.Select(c => Math.Max(c.Back, Math.Max(c.Open < MoveClasses.Held ? c.Open : 0, c.SecondBack))).DefaultIfEmpty(0).Max();
        leadIn = Cp.Int(0, LongestWalk, "leadin");
        var list = new List<PlanSlot>();
        for (var i = 0; i <= places; i++)
        {
            list.Add(Slot(i, i < places, list.Count > 0 ? list[^1] : null));
        }

        Slots = list[..^1];
        Last = list[^1];
        for (var i = 0; i < places; i++)
        {
            Follow(Slots[i], list[i + 1]);
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

    public Cp Cp { get; } = new();

    public IReadOnlyList<PlanSlot> Slots { get; }

    /// <summary>What is true after the last move.</summary>
    public PlanSlot Last { get; }

    private int LongestWalk => field > 0 ? field : field = Enumerable.Range(0, Scene.Cast).Max(a => Scene.WalkTime(a, FarthestOpening(a)));

    private int FarthestEntrance => Scene.Brief.Attackers.Max(a => a.Entrance?.Value ?? 0);

    private int FarthestOpening(int attacker) => Scene.Brief.Attackers[attacker].Distance?.Value ?? Math.Max(0, Enumerable.Range(0, Bearing.Circle).Max(b => Scene.Floor[b]));

    private PlanSlot Slot(int i, bool isMove, PlanSlot? before)
    {
        var classes = Classes.All;
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
            Posture = [.. Enumerable.Range(0, cast).Select(a => Cp.Bools(Postures, $"posture[{i},{a}]"))],
            Threat = [.. Enumerable.Range(0, cast).Select(a => Cp.Int(-farBack, farAhead, $"threat[{i},{a}]"))],
            Open = [.. Enumerable.Range(0, cast).Select(a => Cp.Int(-1, farAhead, $"open[{i},{a}]"))],
        };
        foreach (var posture in slot.Posture)
        {
            Cp.Model.AddExactlyOne(posture);
        }

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

    /// <summary>Moves follow one another without overlapping and without dead air that breaks the routine.</summary>
    private void Times(PlanSlot slot, PlanSlot? before)
    {
        var classes = Classes.All;
        var model = Cp.Model;
        model.Add(slot.End >= slot.Start + Cp.Sum(slot.Is, classes.Select(c => (long)c.Shortest)));
        model.Add(slot.End <= slot.Start + Cp.Sum(slot.Is, classes.Select(c => (long)c.Longest)));
        if (before is not null)
        {
            model.AddImplication(slot.Used, before.Used);
            model.Add(slot.Start >= before.End);
            model.Add(slot.Start <= before.End + (LinearExpr.Affine(slot.Used, Pace.DeadAirBreaks.Value, 0)));
        }
    }

    /// <summary>What a move needs of an attacker: posture, opening, recovery, and time to come in.</summary>
    private void Need(PlanSlot slot, int a)
    {
        var (classes, model) = (Classes.All, Cp.Model);
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
                _ => model.Add(slot.Start + Scene.WalkTime(a, FarthestStanding(a)) >= slot.Threat[a]),
            };
            timely.OnlyEnforceIf(comes);
        }

        if (slot.Second[a] is { } taken)
        {
            var takers = Enumerable.Range(0, classes.Count).Where(c => (classes[c].Traits.AbleSeconds & (1 << a)) != 0).ToList();
            model.AddBoolOr([taken.Not(), .. takers.Select(c => slot.Is[c])]);
            foreach (var p in Enumerable.Range(0, Postures).Where(p => !MoveClasses.IsFree((Posture)p)))
            {
                model.AddBoolOr([taken.Not(), slot.Posture[a][p].Not()]);
            }

            foreach (var c in takers.Where(c => classes[c].Traits.Second == SecondRole.Taken))
            {
                model.AddBoolOr([taken.Not(), slot.Is[c].Not(), slot.Posture[a][(int)Posture.OffBalance]]);
                model.Add(slot.Start <= slot.Open[a]).OnlyEnforceIf([taken, slot.Is[c]]);
            }
        }
    }

    /// <summary>Any distance at which this attacker can stand when a move that waits for their recovery comes.</summary>
    private int FarthestStanding(int a) => Math.Max(FarthestOpening(a), 2000);

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

    /// <summary>What a move makes of the attackers.</summary>
    private void Follow(PlanSlot slot, PlanSlot next)
    {
        var (classes, model) = (Classes.All, Cp.Model);
        var seconds = slot.Second.OfType<BoolVar>().ToList();
        var needing = Enumerable.Range(0, classes.Count).Where(c => classes[c].Traits.Second != SecondRole.None).Select(c => slot.Is[c]).ToList();
        if (needing.Count > 0)
        {
            model.Add(Cp.Sum(seconds) == Cp.Sum(needing));
        }

        for (var a = 0; a < Scene.Cast; a++)
        {
            var on = Enumerable.Range(0, classes.Count).Where(c => classes[c].Traits.Attacker == a).ToList();
            var changing = on.Where(c => classes[c].Traits.To is not null).ToList();
            var changes = new List<BoolVar>(changing.Select(c => slot.Is[c]));
            if (slot.Second[a] is { } second)
            {
                changes.Add(second);
            }

            var changed = Cp.Bool($"changed[{slot.Index},{a}]");
            model.Add(Cp.Sum(changes) == changed);
            for (var p = 0; p < Postures; p++)
            {
                model.AddBoolOr([changed, slot.Posture[a][p].Not(), next.Posture[a][p]]);
                model.AddBoolOr([changed, slot.Posture[a][p], next.Posture[a][p].Not()]);
            }

            foreach (var group in changing.GroupBy(c => classes[c].Traits.To!.Value))
            {
                model.AddImplication(Sum([.. group.Select(c => slot.Is[c])], $"leaves[{slot.Index},{a},{group.Key}]"), next.Posture[a][(int)group.Key]);
            }

            model.Add(next.Threat[a] >= slot.Threat[a]).OnlyEnforceIf(changed.Not());
            model.Add(next.Open[a] <= slot.Open[a]).OnlyEnforceIf(changed.Not());
            Returns(slot, next, a, changing);
            if (slot.Second[a] is { } taken)
            {
                SecondAfter(slot, next, a, taken);
            }
        }
    }

    private void Returns(PlanSlot slot, PlanSlot next, int a, List<int> changing)
    {
        var (classes, model) = (Classes.All, Cp.Model);
        if (changing.Count == 0)
        {
            return;
        }

        var target = Sum([.. changing.Select(c => slot.Is[c])], $"target[{slot.Index},{a}]");
        var isOn = changing.Select(c => slot.Is[c]).ToList();
        model.Add(next.Threat[a] >= slot.End + Cp.Sum(isOn, changing.Select(c => (long)classes[c].Back))).OnlyEnforceIf(target);
        model.Add(next.Open[a] <= slot.End + Cp.Sum(isOn, changing.Select(c => (long)Math.Min(classes[c].Open, farAhead)))).OnlyEnforceIf(target);
    }

    private void SecondAfter(PlanSlot slot, PlanSlot next, int a, BoolVar taken)
    {
        var (classes, model) = (Classes.All, Cp.Model);
        foreach (var c in Enumerable.Range(0, classes.Count).Where(c => (classes[c].Traits.AbleSeconds & (1 << a)) != 0))
        {
            var traits = classes[c].Traits;
            var leaves = traits.Second == SecondRole.Bumped ? Posture.OffBalance : traits.To!.Value.IsControlled() ? Posture.Ready : traits.To!.Value;
            model.AddBoolOr([taken.Not(), slot.Is[c].Not(), next.Posture[a][(int)leaves]]);
            model.Add(next.Threat[a] >= slot.End + classes[c].SecondBack).OnlyEnforceIf([taken, slot.Is[c]]);
            model.Add(next.Open[a] <= slot.End + Math.Min(classes[c].Open, farAhead)).OnlyEnforceIf([taken, slot.Is[c]]);
        }
    }

    /// <summary>Everybody is ready where and when the brief has them open; all set off before count 1 where the first move needs it.</summary>
    private void Opening()
    {
        var (first, classes, model) = (Slots[0], Classes.All, Cp.Model);
        var early = Cp.Bool("setsoffearly");
        model.Add(leadIn == 0).OnlyEnforceIf(early.Not());
        var starters = new List<ILiteral> { early.Not() };
        for (var a = 0; a < Scene.Cast; a++)
        {
            var part = Scene.Brief.Attackers[a];
            var walk = Scene.WalkTime(a, part.Distance?.Value ?? 0);
            model.Add(first.Posture[a][(int)Posture.Ready] == 1);
            model.Add(first.Open[a] == -1);
            if (part.Entrance is { Value: > 0 } entrance)
            {
                model.Add(first.Threat[a] == entrance.Value + walk);
                foreach (var slot in Slots)
                {
                    model.Add(slot.Start >= entrance.Value - Scene.Settle.ContactAfter.Value).OnlyEnforceIf(slot.Touches[a]);
                }

                continue;
            }

            // Before the first move, everybody without an entrance walks in together, only as early as the one concerned must.
            model.Add(first.Threat[a] == walk - leadIn);
            var concerned = Enumerable.Range(0, classes.Count).Where(c => classes[c].Traits.Attacker == a).Select(c => first.Is[c]).ToList();
            if (concerned.Count > 0)
            {
                var starts = Sum(concerned, $"startswith[{a}]");
                starters.Add(starts);
                model.Add(leadIn + first.Start + Scene.Settle.ContactAfter.Value <= Scene.WalkTime(a, FarthestOpening(a))).OnlyEnforceIf([early, starts]);
            }
        }

        model.AddBoolOr(starters);
    }
}
