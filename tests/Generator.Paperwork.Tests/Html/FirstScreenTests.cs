using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Generator.Domain;
using Generator.Figures.Painting;
using Generator.Paperwork.Html;
using Generator.Rules;
using Generator.Testing;

namespace Generator.Paperwork.Tests.Html;

/// <summary>What a routine's page opens on: key frames with figures, the whole fight in one picture, and the moves' own pictures.</summary>
public partial class FirstScreenTests
{
    private const int Largest = 900_000;

    [Fact]
    public void Every_move_has_its_picture_and_every_picture_is_drawn_once()
    {
        var shown = 0;
        foreach (var routine in Enumerable.Range(1, 8).Select(seed => RandomRoutine.Of(seed, Ferry.Book)).Append(Ferry.Routine))
        {
            var view = View(routine);
            var page = RoutinePaper.Of(view);
            var drawn = Drawn().Matches(page).Select(m => m.Groups[1].Value).ToList();
            var used = Used().Matches(page).Select(m => m.Groups[1].Value).ToList();
            Assert.Equal(drawn.Count, drawn.Distinct(StringComparer.Ordinal).Count());
            Assert.Equal(drawn.Order(StringComparer.Ordinal), used.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
            Assert.All(view.Moves.Zip(view.Source.Steps), m => Assert.Equal(m.Second.Technique is null && m.Second.Attack is null, m.First.Picture is null));
            Assert.All(view.Figures.Drawn, f => XElement.Parse("<g>" + f.Body + "</g>"));
            shown += used.Count;
        }

        Assert.True(shown > 100, $"{shown} pictures");
    }

    [Fact]
    public void Key_frames_are_few_in_order_and_say_that_they_teach_nothing()
    {
        var view = View(Ferry.Routine);
        Assert.Equal(KeyFrame.Most, view.KeyFrames.Count);
        Assert.Equal(view.KeyFrames.Select(f => f.Move.Number).Order().Distinct(), view.KeyFrames.Select(f => f.Move.Number));
        Assert.Contains(CardPicture.Caution, RoutinePaper.Of(view), StringComparison.Ordinal);
        Assert.Empty(View(Ferry.Routine with { Moves = [] }).KeyFrames);
    }

    [Fact]
    public void Lanes_show_every_fall_out_and_grave_finding_and_say_them()
    {
        var (falls, outs, grave) = (0, 0, 0);
        foreach (var routine in Enumerable.Range(1, 20).Select(seed => RandomRoutine.Of(seed, Ferry.Book)).Append(Ferry.Routine))
        {
            var view = View(routine);
            foreach (var glance in new[] { new GlanceView(view.Source, wide: true), new GlanceView(view.Source, wide: false) })
            {
                foreach (var (lane, wear) in glance.Lanes.Zip(view.Source.Shape.Wears))
                {
                    Assert.True(lane.Falls.Count <= wear.Falls && (lane.Falls.Count > 0) == (wear.Falls > 0), lane.Name);
                    Assert.Contains(Paperwork.Text.Words.Many(wear.Falls, "fall"), lane.Told, StringComparison.Ordinal);
                    Assert.Equal(lane.Grave.Count > 0, lane.Told.Contains("unsafe", StringComparison.Ordinal) || lane.Told.Contains("broken", StringComparison.Ordinal));
                    Assert.All(lane.Falls.Concat(lane.Taken).Concat(lane.Grave), x => Assert.InRange(x, glance.Left, glance.Right));
                    (falls, outs, grave) = (falls + lane.Falls.Count, outs + (lane.Out is null ? 0 : 1), grave + lane.Grave.Count);
                }

                Assert.Equal(view.Source.Verdict.Grave.Where(f => f.Move > 0).Select(f => f.Count.Value).Distinct().Count(), glance.GraveSigns().Count());
                Assert.Equal(view.Source.Shape.Outs.Select(o => o.Attacker).Distinct().Count(), glance.Lanes.Count(l => l.Out is not null));
            }
        }

        Assert.True(falls > 50 && outs > 10 && grave > 100, $"{falls} falls, {outs} outs, {grave} grave findings");
    }

    [Fact]
    public void Sixty_moves_against_eight_are_a_page_that_can_be_sent()
    {
        var routine = Ferry.Stored("eight.routine.json");
        var view = View(routine with { Moves = [.. routine.Moves.Take(60)] });
        Assert.Equal((60, 9), (view.Moves.Count, view.Course.Performers.Count));
        Assert.InRange(view.Figures.Drawn.Count(), 55, 80);
        Assert.InRange(Encoding.UTF8.GetByteCount(RoutinePaper.Of(view)), Largest / 3, Largest);
    }

    private static RoutineView View(Routine routine) =>
        new(PaperSource.Of(new Scene(routine.Brief, Ferry.Book), routine).With(PaperOptions.Default with { Cards = Ferry.Cards }));

    [GeneratedRegex("<g id=\"(f[0-9]+)\">")]
    private static partial Regex Drawn();

    [GeneratedRegex("<use href=\"#(f[0-9]+)\"/>")]
    private static partial Regex Used();
}
