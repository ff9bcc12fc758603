using Generator.Domain;
using Generator.Library;
using Generator.Library.Words;

namespace Generator.Rules;

/// <summary>What the manners of the performers and the wishes of the brief say of each technique and attack of the library, by position.</summary>
public sealed class Likings
{
    private readonly bool[] offTechnique;
    private readonly bool[] avoidedTechnique;
    private readonly bool[] avoidedAttack;
    private readonly bool[,] offAttack;
    private readonly (bool[] Techniques, bool[] Attacks)[] favoured;

    internal Likings(Brief brief, Book book)
    {
        var hero = book.MannerOf(brief.Hero);
        offTechnique = [.. book.Techniques.Select(t => hero is not null && t.Family is Family.Strike or Family.Kick or Family.Throw or Family.Lock && !hero.Families.Contains(t.Family))];
        offAttack = new bool[book.Attacks.Count, brief.Attackers.Count];
        for (var a = 0; a < brief.Attackers.Count; a++)
        {
            var manner = book.MannerOf(brief.Attackers[a]);
            HaveManner |= manner is not null;
            for (var k = 0; k < book.Attacks.Count && manner is not null; k++)
            {
                offAttack[k, a] = !manner.Attacks.Contains(book.Attacks[k].Kind);
            }
        }

        HaveManner |= hero is not null;
        avoidedTechnique = [.. book.Techniques.Select(t => brief.Avoid.Any(w => WishWords.Means(w, t)))];
        avoidedAttack = [.. book.Attacks.Select(k => brief.Avoid.Any(w => WishWords.Means(w, k)))];
        favoured = [.. brief.Favour.Select(w => (book.Techniques.Select(t => WishWords.Means(w, t)).ToArray(), book.Attacks.Select(k => WishWords.Means(w, k)).ToArray()))];
    }

    /// <summary>Somebody has a manner.</summary>
    public bool HaveManner { get; }

    /// <summary>How many things are favoured.</summary>
    public int Favours => favoured.Length;

    /// <summary>The technique is not in the hero's manner.</summary>
    public bool IsOffTechnique(int technique) => technique >= 0 && offTechnique[technique];

    /// <summary>The attack is not in the attacker's manner.</summary>
    public bool IsOffAttack(int attack, int attacker) => attack >= 0 && attacker >= 0 && offAttack[attack, attacker];

    public bool IsAvoidedTechnique(int technique) => technique >= 0 && avoidedTechnique[technique];

    public bool IsAvoidedAttack(int attack) => attack >= 0 && avoidedAttack[attack];

    public bool IsFavouredTechnique(int favour, int technique) => technique >= 0 && favoured[favour].Techniques[technique];

    public bool IsFavouredAttack(int favour, int attack) => attack >= 0 && favoured[favour].Attacks[attack];

    /// <summary>Nothing speaks against somebody's coming with the attack and being answered so.</summary>
    public bool Suits(int attack, int technique, int attacker) => !IsOffAttack(attack, attacker) && !IsAvoidedAttack(attack) && !IsAvoidedTechnique(technique) && !IsOffTechnique(technique);
}
