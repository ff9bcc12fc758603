using Generator.Domain;
using Generator.Library;

namespace Generator.Solver;

/// <summary>Turns a brief into an audited routine.</summary>
public static class Drafting
{
    /// <summary>Drafts a routine; whatever is returned as found has passed the audit without an unsafe or broken finding.</summary>
    /// <param name="brief">What is asked for.</param>
    /// <param name="book">The library.</param>
    /// <param name="options">Seed, time, and whether CP-SAT is to work alone.</param>
    /// <param name="progress">Told of every better routine.</param>
    /// <param name="stop">Stops the search; the best routine so far is returned.</param>
    public static DraftResult Draft(Brief brief, Book book, DraftOptions options, IProgress<DraftProgress>? progress = null, CancellationToken stop = default) =>
        new() { Status = DraftStatus.OutOfTime };
}
