using Generator.Library.Files.Notes;
using Generator.Library.Reading;
using Generator.Library.Tests.Bundled;

namespace Generator.Library.Tests.Words;

/// <summary>Attack and technique of one line settle between them what is meant: what goes with nothing that is written beside it is not all that is meant.</summary>
public class MeetingTests
{
    [Theory]
    [InlineData("forearm choke from behind > takes the arm and throws over the shoulder", "rear-over-throw-right")]
    [InlineData("bear hug from behind over the arms > stamps on the foot", "heel-stomp-right")]
    public void A_technique_is_meant_that_works_in_the_hold(string line, string technique) => Assert.Contains(technique, Read(line).Technique!.Ids);

    /// <summary>Who writes a name means it, and what is wrong with it is told.</summary>
    [Theory]
    [InlineData("left hook > low parry")]
    [InlineData("jab > hip throw")]
    public void A_name_means_what_it_names_whatever_it_meets(string line) =>
        Assert.Equal(Read("Ash: > " + line.Split(" > ")[1], whole: true).Technique!.Ids, Read(line).Technique!.Ids);

    private static Domain.Sketches.SketchMove Read(string line, bool whole = false)
    {
        var read = NotesReader.Parse(new SourceFile("a.notes.txt", whole ? line : "Ash: " + line), BundledLibrary.Book);
        Assert.True(read.IsGood, read.ToText());
        return read.Value.Sketch.Moves[0];
    }
}
