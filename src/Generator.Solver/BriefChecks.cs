using Generator.Domain;
using Generator.Rules;

namespace Generator.Solver;

/// <summary>
/// What arithmetic alone can say against a brief: whatever it names cannot be satisfied by any routine. It finds only some impossible briefs.
/// </summary>
internal static class BriefChecks
{
    /// <summary>Statements of the brief that cannot hold together, in words; empty when nothing was found.</summary>
    public static IReadOnlyList<string> Clash(Scene scene) =>
        [.. Lengths(scene).Concat(Endings(scene)).Concat(Moments(scene)).Concat(Places(scene))];

    private static IEnumerable<string> Lengths(Scene scene)
    {
        var brief = scene.Brief;
        if (brief.Length is not { } length)
        {
            yield break;
        }

        var (setbacks, pauses) = (brief.Setbacks ?? 0, brief.Pauses ?? 0);
        var outs = brief.Ending?.Out.Count ?? 0;
        var finishes = scene.Book.Techniques.Any(t => t.TakesTwo && t.Family == Family.Finish) ? (outs + 1) / 2 : outs;
        var fewest = finishes + setbacks + pauses;
        var asked = $"{outs} attackers out, {setbacks} setbacks and {pauses} pauses";
        var most = length.Moves + (length.Counts is null ? length.Tolerance : 1);
        if (most < fewest)
        {
            yield return $"A length of {length.Moves} moves has no room for {asked}.";
        }

        var shortest = (finishes * Shortest(scene, t => t.Family == Family.Finish)) + (setbacks * Shortest(scene, t => t.Family == Family.Setback))
            + (pauses * Shortest(scene, t => t.Family == Family.Pause && !t.Recovery));
        if (length.Counts + length.Tolerance is { } counts && 2 * counts < shortest)
        {
            yield return $"A length of {length.Counts} counts has no room for {asked}.";
        }

        // A move begins no sooner than the one before it ends.
        if (length is { Counts: { } all, Moves: { } moves } && (moves - 1) * Shortest(scene, _ => true) > 2 * (all + length.Tolerance))
        {
            yield return $"A length of {all} counts has no room for {moves} moves, none of which lasts less than {Counts(Shortest(scene, _ => true))}.";
        }
    }

    /// <summary>Half counts of what puts somebody out who has just come in: the finish, and a move before it where no finish meets somebody ready or an attack.</summary>
    private static int ShortestToOut(Scene scene)
    {
        var atOnce = scene.Book.Techniques.Any(t => t.Family == Family.Finish && (t.Needs.Contains(Posture.Ready) || t.Answers != default));
        return Shortest(scene, t => t.Family == Family.Finish) + (atOnce ? 0 : Shortest(scene, _ => true));
    }

    private static string Counts(int halfCounts) => halfCounts == HalfCounts.PerCount ? "a count" : new HalfCounts(halfCounts).ToSpanText() + " counts";

    private static int Shortest(Scene scene, Func<Technique, bool> of) => scene.Book.Techniques.Where(of).Select(t => t.Length.Value).DefaultIfEmpty(0).Min();

    private static IEnumerable<string> Endings(Scene scene)
    {
        if (scene.Brief.Ending is not { } ending)
        {
            yield break;
        }

        if (ending.Last is { } last && !ending.Out.Contains(last))
        {
            yield return $"{last} is to go out last, but is not among those who go out.";
        }

        for (var a = 0; a < scene.Cast; a++)
        {
            if (ending.Out.Contains(scene.Brief.Attackers[a].Name) && !FinishReach.CanGoOut(scene, a))
            {
                yield return $"{scene.Brief.Attackers[a].Name} must be out at the end, but no finish suits both performers and this floor, or none can follow what else they allow.";
            }
            else if (ending.Out.Contains(scene.Brief.Attackers[a].Name) && scene.Brief.Attackers[a].Entrance is { } entrance && scene.Brief.Length is { Counts: { } counts } length
                && entrance.Value - scene.Settle.ContactAfter.Value + ShortestToOut(scene) > 2 * (counts + length.Tolerance))
            {
                yield return $"{scene.Brief.Attackers[a].Name} must be out at the end, but comes in at count {entrance.ToCountText()}, when the routine is as good as over.";
            }
        }
    }

