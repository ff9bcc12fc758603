using System.Globalization;
using Generator.Rehearsal.Offers;

namespace Generator.Cli.Guarding;

/// <summary>Answers questions of the live page, each in a worker that was waiting for it.</summary>
internal sealed class Solving : IDisposable
{
    /// <summary>Other ways that are asked for.</summary>
    private const int Ways = 3;

    /// <summary>For how long a worker that should have ended is waited for.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    private readonly IReadOnlyList<string> library;
    private readonly Func<Question?> likely;
    private Waiting? spare;
    private volatile bool isOver;

    /// <param name="library">Files of the user's own records.</param>
    /// <param name="likely">What may be asked next; null where nobody knows.</param>
    public Solving(IReadOnlyList<string> library, Func<Question?> likely)
    {
        (this.library, this.likely) = (library, likely);
        spare = Next();
    }

    /// <param name="question">What is asked.</param>
    /// <param name="stop">Asks the worker to answer with the best so far.</param>
    public async Task<Answer> Of(Question question, CancellationToken stop)
    {
        using var brief = question.Brief is null ? null : new BriefAside(question.Brief, question.Of.Sketch.Moves.Count);
        using var worker = Interlocked.Exchange(ref spare, null) is { IsThere: true } there ? there : new Waiting(Exercise.Small);
        try
        {
            var lines = new List<string>();
            Action<string> told = question.Errand == Errand.OtherWays ? Each : _ => { };
            var answer = await worker.Do(Line(question, brief?.Path), question.Text, (question.Time, Patience), told, stop).ConfigureAwait(false);
            return lines.Count == 0 ? answer : new Answer($"{{\"alternatives\":[{string.Join(',', lines)}]}}", string.Empty);

            void Each(string line)
            {
                lines.Add(line);
                question.Told(line);
            }
        }
        finally
        {
            Interlocked.Exchange(ref spare, isOver ? null : Next())?.Dispose();
        }
    }

    public void Dispose()
    {
        isOver = true;
        Interlocked.Exchange(ref spare, null)?.Dispose();
    }

    private Waiting Next() => new(likely() is { } question ? new Exercise(Line(question, null), question.Text) : Exercise.Small);

    private string[] Line(Question question, string? brief) => [.. Words(question, brief), "--json", .. library.SelectMany(f => new[] { "--library", f })];

    private static string[] Words(Question question, string? brief)
    {
        string[] Kept(string slip) => [.. question.Kept.SelectMany(k => new[] { "--keep", FormattableString.Invariant($"{k.First}-{k.Last}{slip}") })];
        string[] time = ["--time", question.Time.TotalSeconds.ToString(CultureInfo.InvariantCulture)];
        return question.Errand switch
        {
            Errand.Fill => ["complete", "-", .. time],
            Errand.OtherWays => ["alternatives", "-", .. time, "--each", "--number", Ways.ToString(CultureInfo.InvariantCulture), .. Kept("@+2")],
            Errand.Mend => ["repair", "-", .. time, .. Kept(string.Empty)],
            Errand.Revise => ["revise", "-", .. time, "--brief", brief!],
            Errand.Causes => ["audit", "-"],
            _ => throw new ArgumentOutOfRangeException(nameof(question)),
        };
    }
}
