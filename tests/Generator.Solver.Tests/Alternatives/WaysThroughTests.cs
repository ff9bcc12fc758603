using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Alternatives;
using Generator.Solver.Tests.Constructing;

namespace Generator.Solver.Tests.Alternatives;

/// <summary>Other ways for a stretch are told one by one, each clean, other than the routine and than those before.</summary>
public class WaysThroughTests
{
    private const int First = 8, Length = 5, Number = 3;

    private static readonly Lazy<Routine> Drafted = new(() =>
        Drafts.Rounds(new Brief { Length = new Length(null, 24, 1), Attackers = [.. new[] { "Bruno", "Wanda", "Piet" }.Select(n => new AttackerPart { Name = n, Skill = Skill.Stunt })] }, 1, 1).Routine
        ?? throw new InvalidOperationException("Nothing is drafted."));

    [Fact]
    public void Ways_are_told_as_they_are_found_and_are_the_answer_in_the_end()
    {
        var (routine, brief, options) = Asked();
        var told = new List<Alternative>();
        var result = WaysThrough.Of(routine, brief, Drafts.Book, options, told.Add);
        Assert.Equal(told, result.Found);
        Assert.InRange(told.Count, 2, Number);
        for (var i = 0; i < told.Count; i++)
        {
            Assert.True(told[i].Verdict.IsClean);
            Assert.True(Audit.Of(new Scene(brief, Drafts.Book), told[i].Routine).IsClean);
            Assert.NotEqual(Deeds(routine.Moves), Deeds(told[i].Routine.Moves));
            Assert.Equal(Deeds(routine.Moves.Take(First)), Deeds(told[i].Routine.Moves.Take(First)));
            Assert.Equal(Deeds(routine.Moves.Skip(First + Length)), Deeds(told[i].Routine.Moves.TakeLast(routine.Moves.Count - First - Length)));
            Assert.All(told.Take(i), before => Assert.InRange(Shape.Difference(before.Shape, told[i].Shape), options.SharePercent, 100));
        }
    }

    [Fact]
    public void The_search_can_be_stopped_at_the_first()
    {
        var (routine, brief, options) = Asked();
        using var stop = new CancellationTokenSource();
        Assert.Single(WaysThrough.Of(routine, brief, Drafts.Book, options, _ => stop.Cancel(), stop.Token).Found);
    }

    [Fact]
    public void Where_one_move_is_free_and_has_no_other_way_it_ends_by_itself()
    {
        var (routine, brief, options) = Asked();
        var locked = new LockedStretch(0, routine.Moves.Count - 1, (0, 0));
        var kept = KeptMoves.Of(new Scene(brief with { Moments = [] }, Drafts.Book), routine, [locked]);
        Assert.Empty(WaysThrough.Of(routine, brief with { Moments = kept.Moments }, Drafts.Book, options with { Locked = kept.Locked }, _ => { }).Found);
    }

    private static IEnumerable<(int?, string?, string?, string?)> Deeds(IEnumerable<Move> moves) => moves.Select(m => (m.Attacker, m.Attack, m.Technique, m.Reaction));

    private static (Routine Routine, Brief Brief, AlternativesOptions Options) Asked()
    {
        var routine = Drafted.Value;
        var brief = DraftBrief.Like(routine, routine.Brief, Drafts.Book);
        LockedStretch[] locked = [new(0, First - 1, (0, 4)), new(First + Length, routine.Moves.Count - 1, (0, 4))];
        var kept = KeptMoves.Of(new Scene(brief, Drafts.Book), routine, locked);
        return (routine, brief with { Moments = kept.Moments }, new AlternativesOptions { Number = Number, Locked = kept.Locked, Time = Drafts.Hang });
    }
}
