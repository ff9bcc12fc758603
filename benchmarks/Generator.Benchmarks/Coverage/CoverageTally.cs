using System.Globalization;
using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Benchmarks.Coverage;

/// <summary>What occurred in drafts so far.</summary>
internal sealed class CoverageTally(Book book)
{
    public Dictionary<string, int> Techniques { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, int> Attacks { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, int> Reactions { get; } = new(StringComparer.Ordinal);

    /// <summary>Grips by which the hero was held, by the kind of their line.</summary>
    public Dictionary<LineKind, int> Grips { get; } = [];

    public Dictionary<Family, int> Families { get; } = [];

    public int Drafts { get; private set; }

    public int Moves { get; private set; }

    /// <summary>Moves in which the hero holds somebody else than the target, or is held by somebody else.</summary>
    public int Supported { get; private set; }

    /// <summary>Moves that leave the attacker held.</summary>
    public int Holds { get; private set; }

    public void Add(Routine routine)
    {
        Drafts++;
        foreach (var step in Replay.Of(new Scene(routine.Brief, book), routine))
        {
            if (step.Technique is not { } technique)
            {
                continue;
            }

            Moves++;
            Count(Techniques, technique.BaseId);
            Families[technique.Family] = Families.GetValueOrDefault(technique.Family) + 1;
            Supported += IsBesideAnother(technique) || OtherBinds(step) ? 1 : 0;
            if (step.Attack is { } attack)
            {
                Count(Attacks, attack.BaseId);
                if (technique.Seizes)
                {
                    Grips[attack.Line.Kind] = Grips.GetValueOrDefault(attack.Line.Kind) + 1;
                }
            }

            if (step.Reaction is { } reaction)
            {
                Count(Reactions, reaction.Id);
                Holds += reaction.Posture is { } posture && posture.IsControlled() ? 1 : 0;
            }
        }
    }

    public int Of(Family family) => Families.GetValueOrDefault(family);

    public string Share(int moves) => Moves == 0 ? "0" : Math.Round(100m * moves / Moves, 1).ToString("0.0", CultureInfo.InvariantCulture);

    /// <summary>Made for a hero who holds another attacker, or is held by one.</summary>
    public static bool IsBesideAnother(Technique technique) =>
        technique.Supported || IsOther(technique.LeftNeed) || IsOther(technique.RightNeed);

    private static bool IsOther(HandNeed need) => need is HandNeed.HoldingOther or HandNeed.HeldByOther;

    private static bool OtherBinds(Step step) => step.HasTarget && new[] { step.Before.Left.Who, step.Before.Right.Who, step.Before.BoundBy }.Any(who => who >= 0 && who != step.Row.Attacker);

    private static void Count(Dictionary<string, int> tally, string id) => tally[id] = tally.GetValueOrDefault(id) + 1;
}
