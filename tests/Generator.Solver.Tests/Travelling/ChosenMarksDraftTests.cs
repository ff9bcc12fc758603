using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Questions;
using Generator.Solver.Tests.Constructing;

namespace Generator.Solver.Tests.Travelling;

/// <summary>Drafts over marks that the program chose.</summary>
public sealed class ChosenMarksDraftTests
{
    private const string Cast = """ "length": { "counts": 36, "tolerance": 4 }, "attackers": [ { "name": "Bruno" }, { "name": "Wanda" } ] """;

    private const string Bar = """
        "floor": { "width": 10, "depth": 8, "waysIn": [ { "name": "door", "x": 0, "y": 2 }, { "name": "window", "x": 10, "y": 2 } ],
        "obstacles": [ { "name": "bar", "kind": "counter", "x": 4.6, "y": 0, "width": 0.8, "depth": 3 } ] }
        """;

    [Theory]
    [InlineData($$"""{ {{Cast}}, "marks": 2 }""", 1)]
    [InlineData($$"""{ {{Cast}}, "marks": 3 }""", 2)]
    [InlineData($$"""{ {{Cast}}, {{Bar}}, "marks": { "from": "door", "to": "window", "count": 4 } }""", 1)]
    public void They_pass_the_audit_and_come_to_every_mark_in_order(string text, int seed)
    {
        var brief = BriefReader.Parse(new SourceFile("x.brief.json", text), Drafts.Book, choice: MarkChoice.Usual with { Seed = seed }).Value!;
        var result = Drafts.Rounds(brief, seed, 3);
        Assert.Equal(DraftStatus.Found, result.Status);
        var scene = new Scene(result.Routine!.Brief, Drafts.Book);
        Assert.True(Audit.Of(scene, result.Routine).IsClean);
        Assert.Equal(Enumerable.Range(1, brief.Marks.Count - 1), Replay.Of(scene, result.Routine).Where(s => s.Travels >= 0).Select(s => s.Travels));
    }
}
