using Generator.Rules;
using Generator.Rules.Combining;
using Generator.Rules.Judging;
using Generator.Rules.Memories;
using Generator.Solver.Repertoires;

namespace Generator.Solver.Constructing;

/// <summary>Moves that begin a combination or go on with one, for attackers whose manner has them.</summary>
/// <param name="scene">Whose manner that is.</param>
/// <param name="repertoire">What can be done with each attacker.</param>
/// <param name="dice">How often somebody who has thrown one throws another.</param>
internal sealed class Combining(Scene scene, Repertoire repertoire, Dice dice)
{
    private static readonly int MannerAt = RuleBook.IndexOf("manner");

    private readonly Dictionary<(int Attacker, int Attack, bool Setbacks), Choice[]> onward = [];
    private readonly Choice[]?[] beginnings = new Choice[scene.Cast][];

    /// <summary>Choices to try with an attacker, none where nothing is wanted; with them the latest contact.</summary>
    /// <param name="node">Where the search stands.</param>
    /// <param name="attacker">Who may come.</param>
    /// <param name="setbacks">The hero may suffer one now.</param>
    public (Choice[] Choices, int Latest) For(Node node, int attacker, bool setbacks)
    {
        if (!scene.Combinations.Wants(attacker) || SoFar(scene, node) is not { } so || ((so.Combined & (1 << attacker)) != 0 && !dice.Percent(scene.Combinations.Percent(attacker))))
        {
            return ([], 0);
        }

        return so.Run.Attacker == attacker ? (Onward(attacker, so.Run, setbacks), so.Run.LastContact + scene.Combinations.Longest) : (Beginnings(attacker), int.MaxValue);
    }

    /// <summary>Which combinations there have been, and what may go on as one; null where nobody should throw any.</summary>
    public static MannerMemory? SoFar(Scene scene, Node node) =>
        scene.Combinations.AreWanted && scene.Judges(Domain.FightRule.Manner) ? (MannerMemory)node.Score.MemoryOf(MannerAt)! : null;

    private Choice[] Beginnings(int attacker) =>
        beginnings[attacker] ??= Ready(attacker, [.. scene.Combinations.Of(attacker).Select(f => f.Attacks[0])]);

    /// <summary>What the attacker may throw next.</summary>
    private Choice[] Onward(int attacker, AttackRun run, bool setbacks)
    {
        return onward.TryGetValue((attacker, run.Last, setbacks), out var choices) ? choices : onward[(attacker, run.Last, setbacks)] = WorkedOut(attacker, run, setbacks);
    }

    private Choice[] WorkedOut(int attacker, AttackRun run, bool setbacks)
    {
        var next = scene.Combinations.Of(attacker).SelectMany(f => Enumerable.Range(1, f.Attacks.Count - 1).Where(i => f.Attacks[i - 1] == run.Last).Select(i => f.Attacks[i])).ToHashSet();
        return [.. Answers(attacker, next), .. repertoire.Menus[attacker].Setbacks.Where(c => setbacks && next.Contains(c.Attack))];
    }

    /// <summary>Answers that leave the attacker ready to go on.</summary>
    private Choice[] Ready(int attacker, HashSet<int> attacks) =>
        [.. Answers(attacker, attacks).Select(c => c with { Reactions = [.. c.Reactions.Where(r => scene.Book.Reactions[r].Posture == Domain.Posture.Ready && scene.ReadyAfter(r, attacker) <= scene.Combinations.Longest)] }).Where(c => c.Reactions.Length > 0)];

    private IEnumerable<Choice> Answers(int attacker, HashSet<int> attacks) =>
        repertoire.Menus[attacker].Answers.Where(c => attacks.Contains(c.Attack) && scene.Likings.Suits(c.Attack, c.Technique, attacker));
}
