using System.Globalization;
using AngleSharp.Html.Parser;
using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Painting;
using Generator.Paperwork.Cameras;
using Generator.Paperwork.Following;
using Generator.Paperwork.Tests.SafetyPapers;
using Generator.Rules.Bodies;
using Generator.Rules.Sight;

namespace Generator.Paperwork.Tests.Cameras;

/// <summary>The camera plan as pictures says what the sheet says, and its cones hold what sells.</summary>
public class CameraPageTests
{
    private static readonly Camera Side = new("Side", new Bearing(7), new Centimetres(600), new Centimetres(150));

    private static readonly PaperSource Source = Ferry.Source.With(new PaperOptions { Cards = Ferry.Cards });

    private static readonly CameraPlan Plan = new(Hit.Of(Ferry.Scene, Ferry.Steps), [.. Ferry.Routine.Brief.Cameras, Side], [new SetUp(new Bearing(1), new Centimetres(1500), new Centimetres(150))]);

    [Fact]
    public void Every_set_up_has_a_picture_of_every_hit_with_the_word_of_the_sheet()
    {
        Assert.True(Plan.Hits.Count > 2);
        var page = new HtmlParser().ParseDocument(CameraPage.Of(Source, Plan));
        var rows = page.QuerySelectorAll(".stills tbody tr").ToList();
        Assert.Equal(Plan.Hits.Count, rows.Count);
        foreach (var (row, hit) in rows.Zip(Plan.Hits))
        {
            Assert.StartsWith($"m{hit.Move} c{new HalfCounts(hit.Start).ToCountText()}", row.Children[0].TextContent, StringComparison.Ordinal);
            var cells = row.QuerySelectorAll("td").ToList();
            Assert.Equal(Plan.Places.Count, cells.Count);
            foreach (var (cell, place) in cells.Zip(Plan.Places))
            {
                var reads = Generator.Rules.Sight.Lens.Reads(Generator.Rules.Sight.Lens.Of(place, hit));
                Assert.Equal(reads, cell.TextContent.Contains('✓', StringComparison.Ordinal));
                Assert.Equal(reads ? "sells" : "open", cell.ClassName);
                Assert.NotNull(cell.QuerySelector("svg.still path"));
            }
        }

        Assert.Contains(rows, r => r.QuerySelector("td.sells") is not null);
        Assert.Contains(rows, r => r.QuerySelector("td.open") is not null);
    }

    [Fact]
    public void A_cone_holds_everybody_who_is_hit_for_its_camera()
    {
        var view = new CameraView(Source, Plan, null);
        Assert.NotEmpty(view.Cones);
        foreach (var cone in view.Cones.Where(c => c.Place < Plan.Given.Count))
        {
            var hits = Plan.Hits.Where(h => Generator.Rules.Sight.Lens.Reads(Generator.Rules.Sight.Lens.Of(Plan.Places[cone.Place], h))).ToList();
            Assert.All(hits, h => Assert.True(Holds(cone.Corners, view.Picture.Window.Of(Place.At(h.Bearing, h.Distance)))));
            Assert.InRange(cone.Degrees, 5, 120);
        }
    }

    /// <summary>In space, too, a blow meets when it meets, though the next move starts at that very moment.</summary>
    [Fact]
    public void The_contact_is_seen_though_the_next_move_starts_with_it()
    {
        var fight = Acted.Of(Source, Ferry.Cards);
        var checkedOnes = 0;
        foreach (var (step, next) in Source.Steps.Zip(Source.Steps.Skip(1)).Where(s => s.First.HasTarget && s.First.Technique is not null && HeroTrail.SoundsAt(s.First) == s.Second.Start))
        {
            var before = fight.Parts[0].Keys.Last(k => k.Time <= next.Start);
            var stands = Stage.Standing(Ferry.Cards.Of(next.StanceStart), default, Stage.Facing(Course.Of(Source).Hero.FacingAt(next.Start)));
            Assert.False(Stage.IsSame(before.Body, stands), $"at {next.Start} the hero only stands");
            checkedOnes++;
        }

        Assert.True(checkedOnes > 0);
    }

    /// <summary>
    /// A lens 4 m off and 2 m above the floor, looking at 1 m, looks down by 1 m in 4: who stands 3 m nearer has their feet 0.73 m lower in the picture than the one looked at, who
    /// stands 3 m farther off their head 0.73 m higher. Who stands 6 m aside is out of the picture and changes nothing.
    /// </summary>
    [Fact]
    public void Nobody_in_the_middle_of_a_still_is_cut_at_head_or_feet()
    {
        var stands = Stage.Standing(Ferry.Cards.Of(Stance.Square), default, 0);
        var (lens, at, way) = (new Vec(0, 2, -4), new Vec(0, 1, 0), Vec.Ahead * 3);
        Still Seen(params Vec[] others) => Still.Of([(stands, true), .. others.Select(o => (stands.Moved(o), false))], [], lens, at);
        var alone = Seen();
        Assert.True(Seen(way * -1).Bottom > 73);
        Assert.True(Seen(way).Top < -(73 + (97 * stands[Joint.Crown].Y)));
        Assert.Equal((alone.Top, alone.Bottom), (Seen(Vec.Left * 6).Top, Seen(Vec.Left * 6).Bottom));
        var shape = Seen(way).ViewBox.Split(' ').Select(n => int.Parse(n, CultureInfo.InvariantCulture)).ToList();
        Assert.InRange(shape[2] / (double)shape[3], 0.94, 0.97);
    }

    /// <summary>A club that is swung is in the still of the blow that it meets, and in none after it has been thrown away.</summary>
    [Fact]
    public void A_still_shows_what_is_held()
    {
        var armed = PropsSheetTests.Armed().With(PaperOptions.Default with { Cards = Ferry.Cards });
        var fight = armed.Acted!;
        var club = fight.Props[0];
        var (held, lies) = (club.Stays[0], club.Stays.First(s => s.Lies is not null));
        Assert.Contains(fight.PropsAt(held.From), p => p.Kind == club.Kind);
        var (from, to) = (fight.PropsAt(lies.From).Single(p => p.Kind == club.Kind), Stage.Of(armed.Steps[1].After.Props[0].Place));
        Assert.InRange(((from.Hand + from.Far) * 0.5).Level.To(to), 0, 0.001);
        var stands = Stage.Standing(Ferry.Cards.Of(Stance.Square), default, 0);
        string Seen(double time) => Still.Of([(stands, true)], fight.PropsAt(time), new Vec(0, 1.5, 5), new Vec(0, 1, 0)).Body;
        Assert.Contains(PropPicture.Lines, Seen(held.From), StringComparison.Ordinal);
        Assert.DoesNotContain(PropPicture.Lines, Still.Of([(stands, true)], [], new Vec(0, 1.5, 5), new Vec(0, 1, 0)).Body, StringComparison.Ordinal);
    }

    private static bool Holds(IReadOnlyList<Generator.Paperwork.Floor.Point> corners, Generator.Paperwork.Floor.Point point)
    {
        var signs = corners.Zip(corners.Skip(1).Append(corners[0])).Select(e => Math.Sign(((e.Second.X - e.First.X) * (point.Y - e.First.Y)) - ((e.Second.Y - e.First.Y) * (point.X - e.First.X)))).Distinct().ToList();
        return signs.Count == 1 || signs.Contains(0);
    }
}
