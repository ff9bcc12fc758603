using Generator.Domain.Sketches;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Solver.Reworking;

/// <summary>
/// Moves that are unsafe or broken by what they are, whatever stands around them and whenever they come: none of them can stay, so that no
/// repair changes fewer moves than there are of them.
/// </summary>
internal static class Hopeless
{
    /// <summary>How many there are.</summary>
    public static int Count(Original original) => original.Moves.Count(m => Is(original.Scene, m.Row));

    /// <summary>The routine as a sketch in which everything is said that can be.</summary>
    /// <param name="original">The routine.</param>
    /// <param name="widely">Where a technique cannot be, the attack that it answers is left open too.</param>
    public static Sketch LeftOpen(Original original, bool widely)
    {
        var said = Sketch.Of(original.Routine);
        return said with { Moves = [.. said.Moves.Zip(original.Moves, (move, old) => LeftOpen(original.Scene, move, old.Row, widely))] };
    }

    private static SketchMove LeftOpen(Scene scene, SketchMove move, in Row row, bool widely)
    {
        var attack = row.Attack >= 0 && scene.Able.WhyNotAttack(row.Attack, row.Attacker) is not null;
        var technique = row.Technique >= 0 && (CannotDo(scene, row) || NothingToSell(scene, row) || (row.Attack >= 0 && !attack && !Answers(scene, row)));
        return move with
        {
            Attack = attack || (technique && widely) ? null : move.Attack,
            FollowsUp = move.FollowsUp && !(technique && widely),
            Technique = technique ? null : move.Technique,
            Reaction = technique || CannotSell(scene, row) ? null : move.Reaction,
            To = row.To < 0 ? null : move.To,
        };
    }

    private static bool Is(Scene scene, in Row row) => row.Technique >= 0
        && (CannotDo(scene, row) || CannotSell(scene, row) || (row.Attack >= 0 && (!Answers(scene, row) || (row.Attacker >= 0 && scene.Able.WhyNotAttack(row.Attack, row.Attacker) is not null))));

    private static bool CannotDo(Scene scene, in Row row) =>
        scene.Able.WhyNotTechnique(row.Technique) is not null || (row.To < 0 && scene.Book.Techniques[row.Technique].Travel is not null) || (row.Attacker >= 0 && scene.Able.WhyNotOn(row.Technique, row.Attacker) is not null);

    private static bool CannotSell(Scene scene, in Row row) => row.Attacker >= 0 && row.Reaction >= 0 && scene.Able.WhyNotReaction(row.Reaction, row.Attacker) is not null;

    /// <summary>None of the technique's reactions is one that they can sell: whatever else changes, it goes.</summary>
    private static bool NothingToSell(Scene scene, in Row row)
    {
        var (attacker, reactions) = (row.Attacker, scene.Book.Techniques[row.Technique].Reactions);
        return attacker >= 0 && reactions.Count > 0 && reactions.All(r => scene.Able.WhyNotReaction(scene.Book.ReactionIndex(r), attacker) is not null);
    }

    private static bool Answers(Scene scene, in Row row) =>
        scene.Book.Attacks[row.Attack] is var attack && (attack.IsWalkIn || scene.Book.Techniques[row.Technique].Answers.Contains(attack.Line));
}
