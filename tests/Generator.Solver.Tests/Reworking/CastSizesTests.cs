using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Alternatives;
using Generator.Solver.Repairing;
using Generator.Solver.Revising;
using Generator.Solver.Reworking;
using Generator.Solver.Tests.Constructing;
using Generator.Solver.Tests.Repairing;
using Generator.Testing;

namespace Generator.Solver.Tests.Reworking;

/// <summary>Alternatives, repairs and revisions with two to eight attackers.</summary>
public class CastSizesTests
{
    private static readonly string[] Names = ["Bruno", "Wanda", "Piet", "Lotte", "Odile", "Sven", "Ines", "Karel"];

    private static readonly TimeSpan Time = Drafts.Hang;

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(8)]
    public void A_clean_routine_and_an_unchanged_brief_change_nothing_and_whatever_changes_passes_the_audit(int cast)
    {
        var routine = Drafted(cast, cast);
        Assert.True(Repair.Of(routine, Drafts.Book, new RepairOptions()).Repaired!.Change.IsNothing);
        var same = Revise.Of(routine, routine.Brief, Drafts.Book, new ReviseOptions { Time = Time });
        Assert.True(same.Revised!.Change.IsNothing);
        Assert.Equal((0, cast + 1), (same.Teaching!.Cost, same.Teaching.People.Count));

        Clean(Planted.Repaired(Planted.In(routine, Drafts.Book, 1, cast), Drafts.Book, int.MaxValue).Repaired?.Routine);

        var shorter = routine.Brief with { Length = new Length(null, routine.Moves.Count - 1, 0) };
        using var stop = new CancellationTokenSource();
        var revised = Revise.Of(routine, shorter, Drafts.Book, new ReviseOptions { Time = Time }, _ => stop.Cancel(), stop.Token).Revised;
        Clean(revised?.Routine);
        Assert.Equal(routine.Moves.Count - 1, revised!.Routine.Moves.Count);

        // So many more take a minute of processor time to be found twice.
        if (cast > 5)
        {
            return;
        }

        var moment = Kept.Run(routine, 1, 2, null, null);
        var ways = AlternativeSearch.Of(routine.Brief with { Moments = [moment] }, Drafts.Book, new AlternativesOptions { Number = 2, Slack = 200, Time = Time }, [routine]);
        Assert.True(ways.Found.Count == 2, $"{ways.Found.Count} of {ways.Seen} routines");
        Assert.All(ways.Found, f => Clean(f.Routine));
        Assert.All(ways.Found, f => Assert.True(Stands(routine, 1, 2, f.Routine)));
        Assert.True(Shape.Difference(ways.Found[0].Shape, ways.Found[1].Shape) >= 30);
    }

    /// <summary>Whatever runs are kept come back with attack, technique, reaction and attacker as they were.</summary>
    [Property(MaxTest = 6)]
    public Property Kept_runs_come_back_as_they_were() => Prop.ForAll(Briefs.Seeds().ToArbitrary(), seed =>
    {
        var chance = new Chance(seed);
        var routine = Drafted(chance.Whole(2, 3), seed);
        var first = chance.Whole(0, routine.Moves.Count - 2);
        var last = Math.Min(routine.Moves.Count - 2, first + chance.Whole(0, 2));
        var found = AlternativeSearch.Of(
            routine.Brief with { Moments = [Kept.Run(routine, first, last, null, null)] }, Drafts.Book, new AlternativesOptions { Number = 2, Slack = 500, SharePercent = 20, Seed = seed, Time = Time }, [routine]).Found;
        var follows = Enumerable.Range(first, last - first + 1).Any(i => routine.Moves[i] is { Attack: null, Attacker: not null });
        return (found.Count == 2 && found.All(f => Audit.Of(new Scene(f.Routine.Brief, Drafts.Book), f.Routine).IsClean && Stands(routine, first, last, f.Routine)))
            .Classify(follows, "with a move without an attack").Classify(last > first, "a run");
    });

    private static Routine Drafted(int cast, int seed)
    {
        var brief = new Brief
        {
            Length = new Length(null, 4 + (3 * cast), 2),
            Floor = new FloorPlan { Width = new Centimetres(1200), Depth = new Centimetres(1200), MarkX = new Centimetres(600), MarkY = new Centimetres(600), Surface = Surface.Matted },
            Hero = new HeroPart { Name = "Zoe", Skill = Skill.Stunt },
            Attackers = [.. Names.Take(cast).Select(n => new AttackerPart { Name = n, Skill = Skill.Stunt })],
        };
        return Enumerable.Range(seed, 20).Select(s => Drafts.Rounds(brief, s, 1).Routine).FirstOrDefault(r => r is not null) ?? throw new InvalidOperationException($"No routine for {cast} attackers, seed {seed}.");
    }

    private static bool Stands(Routine old, int first, int last, Routine now) =>
        Enumerable.Range(0, now.Moves.Count - (last - first)).Any(at => Enumerable.Range(0, last - first + 1).All(i => RoutineChange.IsSame(old.Moves[first + i], now.Moves[at + i])));

    private static void Clean(Routine? routine)
    {
        Assert.NotNull(routine);
        Assert.True(Audit.Of(new Scene(routine.Brief, Drafts.Book), routine).IsClean);
    }
}
