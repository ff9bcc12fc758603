using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Reworking;

namespace Generator.Solver.Repairing;

/// <summary>
/// Moves that are unsafe or broken by what they are, whatever stands around them and whenever they come: none of them can stay, so that no
/// repair changes fewer moves than there are of them.
/// </summary>
internal static class Hopeless
{
    /// <summary>How many there are.</summary>
    public static int Count(Original original) => original.Moves.Count(m => Is(original.Scene, m.Row));

    private static bool Is(Scene scene, in Row row) =>
        row.Technique >= 0 && (scene.Able.WhyNotTechnique(row.Technique) is not null
            || (row.Attack >= 0 && !Answers(scene, row))
            || (row.Attacker >= 0 && CannotTake(scene, row)));

    private static bool Answers(Scene scene, in Row row) =>
        scene.Book.Attacks[row.Attack] is var attack && (attack.IsWalkIn || scene.Book.Techniques[row.Technique].Answers.Contains(attack.Line));

    private static bool CannotTake(Scene scene, in Row row) =>
        scene.Able.WhyNotOn(row.Technique, row.Attacker) is not null
        || (row.Attack >= 0 && scene.Able.WhyNotAttack(row.Attack, row.Attacker) is not null)
        || (row.Reaction >= 0 && scene.Able.WhyNotReaction(row.Reaction, row.Attacker) is not null);
}
