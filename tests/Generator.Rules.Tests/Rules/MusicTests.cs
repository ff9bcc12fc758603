using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

/// <summary>A block that starts at half count 6 meets the swing at 8 and is over at 8; what a cross hits comes at its end.</summary>
public sealed class MusicTests
{
    private const string Block = "Bruno: +6 swing-right > outside-block-left {limb-stopped}";

    private static Fight Given(string moves, int[] accents, int[] holds) => Fight.Of("left-lead Bruno@12/250 Wanda@2/250", moves).With(b => b with
    {
        Music = new Music { Accents = [.. accents.Select(a => new HalfCounts(a))], Holds = [.. holds.Select(h => new MusicHold(new HalfCounts(h), 2m, null))] },
    });

    private static Found Judge(string moves, int[] accents, int[] holds) => Verify.Rule("music").Given(Given(moves, accents, holds));

    [Theory]
    [Passes("music")]
    [InlineData(Block, 8)]
    [InlineData(Block + " ; cross-right {head-back}", 8, 10)]
    [InlineData(Block + " ; +1 cross-right {head-back}", 8, 11)]
    [InlineData(Block)]
    public void A_contact_lands_on_each_accent(string moves, params int[] accents)
    {
        var steps = Given(moves, accents, []).Steps();
        Assert.All(accents, a => Assert.Contains(steps, s => s.Contact == a || s.End == a));
        Judge(moves, accents, []).FindsNothing();
    }

    [Theory]
    [Fails("music")]
    [InlineData(Block, 1, 7)]
    [InlineData(Block, 1, 9)]
    [InlineData(Block, 2, 2, 30)]
    [InlineData(Block + " ; cross-right {head-back}", 1, 8, 11)]
    public void An_accent_without_one_costs_three_points(string moves, int missed, params int[] accents) => Judge(moves, accents, []).Costs(3 * missed);

    /// <summary>Where she walks in nothing is met.</summary>
    [Fact]
    public void Walking_in_is_no_contact()
    {
        const string Moves = "Bruno: +6 walk-in > cross-right {head-back}";
        var step = Given(Moves, [], []).Steps()[0];
        Judge(Moves, [step.Contact], []).Costs(step.Contact == step.End ? 0 : 3);
        Judge(Moves, [step.End], []).FindsNothing();
    }

    [Theory]
    [InlineData(Block, 0)]
    [InlineData(Block, 8)]
    [InlineData(Block + " ; +2 cross-right {head-back}", 8, 10)]
    public void Nobody_moves_where_the_music_holds(string moves, params int[] holds) => Judge(moves, [], holds).FindsNothing();

    [Theory]
    [InlineData(Block, 7, 1)]
    [InlineData(Block + " ; +2 cross-right {head-back}", 11, 2)]
    [InlineData(Block + " ; hip-throw-right {thrown-over}", 10, 2)]
    public void A_move_under_way_is_unsafe(string moves, int hold, int move) => Judge(moves, [], [hold]).Finds(1, move).As(Severity.Unsafe);

    [Fact]
    public void Nobody_stands_still_in_a_fall()
    {
        const string Moves = Block + " ; cross-right {sits-down}";
        var step = Given(Moves, [], []).Steps()[^1];
        Assert.NotEqual(FallClass.None, step.Reaction!.Fall);
        Judge(Moves, [], [step.End]).FindsNothing();
        Judge(Moves, [], [step.End + 1]).Finds(1, 2);
        Judge(Moves, [], [step.End + 2]).FindsNothing();
    }

    /// <summary>Lengths go by the fastest passage, whatever passage a move falls in.</summary>
    [Fact]
    public void Lengths_go_by_the_fastest_passage()
    {
        var brief = Given(Block, [], []).Brief;
        var music = new Music { Passages = [new(new(0), new(60), new(0)), new(new(40), new(160), new(8))] };
        var (one, list) = (new Scene(brief with { Tempo = new Tempo(160), Music = null }, TheBook.Book), new Scene(brief with { Tempo = new Tempo(160), Music = music }, TheBook.Book));
        Assert.Equal(one.Book.Techniques.Select(t => t.Length), list.Book.Techniques.Select(t => t.Length));
        Assert.Equal(6m, list.Pulse.SecondsBetween(0, 12));
    }
}
