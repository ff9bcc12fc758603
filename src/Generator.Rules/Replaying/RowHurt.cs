using Generator.Domain;
using Generator.Library;

namespace Generator.Rules.Replaying;

/// <summary>What a row hurts, and whose it was when that was said: a search that puts another technique in its place hurts nobody else with it.</summary>
/// <param name="What">The part and the count.</param>
/// <param name="OfHero">Of the hero, by a setback; else of the target.</param>
public sealed record RowHurt(Hurt What, bool OfHero)
{
    /// <summary>As a move of a routine says it; null where it says none.</summary>
    public static RowHurt? Of(Move move, Book book) =>
        move.Hurts is not { } hurts ? null : new RowHurt(hurts, move.Technique is { } id && book.Technique(id).Family == Family.Setback);

    /// <summary>Whom the row hurts so, the hero being −1; null for nobody: its technique does not, or it comes when all would be over.</summary>
    public int? By(in Row row, Book book)
    {
        if (row.Technique < 0 || row.Start >= What.Until.Value || book.Techniques[row.Technique] is var technique && (technique.Family == Family.Setback) != OfHero)
        {
            return null;
        }

        return OfHero ? -1 : technique.HasNoTarget || row.Attacker < 0 ? null : row.Attacker;
    }
}
