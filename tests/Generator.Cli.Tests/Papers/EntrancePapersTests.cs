using Generator.Domain;
using Generator.Paperwork;
using Generator.Paperwork.Following;
using Generator.Rules;
using Generator.Rules.Bodies;
using Generator.Solver;
using Generator.Solver.Questions;

namespace Generator.Cli.Tests.Papers;

/// <summary>Who is in from the start stands there through the count-in; who is not is nowhere on the floor, then comes from a way in or over the floor's edge, and stands at their place when they are in play.</summary>
public class EntrancePapersTests
{
    private const int Drafts = 8;

    /// <summary>Centimetres by which rounding may be off.</summary>
    private const double Close = 3;

    [Fact]
    public void Nobody_is_on_the_floor_before_they_come_in()
    {
        var (byDoor, overEdge, away, there) = (0, 0, 0, 0);
        for (var seed = 1; seed <= Drafts; seed++)
        {
            if (Drafting.Draft(Brief(seed), Made.Book, new DraftOptions { Seed = seed, Rounds = 2, Time = Desk.Untimed }).Routine is not { } routine)
            {
                continue;
            }

            var course = Course.Of(PaperSource.Of(new Scene(routine.Brief, Made.Book), routine));
            foreach (var performer in course.Performers.Where(p => !p.IsHero && routine.Placements[p.Attacker].Entrance == HalfCounts.Zero))
            {
                // From the first click of the count-in on.
                Assert.All(Enumerable.Range(course.From, -course.From), t => Assert.True((performer.FigureAt(t), performer.DoingAt(t)) is not (Figure.Away, _) and not (_, Doing.NotIn or Doing.Reset), $"seed {seed}, {performer.Name}, {t}"));
                there += -course.From;
            }

            foreach (var performer in course.Performers.Where(p => !p.IsHero && routine.Placements[p.Attacker].Entrance > HalfCounts.Zero))
            {
                var place = routine.Placements[performer.Attacker];
                var comes = Enumerable.Range(course.From, course.To - course.From).First(t => performer.FigureAt(t) != Figure.Away);
                Assert.All(Enumerable.Range(course.From, comes - course.From), t => Assert.Equal((Figure.Away, Doing.NotIn), (performer.FigureAt(t), performer.DoingAt(t))));
                Assert.InRange(comes, course.From, place.Entrance.Value);
                var (first, opens) = (performer.Ways[0].Place, Place.At(place.Bearing.HalfHours, place.Distance.Value));
                Assert.True(performer.PlaceAt(place.Entrance.Value).To(opens) <= Close, $"seed {seed}, {performer.Name} stands at {performer.PlaceAt(place.Entrance.Value)} and not at {opens}");
                var isDoor = routine.Brief.Floor.WaysIn.Any(w => new Place(w.X.Value - routine.Brief.Floor.MarkX.Value, w.Y.Value - routine.Brief.Floor.MarkY.Value).To(first) <= Close);
                Assert.True(isDoor || (routine.Brief.Floor.WaysIn.Count == 0 && IsEdge(routine.Brief.Floor, first)), $"seed {seed}, {performer.Name} comes from {first}");
                (byDoor, overEdge, away) = (byDoor + (isDoor ? 1 : 0), overEdge + (isDoor ? 0 : 1), away + comes - course.From);
            }
        }

        Assert.True(byDoor >= 3 && overEdge >= 3 && away > 20 && there >= 3, $"{byDoor} by a way in, {overEdge} over the edge, {away} half counts away, {there} there");
    }

    /// <summary>On the edge, or beyond it.</summary>
    private static bool IsEdge(FloorPlan floor, Place place)
    {
        var (x, y) = (place.X + floor.MarkX.Value, place.Y + floor.MarkY.Value);
        return x <= Close || y <= Close || x >= floor.Width.Value - Close || y >= floor.Depth.Value - Close;
    }

    private static Brief Brief(int seed) => new()
    {
        Length = new Length(26, null, 6),
        Floor = new FloorPlan { WaysIn = seed % 2 == 0 ? [] : [new WayIn("door", new Centimetres(0), new Centimetres(200)), new WayIn("stairs", new Centimetres(650), new Centimetres(800))] },
        Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt },
        Attackers = [.. new[] { "Bruno", "Wanda", "Piet" }.Select((n, i) => new AttackerPart { Name = n, Skill = Skill.Stunt, Entrance = i == 0 ? null : HalfCounts.FromCounts(4 + (3 * i)) })],
    };
}
