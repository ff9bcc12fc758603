using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Connecting;

/// <summary>
/// How a move can leave the hero, whoever the others are: stance, both hands, bound, and the attackers tied to the hero by a hold or a grip.
/// Hands and bound name the tied ones by number, 0 to 2; a form is written so that equal situations are equal records.
/// </summary>
public readonly record struct HeroForm(Stance Stance, Hand Left, Hand Right, Bound Bound, int BoundBy, Tie First, Tie Second, Tie Third)
{
    /// <summary>The most attackers who can be tied to one hero: one by each hand and one by the body.</summary>
    public const int MostTies = 3;

    /// <summary>Free, with both hands in guard.</summary>
    public static HeroForm FreeIn(Stance stance) => new(stance, Hand.Guard, Hand.Guard, Bound.Free, -1, Tie.None, Tie.None, Tie.None);

    /// <summary>How many attackers are tied to the hero.</summary>
    public int Ties => (First.IsThere ? 1 : 0) + (Second.IsThere ? 1 : 0) + (Third.IsThere ? 1 : 0);

    public bool IsFree => Ties == 0 && Bound == Bound.Free;

    public Tie this[int who] => who switch
    {
        0 => First,
        1 => Second,
        2 => Third,
        _ => Tie.None,
    };

    /// <summary>How the hero is between two moves.</summary>
    public static HeroForm Of(FightState state)
    {
        Span<Tie> ties = stackalloc Tie[state.Attackers.Count];
        for (var a = 0; a < ties.Length; a++)
        {
            ties[a] = new Tie(state.Attackers[a].Posture, state.Attackers[a].Grip);
        }

        return Of(state.Stance, state.Left, state.Right, state.Bound, state.BoundBy, ties);
    }

    /// <summary>
    /// A form from loose parts: whoever is held by no hand any more is free; the others are numbered anew, by left hand, right hand and body.
    /// </summary>
    public static HeroForm Of(Stance stance, Hand left, Hand right, Bound bound, int boundBy, ReadOnlySpan<Tie> ties)
    {
        Span<int> order = stackalloc int[ties.Length];
        var count = 0;
        foreach (var who in (ReadOnlySpan<int>)[left.Who, right.Who, boundBy])
        {
            if (who >= 0 && !order[..count].Contains(who))
            {
                order[count++] = who;
            }
        }

        for (var who = 0; who < ties.Length; who++)
        {
            if (ties[who].Posture == Posture.Gripping && !order[..count].Contains(who))
            {
                order[count++] = who;
            }
        }

        var named = order[..count];
        return new HeroForm(
            stance,
            Named(left, named),
            Named(right, named),
            bound,
            boundBy < 0 ? -1 : named.IndexOf(boundBy),
            count > 0 ? ties[named[0]] : Tie.None,
            count > 1 ? ties[named[1]] : Tie.None,
            count > 2 ? ties[named[2]] : Tie.None);
    }

    private static Hand Named(Hand hand, ReadOnlySpan<int> named) => hand.Who < 0 ? hand : hand with { Who = named.IndexOf(hand.Who) };
}
