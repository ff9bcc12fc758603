using Generator.Domain;
using Generator.Paperwork.Floor;
using Generator.Paperwork.Following;
using Generator.Paperwork.Text;
using Generator.Paperwork.Tracks;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Html;

/// <summary>A routine seen by one performer.</summary>
public sealed class PartView
{
    private readonly RoutineView view;

    public PartView(RoutineView view, int performer)
    {
        (this.view, Performer, Figures) = (view, performer, new FigureSet(view.Source));
        Moves = [.. view.Source.Steps.Where(Concerns).Select(s => performer < 0 ? HeroMove(s) : AttackerMove(s))];
        IReadOnlyList<(int, int)> starts = [.. view.Phrases.Select(p => (p.Number, p.From))];
        IReadOnlyList<int> only = performer < 0 ? [-1] : [-1, performer];
        Tracks = TrackScore.Of(view.Course, starts, view.Course.From, view.Course.To, only: only);
        Plans = [.. view.Source.Phrases.Zip(view.Phrases, (p, shown) => (shown, Steps: p.Of(view.Source.Steps))).Where(p => p.Steps.Any(Concerns))
            .Select(p => (p.shown, view.Painter.Of(p.Steps, only)))];
        WideTracks = TrackScore.Of(view.Course, starts, view.Course.From, view.Course.To, TrackScore.Long, only);
    }

    /// <summary>Number in the brief, from 0; −1 for the hero.</summary>
    public int Performer { get; }

    /// <summary>The figures of the part.</summary>
    public FigureSet Figures { get; }

    /// <summary>The floor in every phrase in which they have something to do, with nobody on it but the hero and them.</summary>
    public IReadOnlyList<(PhraseView Phrase, FloorPicture Floor)> Plans { get; }

    public RoutineView Routine => view;

    public Performer Person => Performer < 0 ? Brief.Hero : Brief.Attackers[Performer];

    public string Name => Page.Clean(Person.Name);

    public IReadOnlyList<PartMove> Moves { get; }

    public IReadOnlyList<TrackLine> Tracks { get; }

    /// <summary>The same in longer lines.</summary>
    public IReadOnlyList<TrackLine> WideTracks { get; }

    /// <summary>Falls in one run.</summary>
    public int Falls => FallsUntil(view.Source.Steps.Count);

    /// <summary>"On the mark", or where and when an attacker opens.</summary>
    public string Opens
    {
        get
        {
            var placements = view.Source.Routine.Placements;
            if (Performer < 0)
            {
                return $"On {StepDetails.TheMark(view.Source.Scene, 0)}, facing {Words.Clock(view.Course.Hero.FacingAt(view.Course.From) / Bearing.DegreesPerHalfHour)}, {Words.Of(Brief.Hero.OpeningStance)}.";
            }

            if (Performer >= placements.Count)
            {
                return "No opening mark is given.";
            }

            var placement = placements[Performer];
            return $"At {Words.Clock(placement.Bearing)}, {placement.Distance} from {StepDetails.TheMark(view.Source.Scene, 0)}, {EntranceCue.Told(view.Source.Scene, placement, Performer)}{StepDetails.OnTheKnee(Brief.Attackers[Performer])}.";
        }
    }

    private Brief Brief => view.Source.Brief;

    /// <summary>Whoever attacks has it in their part, though the hero did something that has no target.</summary>
    private bool Concerns(Step step) => Performer < 0 || step.Concerns(Performer) || (step.Row.Attacker == Performer && step.Attack is not null);

    private string NameOf(int attacker) => Page.Clean(Brief.Attackers[attacker].Name);

