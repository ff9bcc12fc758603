using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Solver.Reworking;

namespace Generator.Cli.Changes;

/// <summary>Before and after of a changed routine, move by move; moves that stay are not shown.</summary>
internal static class ChangeLines
{
    private const int Indent = 4;

    /// <param name="reworked">The change.</param>
    /// <param name="taken">Positions in the routine as it was given of the moves that were taken over; null for all.</param>
    public static IEnumerable<string> Of(Reworked reworked, IReadOnlyList<int>? taken = null)
    {
        foreach (var line in Openings(reworked))
        {
            yield return line;
        }

        foreach (var change in reworked.Change.Moves)
        {
            foreach (var line in One(reworked, change, change.Old < 0 ? 0 : (taken?[change.Old] ?? change.Old) + 1))
            {
                yield return line;
            }
        }
    }

    /// <summary>"These 2 of 31 moves change; others shift by 3 counts in all."</summary>
    public static string Sum(Reworked reworked)
    {
        var change = reworked.Change;
        var moves = change.Moves.Count(m => m.Old >= 0);
        return change switch
        {
            { IsNothing: true } => "Nothing changes.",
            { Changed: 0 } => $"No move changes, only when, from where, how long or by which cue{Also(reworked, ": counts and recovery shift by ")}.",
            { Changed: 1 } => $"This 1 of {moves} moves changes{Also(reworked, "; counts and recovery of others shift by ")}.",
            _ => $"These {change.Changed} of {moves} moves change{Also(reworked, "; counts and recovery of others shift by ")}.",
        };
    }

    private static string Also(Reworked reworked, string words)
    {
        var shift = reworked.Change.Moves.Where(m => m.Kind == ChangeKind.Shifted).Sum(m =>
        {
            var (was, now) = (reworked.Old.Moves[m.Old], reworked.Routine.Moves[m.Now]);
            return Math.Abs(was.Start.Value - now.Start.Value) + Math.Abs(was.Linger.Value - now.Linger.Value);
        });
        return shift == 0 ? string.Empty : $"{words}{Words.Span(new HalfCounts(shift))} in all";
    }

    private static IEnumerable<string> Openings(Reworked reworked)
    {
        var brief = reworked.Scene.Brief;
        for (var a = 0; a < brief.Attackers.Count; a++)
        {
            var (was, now) = (reworked.Old.Placements[a], reworked.Routine.Placements[a]);
            if (was != now)
            {
                foreach (var line in Page.Hang("  opening, ", Page.Clean(brief.Attackers[a].Name)))
                {
                    yield return line;
                }

                yield return $"    was  {was.ToText()}";
                yield return $"    now  {now.ToText()}";
            }
        }
    }

    private static IEnumerable<string> One(Reworked reworked, MoveChange change, int number)
    {
        var scene = reworked.Scene;
        var was = change.Old < 0 ? null : reworked.Old.Moves[change.Old];
        var now = change.Now < 0 ? null : reworked.Routine.Moves[change.Now];
        var title = change.Kind switch
        {
            ChangeKind.Changed => "changes",
            ChangeKind.Added => "is new",
            ChangeKind.Dropped => "goes",
            _ => "shifts",
        };
        IEnumerable<string> lines = change.Kind switch
        {
            ChangeKind.Kept => [],
            ChangeKind.Shifted when was!.Start == now!.Start => Page.Hang($"  move {number}, ", $"count {was.Start.ToCountText()}, {MoveText.Who(scene, now)}: {string.Join(", ", Rest(was, now))}"),
            ChangeKind.Shifted => Page.Hang($"  move {number}, ", $"{MoveText.Who(scene, now!)}: count {was!.Start.ToCountText()} becomes count {now!.Start.ToCountText()}{string.Concat(Rest(was, now).Select(r => ", " + r))}"),
            _ => [change.Old < 0 ? $"  move {change.Now + 1} {title}" : $"  move {number} {title}", .. Half(scene, "was", was), .. Half(scene, "now", now)],
        };
        foreach (var line in lines)
        {
            yield return line;
        }
    }

    private static IEnumerable<string> Half(Scene scene, string word, Move? move) =>
        move is null ? [] : Page.Hang($"{new string(' ', Indent)}{word}  ", MoveText.WithCount(scene, move));

    private static IEnumerable<string> Rest(Move was, Move now)
    {
        if (was.Linger != now.Linger)
        {
            yield return $"linger {was.Linger.ToSpanText()} becomes {now.Linger.ToSpanText()}";
        }

        if (was.Hurts != now.Hurts)
        {
            yield return now.Hurts is { } hurts ? $"hurts {hurts.Text}" : "hurts nothing any more";
        }

        if (was.Cue != now.Cue)
        {
            yield return now.Cue == Cue.None ? "no cue any more" : $"gets a cue by {now.Cue switch { Cue.Voice => "voice", Cue.Sound => "sound", _ => "touch" }}";
        }

        if (was.From != now.From)
        {
            yield return now.From is { } from ? $"comes from {from.ToClockText()}" : "comes from where they were left";
        }
    }
}
