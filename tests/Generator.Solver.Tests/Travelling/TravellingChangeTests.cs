using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Alternatives;
using Generator.Solver.Repairing;
using Generator.Solver.Revising;
using Generator.Solver.Reworking;
using Generator.Solver.Tests.Constructing;
using Generator.Solver.Tests.Repairing;

namespace Generator.Solver.Tests.Travelling;

/// <summary>Routines over several marks that are mended, revised and done otherwise.</summary>
public class TravellingChangeTests
{
    [Fact]
    public void One_break_is_mended_with_one_change_and_the_hero_goes_where_they_went()
    {
        foreach (var (routine, i) in Fights.All.Select((r, i) => (r, i)))
        {
            var broken = Planted.In(routine, Drafts.Book, 1, i + 1);
            var repaired = Planted.Repaired(broken, Drafts.Book, 1).Repaired!;
            Assert.True(Audit.Of(new Scene(broken.Brief, Drafts.Book), repaired.Routine).IsClean);
            Assert.InRange(repaired.Change.Changed, 0, 1);
            Assert.Equal(Fights.Marks(routine), Fights.Marks(repaired.Routine));
        }
    }

    /// <summary>The hero is not able to do it, so that no later count mends it; the rest of the fight bears the limit.</summary>
    [Fact]
    public void A_travel_move_that_cannot_be_is_mended_by_another_to_the_same_mark()
    {
        var drafted = Fights.All[0];
        var limited = Limit.All.Select(l => drafted with { Brief = drafted.Brief with { Hero = drafted.Brief.Hero with { Limits = [l] } } }).Where(r => Audited(r).IsClean);
        var broken = limited.SelectMany(r => Drafts.Book.Techniques.Where(t => t is { Travel: not null, HasNoTarget: true }).Select(t => With(r, t))).First(r => Audited(r).Grave.Any(f => f.Rule == "able"));
        var repaired = Planted.Repaired(broken, Drafts.Book, 1).Repaired!;
        Assert.Equal(1, repaired.Change.Changed);
        Assert.Equal([1], Fights.Marks(repaired.Routine));

        static Verdict Audited(Routine routine) => Audit.Of(new Scene(routine.Brief, Drafts.Book), routine);

        static Routine With(Routine routine, Technique travel) =>
            routine with { Moves = [.. routine.Moves.Select(m => m.To is null ? m : m with { Attacker = null, Attack = null, From = null, Cue = Cue.None, Reaction = null, Technique = travel.Id })] };
    }

    [Fact]
    public void An_injury_leaves_most_of_the_fight_as_it_was()
    {
        foreach (var routine in Fights.All.Take(2))
        {
            var falls = routine.Moves.Where(m => m.Reaction is not null).Select(m => (m.Attacker, Drafts.Book.Reaction(m.Reaction!).Fall)).First(f => f.Fall != FallClass.None);
            var brief = routine.Brief with { Attackers = [.. routine.Brief.Attackers.Select((a, i) => i == falls.Attacker ? a with { Limits = [Limit.On(falls.Fall)] } : a)] };
            var revised = Revised(routine, brief, routine.Moves.Count / 2);
            Assert.InRange(revised.Change.Changed, 1, routine.Moves.Count / 2);
            Assert.Equal(Fights.Marks(routine), Fights.Marks(revised.Routine));
        }
    }

    [Fact]
    public void A_mark_that_has_moved_is_gone_to_where_it_is()
    {
        var routine = Fights.All[0];
        var brief = routine.Brief with { Marks = [routine.Brief.Marks[0], routine.Brief.Marks[1] with { Y = new(450) }] };
        var revised = Revised(routine, brief, routine.Moves.Count / 2);
        Assert.InRange(revised.Change.Changed, 0, routine.Moves.Count / 2);
        Assert.Equal([1], Fights.Marks(revised.Routine));
    }

    /// <summary>Marks in their order, whether one is put in between or behind the last: the old routine goes to neither.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_mark_that_is_new_is_gone_to(bool isBetween)
    {
        var routine = Fights.All[0];
        var (first, last, added) = (routine.Brief.Marks[0], routine.Brief.Marks[1], new HeroMark("table", new(430), new(550)));
        var brief = routine.Brief with { Marks = isBetween ? [first, added, last] : [first, last, added] };
        var revised = Revised(routine, brief, int.MaxValue);
        Assert.Equal([1, 2], Fights.Marks(revised.Routine));
    }

