using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.HandOffs;

/// <summary>Everybody's track as a table: one row for each thing that one performer does, the hero first, then the attackers in their order, the ally last.</summary>
public static class TrackTable
{
    private static readonly string[] Columns = ["performer", "called", "count", "to count", "second", "to second", "does", "with", "where", "cue", "move"];

    public static Table Of(Scene scene, Routine routine, IReadOnlyList<Step> steps)
    {
        var tracks = Enumerable.Range(-1, scene.Cast + 1).Select(p => p < 0
            ? (scene.Brief.Hero.Name, Does: Hero(scene, [.. steps.Where(s => !s.IsByAlly)], -1))
            : (scene.Brief.Attackers[p].Name, Does: Attacker(scene, routine, steps, p))).ToList();
        if (scene.Brief.Ally is { } ally)
        {
            tracks.Add((ally.Part.Name, Hero(scene, [.. steps.Where(s => s.IsByAlly)], scene.Cast)));
        }

        return new Table("Tracks", Columns, [.. tracks.SelectMany(t => t.Does.OrderBy(r => r.From).ThenBy(r => r.Move).Select(r => Row(scene, t.Name, r)))]);
    }

    private static IEnumerable<Entry> Hero(Scene scene, IReadOnlyList<Step> steps, int who) =>
        steps.Select(s => new Entry(s.Start, s.Technique is null ? s.Over : s.End, s.Technique?.Name ?? Words.Unanswered, s.HasTarget ? scene.Brief.Attackers[s.Row.Attacker].Name : string.Empty, Words.Clock(s.HasTarget ? s.TargetBearing : s.FacingStart), string.Empty, s.Index + 1))
            .Concat(Hurt(steps, who));

    private static IEnumerable<Entry> Hurt(IReadOnlyList<Step> steps, int who) =>
        HurtLines.Of(steps, who).Select(h => new Entry(h.From, h.What.Until.Value, $"plays a hurt {h.What.PartInWords}", string.Empty, string.Empty, string.Empty, h.Move + 1));

    private static IEnumerable<Entry> Attacker(Scene scene, Routine routine, IReadOnlyList<Step> steps, int attacker)
    {
        if (attacker < routine.Placements.Count)
        {
            var place = routine.Placements[attacker];
            yield return new Entry(place.Entrance.Value, place.Entrance.Value, "opens, " + place.Distance + " from " + StepDetails.TheMark(scene, 0), string.Empty, Words.Clock(place.Bearing), string.Empty, 0);
        }

        foreach (var hurt in Hurt(steps, attacker))
        {
            yield return hurt;
        }

        foreach (var step in steps)
        {
            if (step.Target == attacker)
            {
                if (step.Attack is { } attack)
                {
                    yield return new Entry(Following.AttackerTrail.AttackStart(step), step.Contact, attack.Name, step.Scene.Brief.Hero.Name, Words.Clock(step.TargetBearing), step.Row.Cue == Cue.None ? string.Empty : Words.Of(step.Row.Cue), step.Index + 1);
                }

                if (step.Reaction is { } reaction)
                {
                    yield return new Entry(step.Start, step.End, reaction.Name, step.Scene.Brief.Hero.Name, Words.Clock(step.After.Attackers[attacker].Bearing), string.Empty, step.Index + 1);
                }
            }
            else if (step.Second == attacker)
            {
                yield return new Entry(step.Start, step.End, "caught up in it: " + (step.Reaction?.Name ?? step.Technique?.Name ?? string.Empty), scene.Brief.Attackers[step.Row.Attacker].Name, Words.Clock(step.After.Attackers[attacker].Bearing), string.Empty, step.Index + 1);
            }

            if (step.After.Attackers[attacker].Posture == Posture.Out && step.Before.Attackers[attacker].Posture != Posture.Out)
            {
                yield return new Entry(step.End, step.End, step.After.Attackers[attacker].Gone ? "leaves the floor" : "stays down, out", string.Empty, Words.Clock(step.After.Attackers[attacker].Bearing), string.Empty, step.Index + 1);
            }
        }
    }

    private static IReadOnlyList<Cell> Row(Scene scene, string performer, Entry entry)
    {
        var clock = new ShowClock(scene.Pulse);
        return
        [
            Cell.Of(performer),
            Cell.Of(Words.Count(entry.From)),
            Cell.Count(entry.From),
            Cell.Count(entry.To),
            Cell.Number((entry.From < entry.To ? clock.From(entry.From) : clock.At(entry.From)).Nearest(1000) / 1000m, 3),
            Cell.Number(clock.At(entry.To).Nearest(1000) / 1000m, 3),
            Cell.Of(entry.Does),
            Cell.Of(entry.With),
            Cell.Of(entry.Where),
            Cell.Of(entry.Cue),
            entry.Move == 0 ? Cell.Empty : Cell.Number(entry.Move),
        ];
    }

    private readonly record struct Entry(int From, int To, string Does, string With, string Where, string Cue, int Move);
}
