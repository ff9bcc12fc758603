using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Testing;

namespace Generator.Library.Tests.Bundled;

/// <summary>Every word of the library that comes with the program can be written in a file and read back.</summary>
public class BundledWordsInFilesTests
{
    [Property(MaxTest = 200)]
    public Property A_brief_with_its_words_reads_back_the_same() => Prop.ForAll(Arb.From(Briefs.Seeds()), seed =>
    {
        var brief = RandomBrief.Of(seed, BundledLibrary.Book);
        var read = BriefReader.Parse(new SourceFile("x.brief.json", BriefWriter.Text(brief)), BundledLibrary.Book);
        return Same(brief, read.Value, read.ToText());
    });

    [Property(MaxTest = 200)]
    public Property A_routine_with_its_words_reads_back_the_same() => Prop.ForAll(Arb.From(Briefs.Seeds()), seed =>
    {
        var routine = RandomRoutine.Of(seed, BundledLibrary.Book);
        var read = RoutineReader.Parse(new SourceFile("x.routine.json", RoutineWriter.Text(routine)), BundledLibrary.Book);
        return Same(routine, read.Value, read.ToText());
    });

    [Fact]
    public void Every_technique_with_each_of_its_reactions_is_one_row_by_id_and_by_name()
    {
        var book = BundledLibrary.Book;
        var rows = book.Techniques.SelectMany(t => t.Reactions.DefaultIfEmpty(string.Empty).Select(r => (Technique: t, Reaction: r))).ToList();
        Assert.True(rows.Count > 400);
        var brief = new Brief { Attackers = [new AttackerPart { Name = "Bruno", Skill = Skill.Stunt }], Marks = [new HeroMark("door", new(400), new(400)), new HeroMark("window", new(600), new(400))] };
        foreach (var write in (Func<Technique, string>[])[t => t.Id, t => t.Name])
        {
            var text = "count,attacker,technique,reaction,to\n" + string.Concat(rows.Select((r, i) =>
                $"{i + 1},{(r.Technique.HasNoTarget ? string.Empty : "Bruno")},{write(r.Technique)},{r.Reaction},{(r.Technique.Travel is null ? string.Empty : "window")}\n"));
            var read = RoutineReader.Parse(new SourceFile("x.csv", text), book, brief);
            Assert.Equal(string.Empty, read.ToText());
            Assert.Equal(rows.Select(r => (r.Technique.Id, r.Reaction)), read.Value!.Moves.Select(m => (m.Technique!, m.Reaction ?? string.Empty)));
        }
    }

    [Fact]
    public void The_ferry_scenario_uses_words_of_the_bundled_library()
    {
        var brief = BundledScenario.Brief(BundledLibrary.Book);
        Assert.Equal(new Length(48, null, 4), brief.Length);
        var moment = Assert.Single(brief.Moments);
        Assert.Equal([new MomentMove("hip-throw", "Bruno", null, null)], moment.Moves);
        Assert.Equal(("20", "34"), (moment.Earliest?.ToCountText(), moment.Latest?.ToCountText()));
    }

    /// <summary>The second scenario has one of everything that the first does without.</summary>
    [Fact]
    public void The_inn_scenario_uses_what_the_ferry_does_not()
    {
        Assert.Equal(["ferry", "inn"], BundledScenario.All.Select(s => s.Name));
        var brief = BundledScenario.All[1].BriefBy(BundledLibrary.Book);
        Assert.Equal(["hearth", "back door", "well"], brief.Marks.Select(m => m.Name));
        Assert.All(brief.Floor.Obstacles, o => Assert.NotNull(o.Kind));
        Assert.Equal(["short-stick", "stick", "sugar-bottle"], brief.Props.Select(p => p.Kind));
        Assert.Equal((2, 1, 3, 3), (brief.Attackers.ToList().FindIndex(a => a.Name == brief.Ending!.Last), brief.Cameras.Count, brief.Moments.Count, brief.Acts!.Count));
        Assert.NotEmpty(brief.Favour);
    }

    private static Property Same(object written, object? read, string problems) =>
        (read is not null && string.Equals(DeepText.Of(written), DeepText.Of(read), StringComparison.Ordinal))
            .Label(read is null ? problems : DeepText.Of(written) + "\n---\n" + DeepText.Of(read));
}
