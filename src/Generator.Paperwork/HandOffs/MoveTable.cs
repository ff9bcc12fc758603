using Generator.Domain;
using Generator.Paperwork.Teaching;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.HandOffs;

/// <summary>All moves as a table: one row a move, seconds from the first click; the count as it is called on every paper, and as a number that sorts.</summary>
public static class MoveTable
{
    private static readonly string[] Columns =
        ["move", "phrase", "called", "count", "to count", "second", "to second", "attacker", "attacker at", "cue", "attack", "technique", "reaction", "hero stance", "hero faces", "distance m", "falls", "linger", "note"];

    private static readonly string[] TravelColumns = ["to mark", "way m"];

    private static readonly string[] HurtColumns = ["hurts", "of"];

    private static readonly string[] AllyColumns = ["by"];

    public static Table Of(Scene scene, Routine routine, IReadOnlyList<Step> steps, IReadOnlyList<Phrase> phrases) =>
        new("Moves", [.. Columns, .. scene.Brief.Travels ? TravelColumns : [], .. Hurts(routine) ? HurtColumns : [], .. scene.Brief.Ally is null ? [] : AllyColumns], [.. steps.Select(s => Row(scene, routine.Moves[s.Index], s, phrases, Hurts(routine)))]);

    private static bool Hurts(Routine routine) => routine.Moves.Any(m => m.Hurts is not null);

    private static IReadOnlyList<Cell> Row(Scene scene, Move move, Step step, IReadOnlyList<Phrase> phrases, bool hurts)
    {
        var clock = new ShowClock(scene.Pulse);
        return
        [
            Cell.Number(step.Index + 1),
            Cell.Number(phrases.First(p => step.Index + 1 <= p.Last).Number),
            Cell.Of(Words.Count(step.Start)),
            Cell.Count(step.Start),
            Cell.Count(step.End),
            Cell.Number(clock.From(step.Start).Nearest(1000) / 1000m, 3),
            Cell.Number(clock.At(step.End).Nearest(1000) / 1000m, 3),
            Cell.Of(step.Row.Attacker < 0 ? string.Empty : scene.Brief.Attackers[step.Row.Attacker].Name),
            Cell.Of(step.HasTarget ? Words.Clock(step.TargetBearing) : string.Empty),
            Cell.Of(move.Cue == Cue.None ? string.Empty : Words.Of(move.Cue)),
            Cell.Of(step.Attack?.Name ?? string.Empty),
            Cell.Of(step.Technique?.Name ?? string.Empty),
            Cell.Of(step.Reaction?.Name ?? string.Empty),
            Cell.Of(Words.Of(step.StanceStart)),
            Cell.Of(Words.Clock(step.FacingStart)),
            step.HasTarget ? Cell.Number(step.Distance / 100m, 2) : Cell.Empty,
            Cell.Of(string.Join(", ", step.Falls.Select(f => f.Who < 0 ? step.Scene.Brief.Hero.Name : scene.Brief.Attackers[f.Who].Name))),
            Cell.Number(move.Linger.Value / 2m, 1),
            Cell.Of(move.Note),
            .. scene.Brief.Travels ? (Cell[])[Cell.Of(step.Travels < 0 ? string.Empty : scene.Brief.Marks[step.Travels].Name), step.Travels < 0 ? Cell.Empty : Cell.Number(step.Way / 100m, 2)] : [],
            .. hurts ? (Cell[])[Cell.Of(string.Join(", ", HurtLines.Of(step).Select(h => h.What.Text))), Cell.Of(string.Join(", ", HurtLines.Of(step).Select(h => StepDetails.Name(step.Scene, h.Who))))] : [],
            .. scene.Brief.Ally is null ? (Cell[])[] : [Cell.Of(step.Scene.Brief.Hero.Name)],
        ];
    }
}
