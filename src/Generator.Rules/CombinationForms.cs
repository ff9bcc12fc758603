using Generator.Domain;
using Generator.Library;

namespace Generator.Rules;

/// <summary>Every way to throw every combination of the library, and which of them are an attacker's own.</summary>
public sealed class CombinationForms
{
    private readonly IReadOnlyList<CombinationForm>[] own;
    private readonly int[] percent;

    internal CombinationForms(Brief brief, Book book, Ability able, Likings likings)
    {
        All = [.. book.Combinations.SelectMany((c, i) => Of(c, i, book))];
        Longest = All.Select(f => f.Gap).DefaultIfEmpty(0).Max();
        percent = [.. brief.Attackers.Select(a => book.MannerOf(a)?.CombinationPercent ?? 0)];
        own = [.. brief.Attackers.Select((_, a) => percent[a] == 0 ? [] : All.Where(f => f.Attacks.All(k => able.WhyNotAttack(k, a) is null && !likings.IsOffAttack(k, a) && !likings.IsAvoidedAttack(k))).ToList())];
        AreWanted = own.Any(f => f.Count > 0);
    }

    /// <summary>In the order of the book, each with the left foot in front first.</summary>
    public IReadOnlyList<CombinationForm> All { get; }

    /// <summary>The greatest gap of any, in half counts.</summary>
    public int Longest { get; }

    /// <summary>Somebody's manner has combinations, and they can throw one.</summary>
    public bool AreWanted { get; }

    /// <summary>Those that an attacker can throw and that are in their manner; none where it has no combinations.</summary>
    public IReadOnlyList<CombinationForm> Of(int attacker) => own[attacker];

    /// <summary>The attacker's manner has combinations, and they can throw one.</summary>
    public bool Wants(int attacker) => own[attacker].Count > 0;

    /// <summary>Of a hundred times that the attacker comes those that should go on as a combination.</summary>
    public int Percent(int attacker) => percent[attacker];

    private static IEnumerable<CombinationForm> Of(Combination combination, int number, Book book)
    {
        var ways = combination.Attacks.Any(p => p.Side is not null) ? new[] { Side.Left, Side.Right } : [Side.Left];
        foreach (var front in ways)
        {
            int[] attacks = [.. combination.Attacks.Select(p => book.AttackIndex(p.Side is { } side ? Mirror.Id(p.Attack, side == LeadSide.Lead ? front : front.Other()) : p.Attack))];
            if (Array.IndexOf(attacks, -1) < 0)
            {
                yield return new CombinationForm(number, attacks, combination.Gap.Value);
            }
        }
    }
}
