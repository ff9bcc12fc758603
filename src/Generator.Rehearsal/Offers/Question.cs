using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library.Files;
using Generator.Library.Files.Notes;
using Generator.Paperwork.Text;
using Generator.Rehearsal.Documents;
using Generator.Rules;

namespace Generator.Rehearsal.Offers;

/// <summary>What the solver is asked, on the fight as it is now.</summary>
/// <param name="Errand">What it is to do.</param>
/// <param name="Name">What taking an answer is called, to stand behind "Undo:".</param>
/// <param name="Of">The fight.</param>
/// <param name="Text">The fight as a file in JSON.</param>
public sealed record Question(Errand Errand, string Name, Document.State Of, string Text)
{
    /// <summary>Moves of a stretch as somebody chooses it.</summary>
    private const int Usual = 5;

    /// <summary>Moves that stay, from 1, where others are asked for.</summary>
    public IReadOnlyList<(int First, int Last)> Kept { get; init; } = [];

    /// <summary>The brief as it is from now on; null for that of the fight.</summary>
    public Brief? Brief { get; init; }

    /// <summary>What of the brief cannot be any more and is left out, each with the reason.</summary>
    public IReadOnlyList<string> Gone { get; init; } = [];

    /// <summary>To be told of each of several answers as soon as it is there, as JSON; the whole answer has them again.</summary>
    public Action<string> Told { get; init; } = _ => { };

    /// <summary>For how long it is worked on at most.</summary>
    public TimeSpan Time => TimeSpan.FromSeconds(Errand == Errand.OtherWays ? 10 : 20);

    /// <exception cref="RefusedEditException">There is an ally.</exception>
    public static Question Fill(Document.State state) => new(Errand.Fill, "fill what was open", Searched(state), SketchWriter.Text(state.Sketch));

    /// <summary>The smallest mend of all that is unsafe or broken; locked moves stay.</summary>
    /// <exception cref="RefusedEditException">Something is open.</exception>
    public static Question Mend(Document.State state) =>
        new(Errand.Mend, "mend", Searched(state), Whole(state, "Mending")) { Kept = Runs(Enumerable.Range(0, state.Sketch.Moves.Count).Where(i => state.Sketch.Moves[i].IsLocked && !state.Sketch.Moves[i].IsSuffered)) };

    /// <summary>Which findings vanish with which.</summary>
    /// <exception cref="RefusedEditException">Something is open.</exception>
    public static Question Causes(Document.State state) => new(Errand.Causes, "fold by cause", state, Whole(state, "Folding by cause"));

    /// <summary>Other ways for moves; what is locked among them stays as well.</summary>
    /// <param name="state">The fight.</param>
    /// <param name="first">From 0.</param>
    /// <param name="last">From 0.</param>
    /// <exception cref="RefusedEditException">Something is open, unsafe or broken, or nothing of it is free.</exception>
    public static Question OtherWays(Document.State state, int first, int last)
    {
        var moves = Searched(state).Sketch.Moves;
        if (first > last || last >= moves.Count)
        {
            throw new RefusedEditException("There are no such moves.", "Maybe choose some in the grid first.");
        }

        var text = Whole(state, "Looking for other ways");
        if (!state.Seen.Verdict.IsClean)
        {
            throw new RefusedEditException("Something of the fight is unsafe or broken, so there is nothing that other ways could lead back to.", "Maybe mend that first.");
        }

        var free = Enumerable.Range(first, last - first + 1).Where(i => !moves[i].IsLocked).ToHashSet();
        var kept = Runs(Enumerable.Range(0, moves.Count).Where(i => !free.Contains(i) && !moves[i].IsSuffered));
        var stretch = first == last ? FormattableString.Invariant($"move {first + 1}") : FormattableString.Invariant($"moves {first + 1} to {last + 1}");
        return free.Count > 0 ? new Question(Errand.OtherWays, $"another way for {stretch}", state, text) { Kept = kept }
            : throw new RefusedEditException("All of these moves are locked.", "Maybe take a padlock off.");
    }

    /// <summary>Other ways for moves in the middle of the fight: what a worker does in advance, so that the same of other moves comes soon; null where nothing can be asked of it.</summary>
    public static Question? Likely(Document.State state)
    {
        var (count, first) = (state.Sketch.Moves.Count, Math.Max(0, (state.Sketch.Moves.Count - Usual) / 2));
        try
        {
            return count == 0 ? null : OtherWays(state, first, Math.Min(count - 1, first + Usual - 1));
        }
        catch (RefusedEditException)
        {
            return null;
        }
    }

    /// <summary>What would change when somebody must be spared something.</summary>
    /// <param name="state">The fight.</param>
    /// <param name="performer">Number in the brief, from 0; −1 for the hero.</param>
    /// <param name="limit">One of <see cref="Limit.All"/>.</param>
    /// <exception cref="RefusedEditException">Something is open, or there is nobody or nothing of the kind.</exception>
    public static Question Hurt(Document.State state, int performer, string limit)
    {
        var brief = Searched(state).Sketch.Brief;
        if (performer < -1 || performer >= brief.Attackers.Count || !Limit.All.Contains(limit, StringComparer.Ordinal))
        {
            throw new RefusedEditException("There is nobody or nothing of that kind.", "Maybe load the page again.");
        }

        IReadOnlyList<string> Limited(Performer of) => [.. of.Limits.Where(l => !string.Equals(l, limit, StringComparison.Ordinal)), limit];
        var spared = performer < 0 ? brief with { Hero = brief.Hero with { Limits = Limited(brief.Hero) } }
            : brief with { Attackers = [.. brief.Attackers.Select((a, i) => i == performer ? a with { Limits = Limited(a) } : a)] };
        var who = performer < 0 ? brief.Hero.Name : brief.Attackers[performer].Name;
        var text = Whole(state, "Fitting it to somebody who is hurt");
        var (kept, gone) = Possible(new Scene(spared, state.Scene.Book));
        return new Question(Errand.Revise, $"{who}: {limit}", state, text) { Brief = spared with { Moments = kept }, Gone = gone };
    }

    /// <summary>Hero moments that can still be done, and of the others why not.</summary>
    private static (IReadOnlyList<Moment> Kept, IReadOnlyList<string> Gone) Possible(Scene scene)
    {
        var all = scene.Brief.Moments.Select(m => (Moment: m, Why: m.Moves.Select(o => MomentFit.WhyNot(scene, o)).FirstOrDefault(w => w is not null))).ToList();
        return ([.. all.Where(m => m.Why is null).Select(m => m.Moment)], [.. all.Where(m => m.Why is not null).Select(m => $"The hero moment {m.Moment.Moves[0].Technique.Replace('-', ' ')} goes. {char.ToUpperInvariant(m.Why![0])}{m.Why[1..]}.")]);
    }

    /// <summary>All searching moves one hero.</summary>
    private static Document.State Searched(Document.State state) => AllyWords.WhyNot(state.Sketch.Brief, "searches nothing") is var (wrong, _)
        ? throw new RefusedEditException(wrong, "Maybe go on by hand: everything that is written is audited, and single changes are offered for a finding.") : state;

    private static string Whole(Document.State state, string what) => state.Seen.Open is null && state.Sketch.Moves.Count > 0 ? RoutineWriter.Text(state.Seen.Routine)
        : throw new RefusedEditException($"{what} needs a fight in which nothing is open.", "Maybe fill what is open first.");

    /// <summary>Numbers from 0, in order, as runs from 1.</summary>
    private static IReadOnlyList<(int First, int Last)> Runs(IEnumerable<int> moves) => Consecutive.Runs(moves.Select(m => m + 1));
}
