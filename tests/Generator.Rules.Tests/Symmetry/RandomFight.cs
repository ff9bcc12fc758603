using Generator.Domain;
using Generator.Rules.Replaying;
using Generator.Rules.Tests.Fights;
using Generator.Testing;

namespace Generator.Rules.Tests.Symmetry;

/// <summary>
/// Fights that mostly make sense and now and then do not, each from its seed: attacks with answers that suit them, follow-ups that find their
/// opening, and one row in six taken at random. The floor is so wide that nobody reaches its edge.
/// </summary>
internal static class RandomFight
{
    private static readonly string[] Names = ["Bruno", "Wanda", "Piet", "Ama"];

    /// <param name="seed">Of the dice.</param>
    /// <param name="more">Moves beyond the four to fourteen.</param>
    public static Fight Of(int seed, int more = 0)
    {
        var chance = new Chance(seed);
        var brief = Brief(chance);
        IReadOnlyList<Placement> placements = [.. brief.Attackers.Select(_ => new Placement(new Bearing(chance.Whole(0, 23)), new Centimetres(chance.Whole(10, 45) * 10), new HalfCounts(chance.Percent(80) ? 0 : chance.Whole(1, 30))))];
        var scene = new Scene(brief, TheBook.Book);
        var state = Replay.Open(scene, placements);
        var moves = new List<Move>();
        for (var i = chance.Whole(4, 14) + more; i > 0; i--)
        {
            var move = Next(chance, scene, state);
            moves.Add(move);
            state = Replay.Step(scene, state, Row.Of(move, scene)).After;
        }

        return new Fight(brief, placements, moves);
    }

    private static Brief Brief(Chance chance)
    {
        var cast = Names[..chance.Whole(1, Names.Length)];
        return new Brief
        {
            Tempo = new Tempo(chance.Whole(80, 130)),
            Floor = new FloorPlan { Width = new(9000), Depth = new(9000), MarkX = new(4500), MarkY = new(4500), Surface = chance.Percent(80) ? Surface.Matted : Surface.Hard },
            Hero = new HeroPart { Name = "Ines", Skill = chance.Percent(80) ? Skill.Stunt : Skill.Trained, Lead = chance.Percent(80) ? chance.Any<Side>() : null, FallsPerRun = chance.Maybe(() => chance.Whole(0, 2)) },
            Attackers = [.. cast.Select(n => Attacker(chance, n))],
            Cameras = [.. chance.List(0, 2, i => new Camera("C" + (char)('A' + i), new Bearing(chance.Whole(0, 23)), new(500), new(150)))],
            Moments = [.. chance.List(0, 1, _ => new Moment([new MomentMove(chance.One(TheBook.Book.Techniques).BaseId, null, null, null)], null, null))],
            Arc = chance.Any<Arc>(),
            Length = new Length(chance.Maybe(() => chance.Whole(10, 40)), chance.Maybe(() => chance.Whole(4, 14)), 4),
            Setbacks = chance.Maybe(() => chance.Whole(0, 1)),
            Pauses = chance.Maybe(() => chance.Whole(0, 1)),
            Safety = Safety.Default with { Runs = chance.Whole(1, 30) },
            Ending = chance.Percent(50) ? new Ending(chance.Some(cast, 50), chance.Percent(50) ? chance.One(cast) : null) : null,
        };
    }

    private static AttackerPart Attacker(Chance chance, string name) => new()
    {
        Name = name,
        Height = new Centimetres(chance.Whole(160, 195)),
        Skill = chance.Percent(70) ? Skill.Stunt : chance.Any<Skill>(),
        Speed = chance.Whole(100, 350),
        Limits = chance.Some(Limit.All, 4),
        FallsPerRun = chance.Maybe(() => chance.Whole(0, 3)),
        SharePercent = chance.Percent(20) ? chance.Whole(0, 100) : null,
    };

    private static Move Next(Chance chance, Scene scene, FightState state)
    {
        var book = TheBook.Book;
        var start = state.Time + (chance.Percent(95) ? chance.One([0, 0, 0, 1, 1, 2, 2, 4, 8, 14]) : -1);
        var attacker = state.LastTarget >= 0 && chance.Percent(60) ? state.LastTarget : chance.Whole(0, scene.Cast - 1);
        var posture = state.Attackers[attacker].PostureAt(start);
        var attack = posture == Posture.Ready || chance.Percent(15) ? chance.One(book.Attacks) : null;
        var grip = state.Attackers[attacker].Grip;
        IReadOnlyList<Technique> fit = [.. book.Techniques.Where(t => attack is not null
            ? t.Answers.Contains(attack.Line)
            : (posture is { } p && t.Needs.Contains(p)) || (grip is { } g && t.Answers.Contains(g)) || t.HasNoTarget)];
        var technique = chance.Percent(3) ? null : fit.Count == 0 || chance.Percent(16) ? chance.One(book.Techniques) : chance.One(fit);
        attack ??= technique is null ? chance.One(book.Attacks) : null;
        return new Move
        {
            Start = new HalfCounts(Math.Max(0, start)),
            Attacker = technique is { HasNoTarget: true } && attack is null ? null : attacker,
            From = attack is not null && chance.Percent(10) ? new Bearing(chance.Whole(0, 23)) : null,
            Cue = chance.Any<Cue>(),
            Attack = attack?.Id,
            Technique = technique?.Id,
            Reaction = technique is { Reactions.Count: > 0 } && chance.Percent(97) ? chance.One(technique.Reactions) : null,
            Linger = new HalfCounts(chance.Percent(80) ? 0 : chance.Whole(0, 8)),
        };
    }
}