    [Fact]
    public void A_new_mark_to_which_no_travel_move_goes_is_told_and_not_left_out()
    {
        var routine = Fights.All[0];
        var brief = routine.Brief with { Floor = routine.Brief.Floor with { Width = new(1800) }, Marks = [.. routine.Brief.Marks, new HeroMark("gate", new(1700), new(400))] };
        var clash = Assert.Single(Revise.Of(routine, brief, Drafts.Book, new ReviseOptions { Time = Drafts.Hang }).Clash);
        Assert.StartsWith("From sink to gate it is 11.50 m", clash, StringComparison.Ordinal);
    }

    /// <summary>The move that led there leads to the mark after it.</summary>
    [Fact]
    public void A_mark_that_is_gone_is_gone_past()
    {
        var routine = Fights.All[1];
        var brief = routine.Brief with { Marks = [routine.Brief.Marks[0], routine.Brief.Marks[2]] };
        var old = Original.Of(routine, brief, Drafts.Book);
        Assert.Equal([1, 1], Fights.Marks(old.Routine));
        var none = Original.Of(routine, brief with { Marks = [] }, Drafts.Book);
        Assert.Empty(Fights.Marks(none.Routine));
    }

    [Fact]
    public void Moves_between_moves_that_stay_are_filled_otherwise()
    {
        var found = 0;
        foreach (var routine in Fights.All)
        {
            var travel = routine.Moves.ToList().FindIndex(m => m.To is not null);
            var first = travel + 2;
            LockedStretch[] locked = [new(0, first - 1, (0, 0)), new(first + 4, routine.Moves.Count - 1, (0, 0))];
            if (new Refill(routine, locked, Drafts.Book).Ways(1, CancellationToken.None).Take(6).OfType<Routine>().FirstOrDefault() is { } way)
            {
                found++;
                Assert.True(Audit.Of(new Scene(routine.Brief, Drafts.Book), way).IsClean);
                Assert.Equal(Fights.Marks(routine), Fights.Marks(way));
                Assert.Equal(routine.Moves.Take(first).Select(m => (m.Technique, m.To)), way.Moves.Take(first).Select(m => (m.Technique, m.To)));
            }
        }

        Assert.InRange(found, 2, 4);
    }

    /// <summary>In the middle of it the hero travels.</summary>
    [Fact]
    public void Moves_round_a_travel_move_stand_in_another_draft_as_a_hero_moment()
    {
        var routine = Fights.All[0];
        var at = routine.Moves.ToList().FindIndex(m => m.To is not null);
        var brief = routine.Brief with { Moments = [Kept.Run(routine, at - 1, at + 1, null, null)] };
        var drafted = Drafts.Rounds(brief, 2, 3).Routine!;
        var there = drafted.Moves.ToList().FindIndex(m => m.To is not null);
        Assert.True(Audit.Of(new Scene(drafted.Brief, Drafts.Book), drafted).IsClean);
        Assert.Equal(routine.Moves.Skip(at - 1).Take(3).Select(m => m.Technique), drafted.Moves.Skip(there - 1).Take(3).Select(m => m.Technique));
    }

    [Fact]
    public void Alternatives_go_to_every_mark()
    {
        var result = AlternativeSearch.Of(Fights.TwoMarks, Drafts.Book, new AlternativesOptions { Number = 2, Time = Drafts.Hang }, []);
        Assert.Equal(2, result.Found.Count);
        Assert.All(result.Found, f =>
        {
            Assert.True(Audit.Of(new Scene(f.Routine.Brief, Drafts.Book), f.Routine).IsClean);
            Assert.Equal([1], Fights.Marks(f.Routine));
        });
    }

    /// <summary>As soon as it changes no more moves than that.</summary>
    private static Reworked Revised(Routine routine, Brief brief, int moves)
    {
        using var stop = new CancellationTokenSource();
        var revised = Revise.Of(routine, brief, Drafts.Book, new ReviseOptions { Time = Drafts.Hang }, StopWhenFew, stop.Token).Revised!;
        Assert.True(Audit.Of(new Scene(brief, Drafts.Book), revised.Routine).IsClean);
        return revised;

        void StopWhenFew(Reworked better)
        {
            if (better.Change.Changed <= moves)
            {
                stop.Cancel();
            }
        }
    }
}
