using Generator.Domain;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;

namespace Generator.Rules.Tests.Fights;

/// <summary>
/// A fight in a few words, for tests. A start such as <c>left-lead Bruno@12/250 Wanda@2/350</c> gives the hero's stance and everybody's
/// clock position and distance in centimetres; <see cref="MoveText"/> tells how moves are written. All are 1.76 m tall and trained for stunts,
/// on 12 by 12 m of mats at 100 counts a minute, and the brief asks for nothing else.
/// </summary>
internal sealed record Fight(Brief Brief, IReadOnlyList<Placement> Placements, IReadOnlyList<Move> Moves)
{
    public Routine Routine => new() { Brief = Brief, LibraryVersion = TheBook.Book.Version, Placements = Placements, Moves = Moves };

    public Scene Scene => new(Brief, TheBook.Book);

    public static Fight Of(string start, string moves)
    {
        var (brief, placements) = StartText.Read(start);
        return new Fight(brief, placements, MoveText.Read(moves, brief));
    }

    /// <summary>The same fight under another brief.</summary>
    public Fight With(Func<Brief, Brief> change) => this with { Brief = change(Brief) };

    /// <summary>The same fight with one attacker changed.</summary>
    public Fight WithAttacker(int number, Func<AttackerPart, AttackerPart> change) =>
        With(b => b with { Attackers = [.. b.Attackers.Select((a, i) => i == number ? change(a) : a)] });

    /// <summary>The same fight in which one move, numbered from 1, hurts a part of the body until a moment in half counts.</summary>
    public Fight Hurting(int move, string part, int until) =>
        this with { Moves = [.. Moves.Select((m, i) => i == move - 1 ? m with { Hurts = new Hurt(part, new HalfCounts(until)) } : m)] };

    /// <summary>The same fight with another hero.</summary>
    public Fight WithHero(Func<HeroPart, HeroPart> change) => With(b => b with { Hero = change(b.Hero) });

    public Verdict Audit() => Generator.Rules.Judging.Audit.Of(Scene, Routine);

    public IReadOnlyList<Step> Steps() => Replay.Of(Scene, Routine);
}
