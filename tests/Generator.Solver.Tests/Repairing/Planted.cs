using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Repairing;
using Generator.Solver.Reworking;
using Generator.Testing;

namespace Generator.Solver.Tests.Repairing;

/// <summary>Routines spoilt on purpose.</summary>
internal static class Planted
{
    /// <summary>The routine with so many moves replaced by others that break it, from a seed.</summary>
    public static Routine In(Routine routine, Book book, int breaks, int seed)
    {
        var chance = new Chance(seed);
        var scene = new Scene(routine.Brief, book);
        var moves = routine.Moves.ToArray();
        for (var done = 0; done < breaks;)
        {
            var at = chance.Whole(0, moves.Length - 1);
            var technique = chance.One(book.Techniques);
            var tried = moves.ToArray();
            tried[at] = tried[at] with { Technique = technique.Id, Reaction = technique.Reactions.Count > 0 ? chance.One(technique.Reactions) : null };
            if (moves[at] == routine.Moves[at] && !Audit.Of(scene, routine with { Moves = tried }).IsClean)
            {
                moves = tried;
                done++;
            }
        }

        return routine with { Moves = moves };
    }

    /// <summary>The repair as soon as it changes no more moves than that; what is smaller still is not looked for.</summary>
    public static RepairResult Repaired(Routine broken, Book book, int moves, params IReadOnlyList<(int First, int Last)> keep)
    {
        using var stop = new CancellationTokenSource();
        return Repair.Of(broken, book, new RepairOptions { Time = Constructing.Drafts.Hang, Keep = keep }, StopWhenFew, stop.Token);

        void StopWhenFew(Reworked better)
        {
            if (better.Change.Changed <= moves)
            {
                stop.Cancel();
            }
        }
    }
}
