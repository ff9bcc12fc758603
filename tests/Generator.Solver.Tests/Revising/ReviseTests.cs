using FsCheck;
using FsCheck.Fluent;
using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Revising;
using Generator.Solver.Reworking;
using Generator.Solver.Tests.Constructing;
using Generator.Testing;

namespace Generator.Solver.Tests.Revising;

public class ReviseTests
{
    private static readonly ReviseOptions Options = new() { Time = Drafts.Hang };

    [Fact]
    public void An_unchanged_brief_changes_nothing()
    {
        var drafted = 0;
        Prop.ForAll(Briefs.Seeds().ToArbitrary(), seed =>
        {
            if (Drafts.OfSmall(seed).Routine is not { } routine)
            {
                return true.Classify(true, "nothing drafted");
            }

            drafted++;

            var result = Revise.Of(routine, routine.Brief, Drafts.Book, Options);
            var nothing = result.Revised!.Change.IsNothing && result.Teaching!.Cost == 0 && result.Revised.Routine.Moves.SequenceEqual(routine.Moves) && result.Revised.Routine.Placements.SequenceEqual(routine.Placements);
            var whole = result.Teaching!.Unchanged.Count == 1 && result.Teaching.Unchanged[0].Last == routine.Moves.Count - 1;
            return (nothing && whole).Classify(true, "drafted");
        }).Check(Config.QuickThrowOnFailure.WithMaxTest(8));
        Assert.True(drafted >= 4, $"{drafted} of 8 drafted");
    }

    [Fact]
    public void An_injury_leaves_most_of_it_as_it_was()
    {
        var routine = Drafts.OfPlain(2);
        var falls = routine.Moves.Where(m => m.Attacker == 1 && m.Reaction is not null).Select(m => Drafts.Book.Reaction(m.Reaction!).Fall).First(f => f != FallClass.None);
        var brief = routine.Brief with { Attackers = [routine.Brief.Attackers[0], routine.Brief.Attackers[1] with { Limits = [Limit.On(falls)] }] };
        Assert.False(Audit.Of(new Scene(brief, Drafts.Book), routine with { Brief = brief }).IsClean);
        var result = Until(better => better.Change.Changed <= routine.Moves.Count / 2, (told, stop) => Revise.Of(routine, brief, Drafts.Book, Options, told, stop));
        Clean(result.Revised!, brief);
        Assert.InRange(result.Revised!.Change.Changed, 1, routine.Moves.Count / 2);
        Assert.Equal(3, result.Teaching!.People.Count);
        Assert.NotEmpty(result.Teaching.Unchanged);
    }

    [Fact]
    public void An_attacker_who_is_gone_takes_their_moves_along()
    {
        var three = Drafts.Plain() with { Attackers = [.. Drafts.Plain().Attackers, new AttackerPart { Name = "Piet" }], Length = new Length(30, null, 8) };
        var routine = Drafts.Draft(three, 1).Routine!;
        var brief = routine.Brief with { Attackers = [.. routine.Brief.Attackers.Take(2)], Ending = null };
        var result = Until(_ => true, (told, stop) => Revise.Of(routine, brief, Drafts.Book, Options, told, stop));
        Assert.Equal(routine.Moves.Count(m => m.Attacker == 2), result.Gone);
        Clean(result.Revised!, result.Revised!.Scene.Brief);
        Assert.Equal(["Bruno", "Wanda"], result.Revised.Scene.Brief.Ending!.Out);
    }

    [Fact]
    public void Whoever_is_new_in_the_same_place_takes_over_the_part()
    {
        var routine = Drafts.OfPlain(3);
        var brief = routine.Brief with { Attackers = [routine.Brief.Attackers[0], new AttackerPart { Name = "Piet", Height = new Centimetres(177) }], Ending = null };
        var result = Until(better => better.Change.Changed <= routine.Moves.Count / 2, (told, stop) => Revise.Of(routine, brief, Drafts.Book, Options, told, stop));
        Assert.Equal(0, result.Gone);
        Clean(result.Revised!, result.Revised!.Scene.Brief);
        Assert.True(result.Revised.Change.Changed <= routine.Moves.Count / 2);
    }

    [Fact]
    public void A_brief_that_cannot_be_is_told_as_such_and_a_stop_says_nothing()
    {
        var routine = Drafts.OfPlain(3);
        var moment = new Moment([new MomentMove("moon-kick", null, null, null)], null, null);
        Assert.NotEmpty(Revise.Of(routine, routine.Brief with { Moments = [moment] }, Drafts.Book, Options).Clash);
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        var shorter = routine.Brief with { Length = new Length(14, null, 1) };
        var result = Revise.Of(routine, shorter, Drafts.Book, Options, null, stop.Token);
        Assert.Null(result.Revised);
        Assert.Empty(result.Clash);
    }

    /// <summary>What a revision comes to when it is stopped at the first answer that will do: to try everything smaller takes minutes.</summary>
    private static ReviseResult Until(Predicate<Reworked> enough, Func<Action<Reworked>, CancellationToken, ReviseResult> search)
    {
        using var stop = new CancellationTokenSource();
        return search(Stop, stop.Token);

        void Stop(Reworked better)
        {
            if (enough(better))
            {
                stop.Cancel();
            }
        }
    }

    private static void Clean(Reworked revised, Brief brief) => Assert.True(Audit.Of(new Scene(brief, Drafts.Book), revised.Routine).IsClean);
}
