using Generator.Domain;
using Generator.Solver;
using Generator.Solver.Questions;

namespace Generator.Cli.Tests.Commands;

/// <summary>Commands that are given a brief which says how many marks there are, or a way, and not which.</summary>
public class ChosenMarksCommandTests
{
    private const string Brief = """{ "length": { "counts": 48 }, "attackers": [ { "name": "Bruno" }, { "name": "Wanda" } ], "marks": 3 }""";

    [Fact]
    public void A_draft_tells_them_chooses_by_the_seed_and_writes_them_into_the_routine()
    {
        var seen = new List<IReadOnlyList<HeroMark>>();
        using var rig = new Rig
        {
            Draft = (brief, book, _, _, _) =>
            {
                seen.Add(brief.Marks);
                return Samples.Found(brief, book);
            },
        };
        var (file, routine) = (rig.File("fight.brief.json", Brief), Path.Combine(rig.Folder, "fight.routine.json"));
        var answer = rig.Run("draft", file, "--seed", "5", "--out", routine);
        Assert.Equal(ExitCode.Good, answer.Code);
        Assert.Contains("line 1, marks: 3 marks were chosen, in this order: ", answer.Err, StringComparison.Ordinal);
        Assert.All(seen[0], m => Assert.Contains($"\"{m.Name}\"", File.ReadAllText(routine), StringComparison.Ordinal));
        rig.Run("draft", file, "--seed", "5");
        rig.Run("draft", file, "--seed", "6");
        rig.Run("draft", routine, "--seed", "6");
        Assert.Equal(seen[0], seen[1]);
        Assert.NotEqual(seen[0], seen[2]);
        Assert.Equal(seen[0], seen[3]);

        // Beside the routine the same brief has the marks of the routine, whatever the seed.
        var audit = rig.Run("audit", routine, "--brief", file);
        Assert.Contains($"The marks of the routine are kept: {seen[0][0].Name} (", audit.Err, StringComparison.Ordinal);
        Assert.Equal(rig.Run("audit", routine).Out, audit.Out);
    }

    [Fact]
    public void Impossible_is_said_of_the_marks_that_were_chosen_and_of_no_others()
    {
        using var rig = new Rig { Draft = (_, _, _, _, _) => new DraftResult { Status = DraftStatus.Impossible, Clash = ["the mark centre at 4.00 m, 4.00 m"] } };
        var answer = rig.Run("draft", rig.File("fight.brief.json", Brief));
        Assert.Equal(ExitCode.Impossible, answer.Code);
        Assert.EndsWith("That is proven of the marks that were chosen, and not of all that might be.\n  Maybe another --seed, which chooses others, finds one.\n", answer.Err, StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_chosen_is_refused_like_any_other_fault()
    {
        using var rig = new Rig();
        var answer = rig.Run("draft", rig.File("fight.brief.json", Brief.Replace("\"marks\": 3", "\"marks\": 8, \"floor\": { \"width\": 2, \"depth\": 2 }", StringComparison.Ordinal)));
        Assert.Equal((ExitCode.Input, string.Empty), (answer.Code, answer.Out));
        Assert.Contains("No room was found for 8 marks on this floor", answer.Err, StringComparison.Ordinal);
    }
}
