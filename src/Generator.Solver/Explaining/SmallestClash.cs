using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Solver.Proving;
using Generator.Solver.Refuting;

namespace Generator.Solver.Explaining;

/// <summary>Statements of a brief that cannot hold together as far as one argument goes, none of which can be left out: what a draft and an explanation both begin with.</summary>
/// <param name="Set">The statements, as bits; none where nothing speaks against the brief.</param>
/// <param name="Reasons">Why, in words.</param>
internal sealed record SmallestClash(ulong Set, IReadOnlyList<string> Reasons)
{
    private static readonly SmallestClash None = new(0, []);

    public bool IsProven => Reasons.Count > 0;

    /// <summary>By the first of the arguments of <see cref="Refutations"/> that speaks against the brief.</summary>
    public static SmallestClash ByArithmetic(Brief brief, Book book, IReadOnlyList<Statement> statements)
    {
        if (Refutations.First(Worked(brief, book).Scene)?.By is not { } argument)
        {
            return None;
        }

        IEnumerable<string> Against(ulong set) => argument.Against(Worked(Statements.Keep(brief, statements, set), book));
        var set = Shrunk(statements.Count, s => Against(s).Any(), CancellationToken.None);

        // The figures are those of the brief's own tempo, where slower counts would clash as well.
        return new SmallestClash(set, argument.Against(Worked(Statements.Keep(brief, statements, set) with { Tempo = brief.Tempo }, book)).ToList() is { Count: > 0 } reasons ? reasons : [.. Against(set)]);
    }

    /// <summary>By a look at the moves round the hero moments (<see cref="Prover.RoundMoments"/>).</summary>
    public static SmallestClash RoundMoments(Brief brief, Book book, IReadOnlyList<Statement> statements, CancellationToken stop)
    {
        bool Proven(ulong set) => new Prover().RoundMoments(new Scene(DraftBrief.Complete(Statements.Keep(brief, statements, set), book), book), stop) == Fit.Impossible;
        return Proven(Clashes.AllOf(statements.Count)) ? new SmallestClash(Shrunk(statements.Count, Proven, stop), ["No order of comings, falls and returns fits them all."]) : None;
    }

    private static Workings Worked(Brief brief, Book book) => new(new Scene(DraftBrief.Complete(brief, book), book));

    private static ulong Shrunk(int count, Func<ulong, bool> proven, CancellationToken stop)
    {
        var everything = Clashes.AllOf(count);
        var known = new Dictionary<ulong, bool> { [everything] = true };
        bool Proven(ulong set) => known.TryGetValue(set, out var was) ? was : known[set] = proven(set);
        return new Clashes(count, set => Proven(set) ? Answer.Impossible : Answer.Unknown, Proven, null, stop).Shrink(everything, Enumerable.Range(0, count));
    }
}
