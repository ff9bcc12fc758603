using Generator.Domain;
using Generator.Library;

namespace Generator.Benchmarks.Coverage;

/// <summary>What occurred in drafts so far.</summary>
internal sealed class CoverageTally
{
    public Dictionary<string, int> Techniques { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, int> Attacks { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, int> Reactions { get; } = new(StringComparer.Ordinal);

    public Dictionary<Family, int> Families { get; } = [];

    public int Moves { get; private set; }

    /// <summary>Moves in which somebody else holds the hero or is held.</summary>
    public int Supported { get; private set; }

    /// <summary>Moves that leave the attacker held.</summary>
    public int Holds { get; private set; }

    public void Add(Routine routine, Book book)
    {
        foreach (var move in routine.Moves)
        {
            if (move.Technique is not { } id)
            {
                continue;
            }

            var technique = book.Technique(id);
            Moves++;
            Count(Techniques, technique.BaseId);
            Families[technique.Family] = Families.GetValueOrDefault(technique.Family) + 1;
            Supported += technique.Supported ? 1 : 0;
            if (move.Attack is { } attack)
            {
                Count(Attacks, book.Attack(attack).BaseId);
            }

            if (move.Reaction is { } reaction)
            {
                Count(Reactions, reaction);
                Holds += book.Reaction(reaction).Posture is { } posture && posture.IsControlled() ? 1 : 0;
            }
        }
    }

    public decimal Share(int moves) => Moves == 0 ? 0 : Math.Round(100m * moves / Moves, 1);

    private static void Count(Dictionary<string, int> tally, string id) => tally[id] = tally.GetValueOrDefault(id) + 1;
}
