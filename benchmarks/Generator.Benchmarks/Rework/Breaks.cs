using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Judging;

namespace Generator.Benchmarks.Rework;

/// <summary>Spoils a routine on purpose.</summary>
internal static class Breaks
{
    /// <summary>The routine with two moves replaced, far from each other, each of which makes it unsafe or broken by itself.</summary>
    public static Routine Two(Routine routine, Book book, int seed)
    {
        var dice = new Random(seed);
        var half = routine.Moves.Count / 2;
        return Plant(Plant(routine, book, dice, 1, half - 2), book, dice, half + 2, routine.Moves.Count - 1);
    }

    private static Routine Plant(Routine routine, Book book, Random dice, int from, int to)
    {
        var scene = new Scene(routine.Brief, book);
        var before = Forbidden(scene, routine);
        while (true)
        {
            var at = dice.Next(from, to);
            var technique = book.Techniques[dice.Next(book.Techniques.Count)];
            var moves = routine.Moves.ToArray();
            moves[at] = moves[at] with { Technique = technique.Id, Reaction = technique.Reactions.Count > 0 ? technique.Reactions[dice.Next(technique.Reactions.Count)] : null };
            var spoilt = routine with { Moves = moves };
            if (Forbidden(scene, spoilt) > before)
            {
                return spoilt;
            }
        }
    }

    private static int Forbidden(Scene scene, Routine routine) => Audit.Of(scene, routine).Findings.Count(f => f.Severity >= Severity.Broken);
}