    private PartMove AttackerMove(Step step)
    {
        var move = view.Moves[step.Index];
        var lines = new List<(string, string)>();
        var own = step.Row.Attacker == Performer;
        var throws = own && step.Attack is not null;
        if (throws)
        {
            var begins = AttackerTrail.AttackStart(step);
            var (where, far) = step.HasTarget ? ($", at the hero's {Words.Clock(step.TargetBearing)}", $", {new Centimetres(step.Distance)} from {StepDetails.TheMark(view.Source.Scene, step.Before.Mark)}") : (string.Empty, string.Empty);
            lines.Add(("Go", ComesTooSoon(step) is { } ready
                ? $"do not: you are ready only at {Words.AtCount(ready)}, too late for the contact"
                : $"at {Words.AtCount(Leaves(step))} from {Own.WhereAt(Leaves(step))}{(step.WalkRound > 0 ? $", round to {Words.Clock(step.TargetBearing)}" : string.Empty)}"));
            lines.Add(("Throw", $"{step.Attack!.Name}, {(begins == step.Contact ? "at once" : "from " + Words.AtCount(begins))}{where}"));
            lines.Add(("Contact", $"{Words.AtCount(step.Contact)}{far}"));
            AddCue(lines, step, "give it by {0} as you start");
        }

        var during = step.End > step.Start ? $", {move.AtCount} to {Words.Count(step.End)}" : string.Empty;
        lines.Add((view.HeroName, own || !step.HasTarget ? move.Technique + during : $"{move.Technique} on {move.Who}{during}"));
        if (own)
        {
            AddBlow(lines, step, "you", Knap(step, "you knap", view.HeroName + " knaps"));
        }

        if (step.Reaction is { } reaction)
        {
            var bumped = !own && !step.Technique!.TakesTwo;
            lines.Add(("Sell", bumped ? $"{move.Who} bumps into you: off balance" : reaction.Name + (reaction.Sell.Length > 0 ? ". " + reaction.Sell : string.Empty)));
            AddFall(lines, step);
        }

        AddHurts(lines, step);
        AddProps(lines, step);
        var after = step.After.Attackers[Performer];
        lines.Add(("End", $"{Words.Clock(after.Bearing)}, {new Centimetres(after.Distance)} from {StepDetails.TheMark(view.Source.Scene, step.After.Mark)}, {Posture(after)}"));
        lines.Add(("Again", Again(step)));
        return new PartMove(step.Index + 1, move.AtCount, -1, throws ? step.Attack!.Name : step.Technique is { IsHit: true } && !step.IsAnswered ? "Take " + Words.Low(move.Technique) : $"From {view.HeroName}: {Words.Low(move.Technique)}", lines, Pictures(step), move.Safety, move.Findings);
    }

    private void AddHurts(List<(string, string)> lines, Step step) =>
        lines.AddRange(HurtLines.Of([step], Performer).Select(h => ("Hurt", $"play a hurt {HurtLines.Spell(h)}: nothing with it or on it")));

    private void AddProps(List<(string, string)> lines, Step step)
    {
        if (string.Join("; ", PropLines.Of(view.Source.Scene, step)) is { Length: > 0 } props)
        {
            lines.Add(("Prop", props));
        }
    }

    private PartMove HeroMove(Step step)
    {
        var move = view.Moves[step.Index];
        var lines = new List<(string, string)>();
        if (step.HasTarget)
        {
            lines.Add(("With", $"{move.Who} at {move.From}"));
        }

        if (step.Attack is { } attack)
        {
            lines.Add(("Attack", $"{attack.Name}, contact at {Words.AtCount(step.Contact)}"));
            AddCue(lines, step, "comes by {0} as the attack starts");
        }

        if (StepDetails.Travels(view.Source.Scene, step) is { } travels)
        {
            lines.Add(("Travel", travels));
        }

        lines.Add(("From", $"{Stance(step.StanceStart)}, facing {Words.Clock(step.FacingStart)}"));
        AddBlow(lines, step, move.Who, Knap(step, move.Who + " knaps", "you knap"));

        if (step.Reaction is not null)
        {
            lines.Add(("They sell", move.Reaction));
        }

        AddProps(lines, step);
        lines.Add(("End", $"{Words.AtCount(step.End)}, {Stance(step.After.Stance)}, facing {Words.Clock(step.After.Facing)}"));
        AddFall(lines, step);
        AddHurts(lines, step);
        lines.AddRange(move.Details.Where(d => d.StartsWith("note: ", StringComparison.Ordinal)).Select(d => ("Note", d[6..])));
        return new PartMove(step.Index + 1, move.AtCount, move.Attacker < 0 ? -2 : move.Attacker, move.Technique, lines, Pictures(step), move.Safety, move.Findings);
    }

