using System.Runtime.CompilerServices;
using Generator.Domain;
using Generator.Library;

namespace Generator.Solver.Proving;

/// <summary>Which attacks a technique can be the answer to at all, whoever throws them.</summary>
internal static class AttackAnswers
{
    private static readonly ConditionalWeakTable<Book, IReadOnlyList<int>[]> Known = [];

    /// <summary>Of each technique of a library the attacks that it can answer; worked out once.</summary>
    public static IReadOnlyList<int>[] Of(Book book) => Known.GetValue(
        book,
        b => [.. b.Techniques.Select(t => (IReadOnlyList<int>)[.. Enumerable.Range(0, b.Attacks.Count).Where(k => Suits(t, b.Attacks[k]))])]);

    /// <summary>The technique is made for the attack, from a stance that the attack finds and on a side that it comes from.</summary>
    private static bool Suits(Technique technique, Attack attack) =>
        technique.Meets(attack) && ((attack.IsGrab && technique.Family == Family.Escape) || technique.Starts.And(attack.HeroStances).Bits != 0) && Sides(technique, attack);

    private static bool Sides(Technique technique, Attack attack)
    {
        for (var b = 0; b < Bearing.Circle; b++)
        {
            if ((technique.Window.IsAnywhere || technique.Window.Contains(new Turn(b))) && attack.From.Contains(new Turn(b)))
            {
                return true;
            }
        }

        return false;
    }
}