    private static IEnumerable<string> Moments(Scene scene)
    {
        var end = scene.Brief.Length is { Counts: { } counts } length ? 2 * (counts + length.Tolerance) : int.MaxValue;
        foreach (var moment in scene.Brief.Moments)
        {
            var name = string.Join(", ", moment.Moves.Select(m => m.Technique));
            if (moment.Earliest is { } earliest && moment.Latest is { } latest && latest < earliest)
            {
                yield return $"The hero moment {name} may begin no later than count {latest.ToCountText()}, and no sooner than {earliest.ToCountText()}.";
            }
            else if (moment.Earliest is { } start && start.Value >= end)
            {
                yield return $"The hero moment {name} begins at count {start.ToCountText()} at the earliest, after the end of the routine.";
            }

            if (Count(scene, moment, t => t.Family == Family.Setback) > scene.Brief.Setbacks)
            {
                yield return $"The hero moment {name} has more setbacks than the brief asks for, which is {scene.Brief.Setbacks}.";
            }

            if (Count(scene, moment, t => t.IsStoryPause) > scene.Brief.Pauses)
            {
                yield return $"The hero moment {name} has more pauses than the brief asks for, which is {scene.Brief.Pauses}.";
            }

            foreach (var move in moment.Moves)
            {
                if (WhyNot(scene, move) is { } reason)
                {
                    yield return $"The hero moment {name} cannot be: {reason}.";
                }
            }
        }
    }

    /// <summary>Moves of a moment of which every version is of a kind.</summary>
    private static int Count(Scene scene, Moment moment, Func<Technique, bool> of) =>
        moment.Moves.Count(m => scene.Book.Techniques.Where(t => t.GoesBy(m.Technique)).ToList() is { Count: > 0 } versions && versions.TrueForAll(t => of(t)));

    /// <summary>Why no version of the move can be done by anybody whom it may concern; null when one can.</summary>
    private static string? WhyNot(Scene scene, MomentMove move)
    {
        string? reason = $"there is no technique {move.Technique}";
        for (var t = 0; t < scene.Book.Techniques.Count; t++)
        {
            var technique = scene.Book.Techniques[t];
            if (!technique.GoesBy(move.Technique))
            {
                continue;
            }

            reason = scene.Able.WhyNotTechnique(t) ?? WhyNobody(scene, t, move);
            if (reason is null)
            {
                return null;
            }
        }

        return reason;
    }

    /// <summary>Why no attacker whom the move may concern can be its partner.</summary>
    private static string? WhyNobody(Scene scene, int technique, MomentMove move)
    {
        if (scene.Book.Techniques[technique].HasNoTarget)
        {
            return move.Attacker is null ? null : $"{scene.Book.Techniques[technique].Name} has no partner";
        }

        string? reason = $"{move.Attacker} is not in the cast";
        for (var a = 0; a < scene.Cast; a++)
        {
            if (move.Attacker is not null && scene.Brief.Attackers[a].Name != move.Attacker)
            {
                continue;
            }

            reason = scene.Able.WhyNotOn(technique, a) ?? WhyNoReaction(scene, technique, a, move.Reaction);
            if (reason is null)
            {
                return null;
            }
        }

        return reason;
    }

    private static string? WhyNoReaction(Scene scene, int technique, int attacker, string? wanted)
    {
        var (name, suiting) = (scene.Book.Techniques[technique].Name, scene.Book.Techniques[technique].Reactions);
        if (wanted is not null && !suiting.Contains(wanted))
        {
            return $"the reaction {wanted} does not suit {name}";
        }

        string? reason = null;
        foreach (var id in suiting)
        {
            if (wanted is not null && id != wanted)
            {
                continue;
            }

            reason = scene.Able.WhyNotReaction(scene.Book.ReactionIndex(id), attacker);
            if (reason is null)
            {
                return null;
            }
        }

        return reason;
    }

    private static IEnumerable<string> Places(Scene scene)
    {
        var cast = scene.Brief.Attackers;
        if (FloorRoom.For(scene) is var room && scene.Cast > room)
        {
            yield return $"{scene.Cast} attackers do not fit on a floor of {scene.Brief.Floor.Width} by {scene.Brief.Floor.Depth}: a metre and more from the mark and {scene.Settle.Spacing} from one another there is room for {(room == 0 ? "nobody" : $"at most {room}")}.";
        }

        for (var a = 0; a < scene.Cast; a++)
        {
            if (cast[a] is not { Bearing: { } bearing, Distance: { } distance })
            {
                continue;
            }

            if (distance.Value > scene.Floor[bearing.HalfHours])
            {
                yield return $"{cast[a].Name} opens {distance} out at {bearing.ToClockText()} o'clock, where the floor is clear for {new Centimetres(scene.Floor[bearing.HalfHours])}{(scene.Floor.InTheWay(bearing.HalfHours) is { } thing ? $": {thing} is in the way" : "")}.";
            }

            for (var b = a + 1; b < scene.Cast; b++)
            {
                if (cast[b] is { Bearing: { } other, Distance: { } far } && FloorGeometry.Apart(bearing.Apart(other), distance.Value, far.Value) < scene.Settle.Spacing.Value)
                {
                    yield return $"{cast[a].Name} and {cast[b].Name} open less than {scene.Settle.Spacing} apart.";
                }
            }
        }
    }
}
