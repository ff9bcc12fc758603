using Generator.Domain;
using Generator.Paperwork.Following;
using Generator.Rules;
using Generator.Rules.Bodies;
using Generator.Testing;

namespace Generator.Paperwork.Tests.Following;

public class CourseTests
{
    /// <summary>In the six at the end somebody is put down before they are in, by moves whose counts run backwards.</summary>
    [Fact]
    public void Whatever_the_routine_tracks_have_no_gap_time_runs_on_and_replays_places_are_kept()
    {
        var moves = 0;
        foreach (var seed in Enumerable.Range(0, 300).Concat([13920, 18012, 20350, 20717, 28629, 32721]))
        {
            var routine = RandomRoutine.Of(seed, TinyBook.Book);
            var source = PaperSource.Of(new Scene(routine.Brief, TinyBook.Book), routine);
            var course = Course.Of(source);
            moves += source.Steps.Count;
            foreach (var performer in course.Performers)
            {
                Assert.Equal(course.To - course.From, performer.Doings.Count);
                Assert.Equal(Enumerable.Range(course.From, course.To - course.From), performer.Spans(course.From, course.To).SelectMany(s => Enumerable.Range(s.From, s.To - s.From)));

                // Two places at one moment are an arrival and where the next move takes over; never three.
                Assert.All(performer.Ways.Zip(performer.Ways.Skip(1)), w => Assert.True(w.First.Time < w.Second.Time || (w.First.Time == w.Second.Time && w.First.Place != w.Second.Place)));
                Assert.All(performer.Ways.Zip(performer.Ways.Skip(2)), w => Assert.True(w.First.Time < w.Second.Time));
            }

            foreach (var attacker in course.Performers.Skip(1).Where(_ => source.Steps.Count > 0))
            {
                var end = source.Steps[^1].After.Attackers[attacker.Attacker];
                var place = Place.At(end.Bearing, end.Distance);
                Assert.True(attacker.PlaceAt(course.To + 1000).To(place) <= 0.5, $"{attacker.Name} of {seed} ends at {attacker.PlaceAt(course.To + 1000)}, replayed to {place}");
            }
        }

        Assert.True(moves > 1000, $"{moves} moves");
    }

    /// <summary>Two on their knees: drawn so until one is on the back, also while held there, and said on the sheet.</summary>
    [Theory]
    [InlineData("0 Bruno knee-punch-right kneeling-turn-aside-left caught-on-knees ; 2 Bruno - kneeling-short-punch-right jolts-in-hold ; 4 Bruno - kneeling-arm-lock-left locked-on-knees", 7, Figure.Kneeling)]
    [InlineData("0 Bruno knee-side-blow-right kneeling-duck-left rocks-on-knees ; 4 Bruno - kneeling-push-over-left tips-over", 7, Figure.Lying)]
    public void Who_opens_on_a_knee_is_drawn_on_it(string moves, int until, Figure then)
    {
        var routine = WrittenFight.Of(new Brief { Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt, Kneels = Side.Left }, Attackers = [] }, Ferry.Book, "Bruno@12/100", moves);
        var part = routine.Brief.Attackers[0] with { Kneels = Side.Right, Entrance = HalfCounts.Zero };
        routine = routine with { Brief = routine.Brief with { Attackers = [part] } };
        var scene = new Scene(routine.Brief, Ferry.Book);
        var course = Course.Of(PaperSource.Of(scene, routine));
        Assert.All(Enumerable.Range(course.From, 4 - course.From), t => Assert.Equal((Figure.Kneeling, Figure.Kneeling), (course.Performers[0].FigureAt(t), course.Performers[1].FigureAt(t))));
        Assert.Equal(then, course.Performers[1].FigureAt(until));
        Assert.Contains("with the right knee down", Generator.Paperwork.Text.WallSheet.Of(scene, routine, Generator.Rules.Judging.Audit.Of(scene, routine), Generator.Rules.Replaying.Replay.Of(scene, routine), string.Empty), StringComparison.Ordinal);
    }

    /// <summary>Of clean and faulty fights, with the whole library: whoever lies is drawn lying from when they are down until they get up, or to the end.</summary>
    [Fact]
    public void Who_lies_is_drawn_lying_where_they_lie()
    {
        var (lying, across, still, forGood) = (0, 0, 0, 0);
        foreach (var routine in Enumerable.Range(0, 80).Select(s => RandomRoutine.Of(s, Ferry.Book)).Append(Ferry.Routine).Where(r => r.Moves.Count > 0))
        {
            var source = PaperSource.Of(new Scene(routine.Brief, Ferry.Book), routine);
            var course = Course.Of(source);
            var ends = source.Steps.Select(s => s.Over).ToList();
            foreach (var performer in course.Performers.Skip(1))
            {
                var way = source.Steps[^1].After.Attackers[performer.Attacker].Way.Chain().ToList();
                var legs = way.Where(l => l.Lies).Reverse().ToList();
                for (var time = course.From; time < course.To; time++)
                {
                    var leg = legs.LastOrDefault(l => l.From <= time && l.To > time);
                    var (drawn, body) = (performer.FigureAt(time) == Figure.Lying, performer.BodyAt(time));
                    Assert.Equal(drawn, body is not null);

                    // Who is still going down is not yet drawn on the floor.
                    Assert.True(drawn ? leg is not null : leg is null || time < ends[leg.Move], $"{performer.Name} at {time}");
                    if (body is { } at)
                    {
                        Assert.InRange(at.Feet.To(leg!.Start) + at.Head.To(leg.End), 0, 0.3);
                        lying++;
                        if (leg.To >= time + 1 && !way.Any(l => !l.Lies && l.From < time + 1 && l.To > time))
                        {
                            Assert.InRange(performer.PlaceAt(time).To(performer.PlaceAt(time + 0.9)), 0, 0.1);
                            still++;
                        }

                        across += Math.Abs(Place.Mark.To(at.Feet) - Place.Mark.To(at.Head)) < 5 ? 1 : 0;
                    }
                }

                // A wrong routine may end while somebody is still on the way to where they fall.
                if (legs.Count > 0 && double.IsInfinity(legs[^1].To) && legs[^1].From < course.To - 1)
                {
                    Assert.Equal(Figure.Lying, performer.FigureAt(course.To));
                    forGood++;
                }
            }
        }

        Assert.True(lying > 180 && across > 20 && still > 90 && forGood > 4, $"{lying}, {across} of them across, {still} still, {forGood} for good");
    }

    [Fact]
    public void A_night_on_the_ferry_half_count_by_half_count()
    {
        var course = Course.Of(PaperSource.Of(Fights.SceneOf(Fights.Night), Fights.Night));
        var text = string.Concat(course.Performers.Select(p => $"{p.Sign} {p.Name}\n{string.Concat(p.Spans(course.From, course.To).Select(s => $"  {new HalfCounts(s.From).ToCountText()} {s.Doing} {s.Move}\n"))}"));
        Golden.Matches("ferry-course", text);
    }

    [Fact]
    public void An_attacker_is_at_striking_distance_when_the_attack_lands()
    {
        var source = PaperSource.Of(Fights.SceneOf(Fights.Night), Fights.Night);
        var course = Course.Of(source);
        foreach (var step in source.Steps.Where(s => s.Attack is not null))
        {
            var place = course.Performers[step.Row.Attacker + 1].PlaceAt(step.Contact);
            Assert.InRange(Place.Mark.To(place), step.Distance - 31, step.Distance + 31);
        }
    }
}
