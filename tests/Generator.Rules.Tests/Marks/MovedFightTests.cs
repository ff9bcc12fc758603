using FsCheck.Xunit;
using Generator.Domain;
using Generator.Rules.Bodies;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Rules.Tests.Fights;
using Generator.Testing;

namespace Generator.Rules.Tests.Marks;

/// <summary>What moves with everything that stands on it is the same fight, and marks to which nobody goes change nothing.</summary>
public sealed class MovedFightTests
{
    private static readonly string[] Solid = [.. TheBook.Book.Techniques.Where(t => t.Travel is null).Select(t => t.Id)];

    private static readonly string[] Travels = [.. TheBook.Book.Techniques.Where(t => t.Travel is not null).Select(t => t.Id)];

    /// <summary>Three marks, two things, a camera, a way in and any rows, in the middle of 60 by 60 m.</summary>
    private static Routine Any(int seed, int stepX, int stepY, bool goes)
    {
        var (chance, book) = (new Chance(seed), TheBook.Book);
        var (x, y) = (3000 + stepX, 3000 + stepY);
        var brief = new Brief
        {
            Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt },
            Attackers = [.. Enumerable.Range(0, chance.Whole(1, 4)).Select(i => new AttackerPart { Name = "A" + (char)('a' + i), Skill = Skill.Stunt })],
            Cameras = [new Camera("cam", new Bearing(chance.Whole(0, 23)), new(chance.Whole(300, 900)), new(150))],
            Marks = [new HeroMark("one", new(x), new(y)), .. Enumerable.Range(0, 2).Select(i => new HeroMark("m" + i, new(x + chance.Whole(-400, 400)), new(y + chance.Whole(-400, 400))))],
            Floor = new FloorPlan
            {
                Width = new(6000),
                Depth = new(6000),
                MarkX = new(x),
                MarkY = new(y),
                Obstacles = [.. Enumerable.Range(0, 2).Select(i => new Obstacle("thing" + i, new(x + chance.Whole(-500, 400)), new(y + chance.Whole(-500, 400)), new(60), new(80)))],
                WaysIn = [new WayIn("door", new(x + chance.Whole(-500, 500)), new(y + 600))],
            },
        };
        var start = 0;
        return new Routine
        {
            Brief = brief,
            Placements = [.. brief.Attackers.Select(_ => new Placement(new Bearing(chance.Whole(0, 23)), new(chance.Whole(100, 600)), new HalfCounts(chance.Percent(70) ? 0 : chance.Whole(1, 30))))],
            Moves = chance.List(1, 12, _ =>
            {
                var technique = book.Technique(chance.One(chance.Percent(goes ? 30 : 0) ? Travels : Solid));
                start += chance.Whole(0, 12);
                return new Move
                {
                    Start = new HalfCounts(start),
                    Attacker = technique.HasNoTarget ? null : chance.Whole(0, brief.Attackers.Count - 1),
                    Attack = !technique.HasNoTarget && chance.Percent(50) ? chance.One(book.Attacks).Id : null,
                    Technique = technique.Id,
                    Reaction = technique.Reactions.Count == 0 ? null : chance.One(technique.Reactions),
                    To = technique.Travel is null ? null : chance.Whole(0, 2),
                };
            }),
        };
    }

    private static IEnumerable<string> Said(Routine routine) =>
        Audit.Of(new Scene(routine.Brief, TheBook.Book), routine).Findings.Select(f => $"{f.Rule} {f.Move} {f.Message} {f.Measured} {f.Points}");

    private static List<(int, int, Place, int)> Ends(Routine routine)
    {
        var end = Replay.Of(new Scene(routine.Brief, TheBook.Book), routine)[^1].After;
        return [.. end.Attackers.Select(a => (a.Bearing, a.Distance, a.Place.Rounded(), end.Mark))];
    }

    [Property(MaxTest = 150)]
    public void A_fight_that_is_moved_as_a_whole_is_the_same_fight(int seed, short byX, short byY)
    {
        var (here, there) = (Any(seed, 0, 0, true), Any(seed, byX % 1000, byY % 1000, true));
        Assert.Equal(Ends(here), Ends(there));
        Assert.Equal(Said(here), Said(there));
    }

    [Property(MaxTest = 100)]
    public void Marks_to_which_nobody_goes_change_nothing(int seed)
    {
        var several = Any(seed, 0, 0, false);
        var one = several with { Brief = several.Brief with { Marks = [] } };
        Assert.Equal(Ends(one), Ends(several));
        Assert.Equal(Said(one), Said(several));
    }

    /// <summary>
    /// The leg on which somebody sets off begins where the one before has left them, whatever the mark of the moment, as far as no move begins before the one before has ended and nobody
    /// is sent for while still under way; whoever has run off comes from nowhere.
    /// </summary>
    [Fact]
    public void Nobody_is_in_two_places_at_once()
    {
        var looked = 0;
        for (var seed = 0; seed < 1500; seed++)
        {
            var routine = Any(seed, 0, 0, true);
            var steps = Replay.Of(new Scene(routine.Brief, TheBook.Book), routine);
            if (steps.TakeWhile((s, i) => (i == 0 || s.Start >= steps[i - 1].End) && HasArrived(s)).LastOrDefault() is not { } sound)
            {
                continue;
            }

            foreach (var leg in sound.After.Attackers.Where(a => !a.Gone).SelectMany(a => a.Way.Chain()).Where(l => l.Kind == LegKind.Comes && l.Before is { Lies: false }))
            {
                looked++;
                Assert.True(leg.Before!.End.To(leg.Start) < 0.01, $"seed {seed}: {leg.Before.Kind} of move {leg.Before.Move} ends {leg.Before.End.To(leg.Start)} cm from {leg.Kind} of move {leg.Move}");
            }
        }

        Assert.True(looked > 1000, $"{looked} legs");
    }

    /// <summary>Whoever throws the attack of this move was no longer under way when they set off for it.</summary>
    private static bool HasArrived(Step step) =>
        step.Attack is null || !step.HasTarget || step.LegsOf(step.Row.Attacker).LastOrDefault(l => l.Kind == LegKind.Comes) is not { } comes || step.Before.Attackers[step.Row.Attacker].Way.Arrives <= comes.From;
}
