using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver;
using Generator.Solver.Questions;

namespace Generator.Cli.Tests;

/// <summary>Files and answers to test with.</summary>
internal static class Samples
{
    /// <summary>One swing, one parry: nothing wrong with it.</summary>
    public const string CleanCsv = "count,attacker,attack,technique,reaction\r\n1,Bruno,swing-right,parry-down-left,head-drops\r\n";

    /// <summary>The parry is on the wrong side for the swing.</summary>
    public const string BrokenCsv = "count,attacker,attack,technique,reaction\r\n1,Bruno,swing-right,parry-down-right,head-drops\r\n";

    public const string Brief = """{ "title": "Two in the yard", "length": { "counts": 24 }, "attackers": [ { "name": "Bruno" }, { "name": "Wanda" } ] }""";

    /// <summary>Three things wrong, two of them on one line.</summary>
    public const string BadBrief = """
        {
          "length": { "counts": "many" },
          "attackers": [ { "name": "Bruno", "height": 17.6, "skil": "stunt" } ]
        }
        """;

    /// <summary>A routine of one move for any brief, with the audit's own verdict.</summary>
    public static DraftResult Found(Brief brief, Book book, Standing standing = Standing.BestFound)
    {
        var routine = new Routine
        {
            Brief = brief,
            LibraryVersion = book.Version,
            Placements = [.. brief.Attackers.Select((_, i) => new Placement(new Bearing(i * 6), RoutineReader.DefaultDistance, HalfCounts.Zero))],
            Moves = [new Move { Start = HalfCounts.Zero, Attacker = 0, Attack = "swing-right", Technique = "parry-down-left", Reaction = "head-drops" }],
        };
        return new DraftResult
        {
            Status = DraftStatus.Found,
            Routine = routine,
            Verdict = Audit.Of(new Scene(brief, book), routine),
            Standing = standing,
            Elapsed = TimeSpan.FromSeconds(1.5),
            Reproducible = true,
        };
    }
}
