using Generator.Domain;
using Generator.Rules.Bodies;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Following;

/// <summary>The way of one attacker through a routine.</summary>
internal sealed class AttackerTrail
{
    private readonly PaperSource source;
    private readonly int attacker;
    private readonly FightState open;

    /// <summary>Half count in which somebody who is not in from the start sets off from where they come in.</summary>
    private readonly int sets;
    private readonly bool isInFromTheStart;

    public AttackerTrail(PaperSource source, int attacker)
    {
        this.source = source;
        this.attacker = attacker;
        open = source.Steps.Count > 0 ? source.Steps[0].Before : Replay.Open(source.Scene, source.Routine.Placements);
        var first = source.Steps.FirstOrDefault(Takes);
        isInFromTheStart = open.Attackers[attacker].Entrance <= 0;
        sets = EntranceCue.SetsOffOn(open.Attackers[attacker].Way, open.Attackers[attacker].Entrance);
        Earliest = Math.Min(Math.Min(open.Attackers[attacker].ReadyAt, sets), first?.Attack is null ? 0 : AttackStart(first));
    }

    /// <summary>The first half count in which this attacker stirs.</summary>
    public int Earliest { get; }

    /// <param name="from">First half count.</param>
    /// <param name="to">Last half count.</param>
    /// <param name="marks">The hero's way between marks; empty where there is one.</param>
    public PerformerCourse Course(int from, int to, IReadOnlyList<Keyframe> marks)
    {
        var cells = new Cells(from, to, Doing.NotIn);
        var contacts = new List<Contact>();
        var (now, since, stirred) = (open, from, false);
        foreach (var step in source.Steps)
        {
            if (!Takes(step))
            {
                now = Touched(step) ? step.After : now;
                continue;
            }

            var begins = step.Attack is null ? step.Start : Math.Max(AttackStart(step), since);
            Idle(cells, now, since, begins, stirred);
            if (sets > begins)
            {
                // Too early by the audit's word, and drawn all the same.
                cells.Pose(begins, Figure.Standing);
            }

            Comes(cells, begins, step);
            Acts(cells, begins, step);
            if (step.Attack is not null && step.Row.Attacker == attacker)
            {
                contacts.Add(new Contact(step.Contact, step.Index + 1, false, -1, step.Technique is null or { Family: Family.Setback }));
            }

            (now, since, stirred) = (step.After, Math.Max(since, step.Over), true);
        }

        Idle(cells, now, since, to, stirred);
        var last = (source.Steps.Count > 0 ? source.Steps[^1].After : open).Attackers[attacker].Way;
        var lies = Bodies(last);
        foreach (var body in lies)
        {
            cells.Pose((int)Math.Ceiling(body.From), (int)Math.Min(to, Math.Ceiling(body.To)), Figure.Lying);
        }

        return new PerformerCourse
        {
            Attacker = attacker,
            Name = source.Brief.Attackers[attacker].Name,
            From = from,
            Doings = cells.Doings,
            Moves = cells.Moves,
            Figures = cells.Figures,
            Ways = Trail.Of(from, last),
            Bodies = lies,
            Turns = [],
            Marks = marks,
            Contacts = contacts,
        };
    }

    /// <summary>The first half count of the attack of a move: nobody swings before they are ready.</summary>
    internal static int AttackStart(Step step) =>
        Math.Min(step.Contact, Math.Max(step.Contact - step.Attack!.Length.Value, step.HasTarget ? step.Before.Attackers[step.Row.Attacker].ReadyAt : int.MinValue));

    /// <summary>How somebody is left who does not lie; who goes out without a fall stays as they were: kneeling or on their feet.</summary>
    private static Figure FigureOf(AttackerState state, Reaction? reaction, AttackerState before)
    {
        if (state.Gone)
        {
            return Figure.Away;
        }

        if (state.Posture == Posture.Out && reaction is not { Fall: not FallClass.None } && before.Posture != Posture.Out)
        {
            return FigureOf(before, null, before);
        }

        return state.Posture.IsKneeling() || reaction is { Fall: not FallClass.None } ? Figure.Kneeling : Figure.Standing;
    }

