using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Shapes;

/// <summary>How it ends: what people keep of it is the peak and the end (Kahneman, Fredrickson, Schreiber and Redelmeier 1993, Psychological Science 4; from memory).</summary>
/// <param name="Attacker">Who goes out last, from 0.</param>
/// <param name="Weight">Of the move that puts them out, 1 to 5.</param>
/// <param name="Heaviest">Weight of the heaviest move of the whole fight.</param>
/// <param name="HeaviestMove">The first of that weight, from 1.</param>
/// <param name="Moves">Moves on nobody but them up to the last out; moves without a target are not counted and do not break the run.</param>
public readonly record struct LastFight(int Attacker, int Weight, int Heaviest, int HeaviestMove, int Moves)
{
    /// <summary>Moves that it has at least. Common practice, no source.</summary>
    public const int FewestMoves = 3;

    /// <summary>Null where nobody goes out.</summary>
    public static LastFight? Of(IReadOnlyList<Step> steps, IReadOnlyList<Out> outs)
    {
        if (outs.Count == 0)
        {
            return null;
        }

        var last = outs[^1];
        var heaviest = steps.Where(s => s.Technique is not null).MaxBy(s => s.Technique!.Weight)!;
        var closing = steps.Take(last.Move).Reverse().Where(s => s.HasTarget).TakeWhile(s => s.Row.Attacker == last.Attacker && s.Second < 0 || s.Index + 1 == last.Move).Count();
        return new LastFight(last.Attacker, last.Weight, heaviest.Technique!.Weight, heaviest.Index + 1, closing);
    }
}
