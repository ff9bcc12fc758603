using System.Diagnostics;
using Generator.Cli.Work;
using Generator.Domain;
using Generator.Library;
using Generator.Paperwork.Json;
using Generator.Rules.Replaying;
using Generator.Solver.Alternatives;
using Newtonsoft.Json;

namespace Generator.Cli.Commands;

/// <summary><c>alternatives --each</c>: a line of JSON for each way, as soon as it is found.</summary>
internal static class AlternativesEach
{
    /// <param name="desk">Where the lines go.</param>
    /// <param name="brief">What is asked for; what is kept are its last hero moments.</param>
    /// <param name="book">The library.</param>
    /// <param name="options">How many, how different, what is locked.</param>
    /// <param name="inHand">The routine from which they differ; null for none.</param>
    /// <param name="isChosen">The brief does not name its marks.</param>
    /// <returns>The exit code.</returns>
    public static int Of(Desk desk, Brief brief, Book book, AlternativesOptions options, Routine? inHand, bool isChosen)
    {
        var clock = Stopwatch.StartNew();
        var keep = desk.Keeper(book);
        var number = 0;
        if (inHand is not null && options.Locked.Count > 0)
        {
            var through = WaysThrough.Of(inHand, brief, book, options, Tell, desk.Stop);
            if (through.Found.Count > 0 || desk.Stop.IsCancellationRequested)
            {
                return End();
            }
        }

        var rest = options.Time - clock.Elapsed;
        if (rest <= TimeSpan.Zero)
        {
            return End();
        }

        var result = AlternativeSearch.Of(brief, book, options with { Time = rest }, inHand is null ? [] : [inHand], (_, best) => keep(best.Routine, best.Verdict.Points), desk.Stop);
        if (result.Clash.Count > 0)
        {
            return Endings.Impossible(desk, result.Clash, onChosenMarks: isChosen);
        }

        foreach (var found in result.Found)
        {
            Tell(found);
        }

        return End();

        void Tell(Alternative found)
        {
            number++;
            keep(found.Routine, found.Verdict.Points);
            var written = StanceNotes.Written(new Rules.Scene(found.Routine.Brief, book), found.Routine);
            desk.Out.WriteLine(DraftJson.Object(written, found.Verdict, found.Verdict.Points == 0 ? "perfect" : "best found").ToString(Formatting.None));
            desk.Out.Flush();
        }

        int End() => number >= options.Number ? ExitCode.Good : number > 0 ? ExitCode.OutOfTime : Endings.OutOfTime(desk, "another way");
    }
}
