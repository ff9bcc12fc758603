using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Refuting;

namespace Generator.Solver.Reworking;

/// <summary>
/// The routine that is to be changed, told in the terms of the brief that it is to answer: attackers by their new numbers, the moves of those
/// who are no longer in it left out, and the brief as the search takes it.
/// </summary>
internal sealed class Original
{
    private Original(Scene scene, Scene search, Routine routine, IReadOnlyList<int> taken, int gone, IReadOnlyList<OldMove> moves, bool[] mayOut)
    {
        (MayOut, Taken) = (mayOut, taken);
        (Scene, Search, Routine, Gone, Moves) = (scene, search, routine, gone, moves);
    }

    /// <summary>The brief that the answer is judged by.</summary>
    public Scene Scene { get; }

    /// <summary>The same with what the search needs to be told: a length, and that nobody must go out where nobody is named.</summary>
    public Scene Search { get; }

    /// <summary>The old routine as a routine of the new brief; what cannot be taken over is left out.</summary>
    public Routine Routine { get; }

    /// <summary>Who may go out without having to: everybody where the brief says nothing, else those who did.</summary>
    public bool[] MayOut { get; }

    /// <summary>Positions of its moves in the old routine as it was given.</summary>
    public IReadOnlyList<int> Taken { get; }

    /// <summary>Moves left out because their attacker is no longer in it.</summary>
    public int Gone { get; }

    public IReadOnlyList<OldMove> Moves { get; }

    /// <summary>The marks to which it goes, none of them where the brief has a way between marks that no travel move goes, and those that the old brief did not have.</summary>
    public IReadOnlyList<int> Marks { get; private init; } = [];

    /// <summary>Marks that the old brief did not have; where the hero begins is none of them.</summary>
    public IReadOnlyList<int> NewMarks { get; private init; } = [];

    /// <summary>A routine goes to every mark to which the old one goes, and to every new one.</summary>
    public bool KeepsMarks(Routine routine) => Marks.All(m => routine.Moves.Any(r => r.To == m));

    /// <summary>Half counts by which it is shorter than the brief allows; 0 when it is long enough.</summary>
    public int Lacks { get; private init; }

    /// <summary>Tells a routine in the terms of a brief. Stances that its moves name are left out: with other moves around them others serve.</summary>
    public static Original Of(Routine old, Brief brief, Book book)
    {
        old = StanceNotes.LeftOut(old);
        var parts = Parts(old.Brief, brief);
        var taken = Enumerable.Range(0, old.Moves.Count).Where(i => old.Moves[i].Attacker is not { } a || parts[a] >= 0).ToList();
        var moves = taken.Select(i => old.Moves[i]).Select(m => m.Attacker is { } a ? m with { Attacker = parts[a] } : m).Select(m => m with { To = m.To is { } to ? Mark(old.Brief, to, brief) : null }).ToList();
        var scene = new Scene(brief, book);
        var routine = new Routine
        {
            Brief = brief,
            LibraryVersion = book.Version,
            Placements = [.. brief.Attackers.Select((a, i) => Place(a, Array.IndexOf(parts, i) is >= 0 and var was ? old.Placements[was] : null, scene, i))],
            Moves = moves,
        };
        var steps = Replay.Of(scene, routine);
        int[] added = [.. Enumerable.Range(0, brief.Marks.Count).Skip(1).Where(m => !old.Brief.Marks.Any(o => o.IsCalled(brief.Marks[m].Name)))];
        return new Original(
            scene,
            new Scene(Searched(scene, steps), book),
            routine,
            taken,
            old.Moves.Count - moves.Count,
            [.. steps.Select((s, i) => new OldMove(s.Row, s.Index == 0 ? 0 : s.Gap, moves[i].Note))],
            [.. Enumerable.Range(0, scene.Cast).Select(a => brief.Ending is null || (steps.Count > 0 && steps[^1].After.Attackers[a].OutAt >= 0))])
        {
            Marks = [.. (brief.Travels && Refutations.First(scene) is null ? moves.Select(m => m.To).OfType<int>() : []).Union(added)],
            NewMarks = added,
            Lacks = brief.Length is { Counts: { } counts } length && steps.Count > 0 ? Math.Max(0, (HalfCounts.PerCount * (counts - length.Tolerance)) - steps[^1].After.Time) : 0,
        };
    }

    /// <summary>
    /// New number of every old attacker: by name; one whose name is no longer there passes the part on to whoever is new in the same place
    /// of the list, or is −1.
    /// </summary>
    public static int[] Parts(Brief old, Brief brief)
    {
        var names = brief.Attackers.Select(a => a.Name).ToList();
        var parts = old.Attackers.Select(a => names.IndexOf(a.Name)).ToArray();
        for (var i = 0; i < parts.Length; i++)
        {
            if (parts[i] < 0 && i < names.Count && !parts.Contains(i))
            {
                parts[i] = i;
            }
        }

        return parts;
    }

    /// <summary>New number of an old mark: by name; of one that is no longer there that of the next one that is, in the old order; null where there is none.</summary>
    private static int? Mark(Brief old, int mark, Brief brief)
    {
        var names = brief.Marks.Select(m => m.Name).ToList();
        return brief.Travels ? old.Marks.Skip(mark).Select(m => names.FindIndex(m.IsCalled)).Where(n => n >= 0).Select(n => (int?)n).FirstOrDefault() : null;
    }

    private static Placement Place(AttackerPart part, Placement? was, Scene scene, int index)
    {
        var bearing = part.Bearing ?? was?.Bearing ?? new Bearing(Bearing.Circle * index / scene.Cast);
        var distance = part.Distance?.Value ?? Math.Min(was?.Distance.Value ?? 300, Math.Max(100, scene.Floor[bearing.HalfHours]));
        return new Placement(bearing, new Centimetres(distance), part.Entrance ?? was?.Entrance ?? HalfCounts.Zero);
    }

    private static Brief Searched(Scene scene, IReadOnlyList<Step> steps)
    {
        var brief = scene.Brief;
        return brief with
        {
            Length = brief.Length ?? new Length(null, Math.Clamp(steps.Count, 1, 500), 2 + (steps.Count / 4)),
            Ending = brief.Ending ?? new Ending([], null),
        };
    }
}
