using System.IO.Compression;
using System.Net;
using System.Text;
using Generator.Paperwork.Cameras;
using Generator.Rules.Sight;
using Generator.Rules;

namespace Generator.Paperwork.Tests;

/// <summary>Every paper that is read says for whom it is, and that it clears nothing.</summary>
public class CautionTests
{
    /// <summary>Sound has no words.</summary>
    private static readonly string[] Heard = [".mid", ".wav"];

    [Fact]
    public void Every_paper_bears_the_cautions()
    {
        foreach (var routine in new[] { Ferry.Routine, Ferry.Routine with { Moves = [] } })
        {
            var source = PaperSource.Of(new Scene(routine.Brief, Ferry.Scene.Book), routine);
            source = source.With(source.Options with { From = new DateOnly(2027, 3, 15) });
            var papers = Pack.Of(source).Where(p => !Heard.Contains(Path.GetExtension(p.FileName), StringComparer.Ordinal)).ToList();
            Assert.InRange(papers.Count, 10, 100);
            Assert.All(papers, p => Assert.True(Bears(TextOf(p, source)) || IsWithoutDays(TextOf(p, source)), p.FileName));
        }
    }

    /// <summary>Every part and every phrase that shows figures says beside them that they do not teach.</summary>
    [Fact]
    public void Figures_are_said_to_be_blocking_wherever_they_stand()
    {
        const string said = "Blocking picture, not how it is taught.";
        var source = Ferry.Source.With(PaperOptions.Default with { Cards = Ferry.Cards });
        var pages = Pack.Of(source).Where(p => p.FileName.StartsWith("part-", StringComparison.Ordinal) || string.Equals(p.FileName, "routine.html", StringComparison.Ordinal)).Select(p => TextOf(p, source)).ToList();
        Assert.True(pages.Count > 3, $"{pages.Count}");
        Assert.All(pages, p => Assert.Contains(said, p, StringComparison.Ordinal));
        var phrases = pages.SelectMany(p => p.Split("<section class=\"phrase\"").Skip(1)).ToList();
        Assert.True(phrases.Count > 2, $"{phrases.Count}");
        Assert.All(phrases, p => Assert.Contains(said, p.Split("</section>")[0], StringComparison.Ordinal));
    }

    /// <summary>The camera plan is made by the command; it lies beside the others.</summary>
    [Fact]
    public void The_camera_plan_bears_them() => Assert.True(Bears(CameraSheet.Of(Ferry.Scene, new CameraPlan([], [], []))));

    /// <summary>A calendar of no rehearsal has no entry that could say anything.</summary>
    private static bool IsWithoutDays(string text) => text.StartsWith("BEGIN:VCALENDAR", StringComparison.Ordinal) && !text.Contains("BEGIN:VEVENT", StringComparison.Ordinal);

    private static bool Bears(string text)
    {
        var plain = string.Join(' ', WebUtility.HtmlDecode(text).Split([' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries));
        return plain.Contains("qualified fight coordinator", StringComparison.Ordinal)
            && (plain.Contains("A draft is a proposal, not clearance", StringComparison.Ordinal) || plain.Contains("It clears nothing", StringComparison.Ordinal));
    }

    /// <summary>The words of a paper; of a workbook those of all its parts, of a calendar with its folded lines joined.</summary>
    private static string TextOf(IPaper paper, PaperSource source)
    {
        using var stream = new MemoryStream();
        paper.Write(source, stream);
        if (!paper.FileName.EndsWith(".xlsx", StringComparison.Ordinal))
        {
            return Encoding.UTF8.GetString(stream.ToArray()).Replace("\r\n ", string.Empty, StringComparison.Ordinal).Replace("\\,", ",", StringComparison.Ordinal);
        }

        stream.Position = 0;
        using var zip = new ZipArchive(stream);
        return string.Join(' ', zip.Entries.Select(e => new StreamReader(e.Open()).ReadToEnd()));
    }
}
