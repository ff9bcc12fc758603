using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Testing;

namespace Generator.Library.Tests.Files;

public class BriefRoundTripTests
{
    [Property(Arbitrary = [typeof(Briefs)], MaxTest = 500)]
    public Property A_written_brief_reads_back_the_same(Brief brief)
    {
        var read = BriefReader.Parse(new SourceFile("x.brief.json", BriefWriter.Text(brief)), TinyBook.Book);
        return (read.IsGood && string.Equals(DeepText.Of(brief), DeepText.Of(read.Value), StringComparison.Ordinal))
            .Label(read.IsGood ? DeepText.Of(brief) + "\n---\n" + DeepText.Of(read.Value) : read.ToText())
            .Collect($"{brief.Attackers.Count} attackers");
    }

    [Property(Arbitrary = [typeof(Briefs)])]
    public bool Writing_what_was_read_gives_the_same_text(Brief brief)
    {
        var text = BriefWriter.Text(brief);
        return string.Equals(text, BriefWriter.Text(BriefReader.Parse(new SourceFile("x", text), TinyBook.Book).Value!), StringComparison.Ordinal);
    }

    [Fact]
    public void The_random_briefs_cover_what_a_brief_can_say()
    {
        var briefs = Enumerable.Range(0, 500).Select(s => RandomBrief.Of(s, TinyBook.Book)).ToList();
        Assert.Equal([1, 2, 3, 4, 5, 6, 7, 8], briefs.Select(b => b.Attackers.Count).Distinct().Order());
        Assert.All(
            new Func<Brief, bool>[]
            {
                b => b.Length!.Counts is null,
                b => b.Length!.Moves is null,
                b => b.Hero.Lead is null,
                b => b.Moments.Any(m => m.Moves.Count > 1),
                b => b.Moments.Any(m => m.Earliest is null && m.Latest is not null),
                b => b.Ending is { Last: not null },
                b => b.Ending is { Out: [] },
                b => b.Attackers.Any(a => a.Bearing is not null && a.Distance is not null),
                b => b.Attackers.Any(a => a.Entrance is { Value: var v } && v % 2 == 1),
                b => b.Floor.Obstacles.Count > 0,
                b => b.Floor.Mats.Count > 0,
                b => b.Floor.WaysIn.Count > 0,
                b => b.Cameras.Count > 0,
                b => b.Music is null,
                b => b.Music is { Passages.Count: > 0 },
                b => b.Music is { Holds.Count: > 1 },
                b => b.Music is { Accents.Count: > 1 },
                b => b.Acts is { Count: > 0 },
                b => b.Acts is { Count: 0 },
                b => b.Judged is null,
                b => b.Hero.Manner is not null,
                b => b.Attackers.Any(a => a.Manner is not null),
                b => b.Avoid.Count > 0,
                b => b.Signature is not null,
                b => b.Favour.Count > 0,
                b => b.Judged is { Count: > 0 },
                b => b.Hero.Wardrobe.Count > 0 && b.Hero.Limits.Count > 0,
            },
            shape => Assert.InRange(briefs.Count(shape), 10, 490));
    }
}
