using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Judging;

namespace Generator.Solver.Completing;

/// <summary>Why something that was said could not stand: what the audit says of the routine with it put back.</summary>
public static class WhyGave
{
    /// <summary>Ways of putting it back that are looked at.</summary>
    private const int Most = 40;

    /// <summary>The gravest finding at or after the move when it is put back as it was said, in the way that offends least; null where the audit has nothing against it there.</summary>
    public static Finding? Of(Completed completed, Departure gave, Scene scene)
    {
        if (gave.Row < 0)
        {
            return null;
        }

        return PutBack(completed, gave, scene.Book).Take(Most)
            .Select(r => Audit.Of(scene, r).Grave)
            .OrderBy(f => f.Count)
            .FirstOrDefault()?.OrderByDescending(f => f.Move == gave.Row + 1).ThenByDescending(f => f.Severity).FirstOrDefault();
    }

    private static IEnumerable<Routine> PutBack(Completed completed, Departure gave, Book book)
    {
        var moves = completed.Routine.Moves;
        return gave.Part == SketchPart.Added
            ? [completed.Routine with { Moves = [.. moves.Where((_, i) => i != gave.Row)] }]
            : AsSaid(completed.Sketch.Moves[gave.Move], moves[gave.Row], gave.Part, Next(completed, gave.Row), book)
                .Select(said => completed.Routine with { Moves = [.. moves.Select((m, i) => i == gave.Row ? said : m)] });
    }

    /// <summary>The mark after the one on which the hero stands before a row; null where there is none.</summary>
    private static int? Next(Completed completed, int row) =>
        (completed.Routine.Moves.Take(row).LastOrDefault(m => m.To is not null)?.To ?? 0) + 1 is var next && next < completed.Sketch.Brief.Marks.Count ? next : null;

    /// <summary>The move with every value that its words allow, what they leave open as it is where that goes with it.</summary>
    private static IEnumerable<Move> AsSaid(SketchMove said, Move move, SketchPart part, int? next, Book book)
    {
        foreach (var attack in said.Attack?.Ids ?? (IReadOnlyList<string?>)[said.FollowsUp ? null : move.Attack])
        {
            foreach (var technique in said.Technique?.Ids ?? [move.Technique!])
            {
                var possible = book.Technique(technique).Reactions;
                var reactions = said.Reaction?.Ids.Where(possible.Contains) ?? possible.Where(r => string.Equals(r, move.Reaction, StringComparison.Ordinal));
                foreach (var reaction in reactions.DefaultIfEmpty(possible.Count == 0 ? null : possible[0]))
                {
                    yield return move with
                    {
                        Attacker = said.Attacker ?? move.Attacker,
                        Attack = attack,
                        Technique = technique,
                        Reaction = reaction,
                        Start = part == SketchPart.Count ? said.Count!.Value.First : move.Start,
                        From = part == SketchPart.Place ? said.From : move.From,
                        Stance = null,
                        To = book.Technique(technique).Travel is null ? null : said.To ?? move.To ?? next,
                    };
                }
            }
        }
    }
}
