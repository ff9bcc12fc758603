using Generator.Domain.Sketches;
using Generator.Paperwork.SafetyPapers;

namespace Generator.Rehearsal.Offers;

/// <summary>Lays two fights side by side so that the most moves stand beside themselves, wherever they have gone.</summary>
public static class SideBySide
{
    /// <summary>Every move of both, in order.</summary>
    public static IReadOnlyList<Pair> Of(Sketch one, Sketch other)
    {
        var (gone, added) = MoveChanges.Of([.. one.Moves.Select(m => Key(one, m))], [.. other.Moves.Select(m => Key(other, m))]);
        var (isGone, isAdded) = (gone.ToHashSet(), added.ToHashSet());
        var pairs = new List<Pair>();
        for (var (i, j) = (0, 0); i < one.Moves.Count || j < other.Moves.Count;)
        {
            var (goes, comes) = (isGone.Contains(i + 1), isAdded.Contains(j + 1));
            pairs.Add((goes, comes) switch
            {
                (true, true) => new Pair(i++, j++, IsSame: false),
                (true, false) => new Pair(i++, -1, IsSame: false),
                (false, true) => new Pair(-1, j++, IsSame: false),
                _ => new Pair(i++, j++, IsSame: true),
            });
        }

        return pairs;
    }

    private static string Key(Sketch sketch, SketchMove move) =>
        $"{(move.Attacker is { } who ? sketch.Brief.Attackers[who].Name : string.Empty)}\n{(move.FollowsUp ? "-" : Said(move.Attack))}\n{(move.IsSuffered ? "-" : Said(move.Technique))}\n{Said(move.Reaction)}\n{move.Open}";

    private static string Said(SketchCell? cell) => cell is null ? string.Empty : string.Join(' ', cell.Ids);
}