    private IReadOnlyList<FigureView> Pictures(Step step) => [.. new[] { Figures.Contact(step), Figures.End(step) }.OfType<FigureView>()];

    private int FallsUntil(int moves) => view.Source.Steps.Take(moves).Sum(s => s.Falls.Count(f => f.Who == Performer));

    private void AddFall(List<(string, string)> lines, Step step)
    {
        if (step.Falls.Any(f => f.Who == Performer))
        {
            lines.Add(("Fall", $"down at {Words.AtCount(step.End)}; fall {Words.Number(FallsUntil(step.Index + 1))} of the {Words.Number(Falls)} in a run"));
        }
    }

    private static void AddCue(List<(string, string)> lines, Step step, string how)
    {
        if (step.Row.Cue != Cue.None)
        {
            lines.Add(("Cue", how.Replace("{0}", Words.Of(step.Row.Cue), StringComparison.Ordinal)));
        }
    }

    private static void AddBlow(List<(string, string)> lines, Step step, string who, string knap)
    {
        if (step.Hits)
        {
            lines.Add(("Hit", Words.AtCount(step.End) + knap));
        }
        else if (step.Throws)
        {
            lines.Add(("Blow", $"{Words.AtCount(step.End)}: it does not hit, {who} {(string.Equals(who, "you", StringComparison.Ordinal) ? "answer" : "answers")} it; no knap"));
        }
    }

    private static string Knap(Step step, string victim, string hero) => step.Technique?.Knap switch
    {
        Domain.Knap.Victim => ", " + victim,
        Domain.Knap.Hero => ", " + hero,
        Domain.Knap.Contact => ", the contact is heard",
        _ => string.Empty,
    };

    private string Stance(Stance stance) => Words.Low(view.Source.Scene.Book.Stances.NameOf(stance));

    private PerformerCourse Own => view.Course.Performers[Performer + 1];

    /// <summary>The half count in which the way in begins, or the attack where there is none; how they come onto the floor before that stands where they open.</summary>
    private int Leaves(Step step)
    {
        var time = AttackerTrail.AttackStart(step);
        while (time > Math.Max(Own.From, ReadyFor(step)) && Own.DoingAt(time - 1) == Doing.ComesIn)
        {
            time--;
        }

        return time;
    }

    /// <summary>The half count from which they can set off for an attack of theirs: recovered, and in play.</summary>
    private int ReadyFor(Step step) => step.Before.Attackers[Performer].SetsOffAt;

    /// <summary>When they will be ready, where the routine has them go before that; null where it does not.</summary>
    private int? ComesTooSoon(Step step) => ReadyFor(step) is var ready && Leaves(step) < ready ? ready : null;

    private static string Posture(AttackerState state) => state.Gone ? "off the floor" : Words.Of(state.Posture);

    private string Again(Step step)
    {
        if (step.After.Attackers[Performer].Posture == Domain.Posture.Out)
        {
            return "not again: out";
        }

        var next = view.Source.Steps.Skip(step.Index + 1).FirstOrDefault(s => s.Concerns(Performer));
        if (next is null)
        {
            return "not again in this routine";
        }

        if (next.Attack is null || next.Row.Attacker != Performer)
        {
            return $"stay for move {Words.Number(next.Index + 1)}, {Words.AtCount(next.Start)}";
        }

        var contact = $"for move {Words.Number(next.Index + 1)}, contact at {Words.AtCount(next.Contact)}";
        return ComesTooSoon(next) is { } late
            ? $"do not go: you are ready only at {Words.AtCount(late)}, too late {contact}"
            : $"be ready by {Words.AtCount(ReadyFor(next))}; go at {Words.AtCount(Leaves(next))} from {Own.WhereAt(Leaves(next))}; {contact}";
    }
}