    /// <summary>Where and when they lie: from the end of the move that puts them there, or from its start if they lay before.</summary>
    private IReadOnlyList<LyingBody> Bodies(Leg last) =>
        [.. last.Chain().Where(l => l.Lies).Reverse().Select(l => new LyingBody(l.Before?.LiesAt(l.From - 0.5) == true ? l.From : Math.Max(l.From, source.Steps[l.Move].Over), l.To, l.Start.Rounded(), l.End.Rounded()))];

    private bool Takes(Step step) => step.Concerns(attacker);

    private bool Touched(Step step) => step.After.Attackers[attacker] != step.Before.Attackers[attacker];

    /// <summary>What is done from the end of one move to the start of the next.</summary>
    private void Idle(Cells cells, FightState now, int since, int until, bool stirred)
    {
        var state = now.Attackers[attacker];
        var threat = Replay.ThreatTime(source.Scene, now, attacker);
        for (var time = since; time < until; time++)
        {
            var doing = state.Posture switch
            {
                Posture.Out => Doing.Out,
                Posture.Gripping => Doing.Grips,
                var held when held.IsControlled() => Doing.Held,
                _ when !stirred && !isInFromTheStart && time < state.Entrance => time < sets ? Doing.NotIn : Doing.Enters,
                not Posture.Ready when time < state.OpenUntil => Doing.Reaction,
                _ when stirred && time < state.ReadyAt => Doing.Reset,
                _ => time < threat ? Doing.Ready : Doing.Waiting,
            };
            if (cells[time] != Doing.Fall)
            {
                cells.Fill(time, time + 1, doing, 0);
            }
        }

        if (!stirred && !isInFromTheStart && sets > since)
        {
            // Whoever has not come in yet is not on the floor.
            cells.Pose(since, Figure.Away);
            cells.Pose(sets, Figure.Standing);
        }

        if (state.IsActive)
        {
            cells.Pose(Math.Max(since, state.ReadyAt), state.Posture == Posture.Knelt ? Figure.Kneeling : Figure.Standing);
        }
    }

    /// <summary>The way in before an attack.</summary>
    private void Comes(Cells cells, int begins, Step step)
    {
        foreach (var leg in step.LegsOf(attacker).Where(l => l.Kind == LegKind.Comes))
        {
            for (var time = (int)Math.Floor(leg.From); time < Math.Min(begins, leg.To); time++)
            {
                if (cells[time] is Doing.Ready or Doing.Waiting)
                {
                    cells.Fill(time, time + 1, Doing.ComesIn, step.Index + 1);
                }
            }
        }
    }

    /// <summary>The attack, and what the technique does.</summary>
    private void Acts(Cells cells, int begins, Step step)
    {
        var after = step.After.Attackers[attacker];
        var number = step.Index + 1;
        var strikes = step.Attack is not null && step.Row.Attacker == attacker;

        // Nobody is taken on while they are still under way.
        var taken = strikes ? step.Contact : Math.Max(step.Start, step.Before.Attackers[attacker].ArrivesAt);
        if (strikes)
        {
            cells.Fill(begins, step.Contact, Doing.Attack, number);
        }

        if (step.Technique is null)
        {
            return;
        }

        var falls = step.Falls.Any(f => f.Who == attacker);
        var ends = Math.Max(taken, step.Over);
        cells.Fill(taken, ends, falls ? Doing.Fall : Doing.Reaction, number);
        if (falls)
        {
            cells.Fill(ends, Math.Max(ends + HalfCounts.PerCount, after.ArrivesAt), Doing.Fall, number);
        }

        if (after.Gone)
        {
            // Off the floor on foot, and seen until the edge.
            cells.Pose(taken, Figure.Standing);
            cells.Pose((int)Math.Ceiling(step.LegsOf(attacker).Select(l => l.To).DefaultIfEmpty(taken).Max()), Figure.Away);
            return;
        }

        if (step.Reaction is { Posture: null } && !falls && step.Row.Attacker == attacker)
        {
            // Whoever stays as they were stays on the knee, too.
            return;
        }

        var kneels = step.Row.Attacker == attacker && step.Reaction is { Fall: FallClass.None, Load.Kneel: not BodyParts.None };
        cells.Pose(falls ? ends : taken, kneels ? Figure.Kneeling : FigureOf(after, falls ? step.Reaction : null, step.Before.Attackers[attacker]));
    }
}
