using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Cli.Tests.Files;

/// <summary>Every stance to which the hero changes between moves stands in the routine, so that an outside reader needs no rule for which of several is chosen.</summary>
internal static class StancesWritten
{
    private static readonly Book Book = Rig.Book;

    /// <summary>In the text of a routine that was written or printed, in which the hero changes at least once.</summary>
    public static void In(string text)
    {
        var read = RoutineReader.Parse(new SourceFile("r.routine.json", text), Book);
        Assert.Equal(string.Empty, read.ToText());
        In(read.Value!);
    }

    public static void In(Routine routine)
    {
        var steps = Replay.Of(new Scene(routine.Brief, Book), routine);
        var changes = steps.Where(s => s.StanceTime is > 0 and < StanceTable.Never).ToList();
        Assert.NotEmpty(changes);
        Assert.All(changes, s => Assert.Equal(s.StanceStart, routine.Moves[s.Index].Stance));
    }
}
