using Generator.Paperwork.HandOffs;
using Generator.Rules;
using Generator.Rules.Sight;
using Generator.Testing;

namespace Generator.Paperwork.Tests.HandOffs;

public class AnyRoutineTests
{
    /// <summary>Most of these fights do not work; that is for the papers to say, not to fail at.</summary>
    [Fact]
    public void Every_paper_can_be_made_of_any_routine_and_text_stays_on_the_page()
    {
        var moves = 0;
        for (var seed = 0; seed < 16; seed++)
        {
            var routine = RandomRoutine.Of(seed, Ferry.Book);
            var source = PaperSource.Of(new Scene(routine.Brief, Ferry.Book), routine);
            source = source.With(new PaperOptions { From = new DateOnly(2027, 3, 15), Frames = FrameRate.All[seed % 4], Cameras = new CameraPlan(Hit.Of(source.Scene, source.Steps), routine.Brief.Cameras, []) });
            moves += routine.Moves.Count;
            foreach (var paper in HandOffPapers.Of(source))
            {
                using var stream = new MemoryStream();
                paper.Write(source, stream);
                var text = System.Text.Encoding.UTF8.GetString(stream.ToArray());
                Assert.NotEqual(0, stream.Length);
                if (paper.FileName.EndsWith(".txt", StringComparison.Ordinal))
                {
                    Assert.All(text.Split(['\n', '\f']), l => Assert.True(Paperwork.Text.Page.LengthOf(l) <= Paperwork.Text.Page.Width, $"seed {seed}, {paper.FileName}: {l}"));
                }
            }
        }

        Assert.True(moves > 50, $"{moves}");
    }
}
