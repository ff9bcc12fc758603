using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;

namespace Generator.Solver.Constructing;

/// <summary>Writes a finished path of the search down as a routine and has it audited.</summary>
internal static class Draftsman
{
    /// <summary>The routine and what the audit says of it.</summary>
    /// <exception cref="DisagreementException">The audit finds something forbidden, or counts other points than the search: a fault of the program.</exception>
    public static (Routine Routine, Verdict Verdict) Write(Scene scene, Finish finish)
    {
        var routine = RoutineOf(scene, finish);
        var verdict = Audit.Of(scene, routine);
        if (!verdict.IsClean || verdict.Points != finish.Points)
        {
            var first = verdict.Grave is [var gravest, ..] ? gravest.Message : string.Empty;
            throw new DisagreementException($"Search and audit disagree: {finish.Points} points searched, {verdict.Points} audited. {first}");
        }

        return (routine, verdict);
    }

    /// <summary>The routine, not audited.</summary>
    public static Routine RoutineOf(Scene scene, Finish finish)
    {
        var path = finish.Node.Path();
        var rows = path.Where(n => !n.IsOpening).Select(n => n.Row).ToArray();
        var placements = finish.Node.Placements.ToArray();
        foreach (var later in path.SelectMany(n => n.LaterReturns).Concat(finish.LaterReturns))
        {
            if (later.Row == Node.AtEntrance)
            {
                placements[later.Attacker] = placements[later.Attacker] with { Entrance = new HalfCounts(later.Value) };
            }
            else
            {
                rows[later.Row] = rows[later.Row] with { Linger = rows[later.Row].Linger + later.Value };
            }
        }

        return new Routine
        {
            Brief = scene.Brief,
            LibraryVersion = scene.Book.Version,
            Placements = placements,
            Moves = [.. rows.Select(r => r.ToMove(scene))],
        };
    }
}
